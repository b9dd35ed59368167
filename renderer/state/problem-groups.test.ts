import { describe, expect, it } from 'vitest'
import type { PacketProblem } from '../../app/packet/problem.ts'
import { problemGroups } from './problem-groups.ts'

const untagged = (number: number): PacketProblem => ({
  id: `untagged-${number}`,
  weight: 'mend',
  sentence: `P-${String(number).padStart(3, '0')} has no tag and no finding.`,
  place: { kind: 'photo', id: `p${number}` },
})
const alone: PacketProblem = {
  id: 'date',
  weight: 'mend',
  sentence: 'The date of loss is empty.',
  place: { kind: 'sheet', field: 'loss.date' },
}

describe('problemGroups', () => {
  it('gathers many that say the same of different records', () => {
    const groups = problemGroups([untagged(1), alone, untagged(2), untagged(3), untagged(14)])
    expect(groups.map(({ first, others }) => [first.id, others.map((other) => other.id)])).toEqual([
      ['untagged-1', ['untagged-2', 'untagged-3', 'untagged-14']],
      ['date', []],
    ])
  })

  it('tells three or fewer one by one', () => {
    expect(problemGroups([untagged(1), untagged(2), untagged(3)])).toHaveLength(3)
  })

  it('never mixes weights', () => {
    const four = [1, 2, 3, 4].map(untagged)
    const notices = four.map((problem) => ({ ...problem, id: `n-${problem.id}`, weight: 'notice' as const }))
    expect(problemGroups([...four, ...notices])).toHaveLength(2)
  })
})
