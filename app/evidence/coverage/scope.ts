import { buildScope } from '../../scope/build-scope.ts'
import { priceScope } from '../../scope/price-scope.ts'
import type { PacketProblem } from '../../packet/problem.ts'
import { problem, type Check } from './check.ts'

/** What an offered scope leaves open: quantities to count, lines without a price, changes whose line is gone. */
export const checkScope: Check = (caseFile) => {
  const { choices, book } = caseFile.scope
  if (!choices.isOffered) return []
  const built = buildScope(caseFile, choices)
  const lines = [...built.repair, ...built.replacement]
  const standing = lines.filter(({ leftOutBecause }) => leftOutBecause === null)
  const problems: PacketProblem[] = []
  const notice = (check: string, sentence: string) =>
    problems.push(problem(check, { weight: 'notice', sentence, place: { kind: 'scope' } }))
  const open = standing.filter(({ quantity }) => quantity === null)
  const [first] = open
  if (first !== undefined) {
    notice(
      'scope-quantity',
      `Scope: ${countLines(open.length)} no quantity yet. ${first.words}: ${first.missing ?? ''}`,
    )
  }
  const priced = priceScope(built, caseFile.scope).bids
  const bare = [...priced.repair.lines, ...priced.replacement.lines].filter(
    ({ line, price }) => line.leftOutBecause === null && price.kind === 'none',
  )
  if (book !== null && bare.length > 0) notice('scope-price', `Scope: ${countLines(bare.length)} no price.`)
  const gone = choices.changes.filter(({ bid, key }) => !lines.some((line) => line.bid === bid && line.key === key))
  if (gone.length > 0) {
    notice(
      'scope-change',
      `Scope: ${gone.length === 1 ? 'a change by hand is' : `${gone.length} changes by hand are`} about lines that no longer follow from plan and findings.`,
    )
  }
  return problems
}

function countLines(count: number): string {
  return count === 1 ? 'one line has' : `${count} lines have`
}
