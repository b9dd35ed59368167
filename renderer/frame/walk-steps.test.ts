import { describe, expect, it } from 'vitest'
import type { PacketProblem } from '../../app/packet/problem.ts'
import { nextOnWalk } from './walk-steps.ts'

const [a, b, c] = ['a', 'b', 'c'].map((id): PacketProblem => ({
  id,
  weight: 'mend',
  sentence: id,
  place: { kind: 'plan' },
}))
const all = [a, b, c].flatMap((one) => one ?? [])
const idAfter = (from: PacketProblem | undefined, by: 1 | -1, skipped: readonly string[] = []) =>
  nextOnWalk(all, { from: from ?? null, by, skipped: new Set(skipped) })?.id

describe('a walk along what is missing', () => {
  it('begins at either end and goes round', () => {
    expect(idAfter(undefined, 1)).toBe('a')
    expect(idAfter(undefined, -1)).toBe('c')
    expect(idAfter(a, 1)).toBe('b')
    expect(idAfter(c, 1)).toBe('a')
    expect(idAfter(a, -1)).toBe('c')
  })

  it('passes over what was skipped, and ends when all was', () => {
    expect(idAfter(a, 1, ['b'])).toBe('c')
    expect(idAfter(a, 1, ['a', 'b', 'c'])).toBeUndefined()
    expect(nextOnWalk([], { from: null, by: 1, skipped: new Set() })).toBeNull()
  })
})
