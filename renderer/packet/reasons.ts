import type { PacketProblem } from '../../app/packet/problem.ts'
import type { ProblemGroup } from '../state/problem-groups.ts'

/** Why problems are let stand, by the problem's identity. */
export type Reasons = ReadonlyMap<string, string>

/** Shortest reason that the desk takes. */
const LEAST_LETTERS = 3

/** Problems that need a reason before the packet can issue and have none yet. Notices need none. */
export function withoutReason(problems: readonly PacketProblem[], reasons: Reasons): readonly PacketProblem[] {
  return problems.filter(
    (problem) => problem.weight === 'mend' && (reasons.get(problem.id) ?? '').trim().length < LEAST_LETTERS,
  )
}

/** The reasons with one more, given for a whole group at once. */
export function withReason(reasons: Reasons, { first, others }: ProblemGroup, reason: string): Reasons {
  return new Map([...reasons, ...[first, ...others].map((problem) => [problem.id, reason] as const)])
}

/** The reasons as the desk wants them: only for problems that are still there. */
export function overrulesOf(problems: readonly PacketProblem[], reasons: Reasons) {
  return problems
    .filter((problem) => problem.weight === 'mend')
    .flatMap((problem) => {
      const reason = reasons.get(problem.id)?.trim() ?? ''
      return reason === '' ? [] : [{ problemId: problem.id, reason }]
    })
}
