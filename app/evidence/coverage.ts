import type { PacketProblem } from '../packet/problem.ts'
import type { CaseFile } from './case-file.ts'
import type { Check } from './coverage/check.ts'
import { checkFacets } from './coverage/facets.ts'
import { checkFieldTests } from './coverage/field-tests.ts'
import { checkFindings } from './coverage/findings.ts'
import { checkHouseSet } from './coverage/house-set.ts'
import { checkPhotos } from './coverage/photos.ts'
import { checkReadings } from './coverage/readings.ts'
import { checkScope } from './coverage/scope.ts'
import { checkSheet } from './coverage/sheet.ts'
import { checkTimes } from './coverage/times.ts'
import { checkWording } from './coverage/wording.ts'

const checks: readonly Check[] = [
  checkSheet,
  checkFacets,
  checkFindings,
  checkReadings,
  checkFieldTests,
  checkScope,
  checkHouseSet,
  checkPhotos,
  checkTimes,
  checkWording,
]

const rank = { blocking: 0, mend: 1, notice: 2 } as const satisfies Record<PacketProblem['weight'], number>

/**
 * Everything that a reader of the packet would miss or stumble over: heaviest first, then in the order of the job sheet,
 * plan, findings, readings and photos. Blocking ones would make the packet false or broken; the others may be overruled.
 */
export function packetProblems(caseFile: CaseFile): readonly PacketProblem[] {
  return checks.flatMap((check) => check(caseFile)).sort((a, b) => rank[a.weight] - rank[b.weight])
}
