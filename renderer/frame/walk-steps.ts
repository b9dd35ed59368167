import type { PacketProblem } from '../../app/packet/problem.ts'

/**
 * The problem that a step along the list leads to, passing over those that were skipped; from the last one on it goes to
 * the first again. Null when every one was skipped.
 */
export function nextOnWalk(
  problems: readonly PacketProblem[],
  { from, by, skipped }: { from: PacketProblem | null; by: 1 | -1; skipped: ReadonlySet<string> },
): PacketProblem | null {
  const count = problems.length
  const start = from === null ? (by === 1 ? -1 : count) : problems.findIndex(({ id }) => id === from.id)
  for (let far = 1; far <= count; far += 1) {
    const problem = problems[(start + by * far + count * 2) % count]
    if (problem !== undefined && !skipped.has(problem.id)) return problem
  }
  return null
}
