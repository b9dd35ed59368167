import { describe, expect, it } from 'vitest'
import type { PacketProblem } from '../../app/packet/problem.ts'
import { overrulesOf, withoutReason } from './reasons.ts'

const problem = (id: string, weight: PacketProblem['weight']): PacketProblem => ({
  id,
  weight,
  sentence: `${id} is wrong.`,
  place: { kind: 'job' },
})
const problems = [problem('a', 'mend'), problem('b', 'mend'), problem('c', 'notice'), problem('d', 'blocking')]

describe('reasons to let problems stand', () => {
  it('are needed for what should be mended, not for notices and never for what blocks', () => {
    expect(withoutReason(problems, new Map()).map((one) => one.id)).toEqual(['a', 'b'])
    expect(withoutReason(problems, new Map([['a', 'Not reachable']])).map((one) => one.id)).toEqual(['b'])
  })

  it('have to say something', () => {
    expect(
      withoutReason(
        problems,
        new Map([
          ['a', ' ok '],
          ['b', 'Wet'],
        ]),
      ).map((one) => one.id),
    ).toEqual(['a'])
  })

  it('go to the desk only for problems that are still there', () => {
    const reasons = new Map([
      ['a', ' Not reachable '],
      ['gone', 'Mended since'],
    ])
    expect(overrulesOf(problems, reasons)).toEqual([{ problemId: 'a', reason: 'Not reachable' }])
  })
})
