import type { PacketProblem } from '../../app/packet/problem.ts'

/** Problems of one weight that say the same of different records; the first stands for all. */
export interface ProblemGroup {
  readonly first: PacketProblem
  /** The others like it, in their order; empty for a problem that stands alone. */
  readonly others: readonly PacketProblem[]
}

/** Fewer than this are told one by one. */
const LEAST = 4

/**
 * Gathers problems whose sentences differ only in the record that they begin with (`P-007 has no tag`), so that a
 * hundred untagged photos take one line. The order of first appearance stays.
 */
export function problemGroups(problems: readonly PacketProblem[]): readonly ProblemGroup[] {
  const alike = new Map<string, PacketProblem[]>()
  for (const problem of problems) {
    const key = `${problem.weight} ${problem.place.kind} ${problem.sentence.replace(/^[A-Z]-\d+\b/, '')}`
    const group = alike.get(key)
    if (group === undefined) alike.set(key, [problem])
    else group.push(problem)
  }
  return [...alike.values()].flatMap((group) => {
    const [first, ...others] = group
    if (first === undefined) return []
    return group.length < LEAST ? group.map((one) => ({ first: one, others: [] })) : [{ first, others }]
  })
}
