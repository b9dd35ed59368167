import type { PacketProblem, ProblemFix } from '../../packet/problem.ts'
import type { CaseFile } from '../case-file.ts'

/** One kind of thing that can be missing, looked for over a whole case file. */
export type Check = (caseFile: CaseFile) => readonly PacketProblem[]

/** A problem whose identity is the check's name and the place, so that it stays the same from run to run. */
export function problem(
  check: string,
  found: Pick<PacketProblem, 'weight' | 'sentence' | 'place'> & {
    readonly detail?: string | undefined
    readonly fixes?: readonly ProblemFix[]
  },
): PacketProblem {
  const { weight, sentence, place, detail, fixes = [] } = found
  const at = 'id' in place ? place.id : 'field' in place ? place.field : place.kind
  const id = [check, at, detail].filter((part) => part !== undefined).join(':')
  return { id, weight, sentence, place, ...(fixes.length === 0 ? {} : { fixes: [...fixes] }) }
}
