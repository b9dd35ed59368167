import type { Finding } from '../../evidence/finding.ts'
import { findingLabel } from '../../evidence/finding.ts'
import { wholePieces } from '../../roof/quantities.ts'
import type { Assessment } from '../assessment.ts'
import type { Range } from './course-grid.ts'
import type { FacetRepair, Repair } from './repair.ts'

/** "4", or "4 to 6". */
export function rangeWords({ least, most }: Range): string {
  return least === most ? String(least) : `${least} to ${most}`
}

/** Formula and figures of a facet's repair. */
export function repairWorking(repair: FacetRepair, { breakage }: Assessment): string {
  const { facet, replace, reset, pinned, lifted, broken, needed, notCounted, tiles } = repair
  const apart = replace + reset - pinned
  const parts = [
    `${facet.letter}: ${replace} to replace and ${reset} to set again, of ${wholePieces(tiles)} tiles`,
    `${pinned} with a pin of their own on the course grid${apart === 0 ? '' : `, ${apart} whose places are not known`}`,
    `${rangeWords(lifted)} lifted to reach them`,
    ...(broken === null || breakage === null
      ? []
      : [
          `${breakage.fromPercent} to ${breakage.toPercent} % of ${rangeWords({ least: lifted.least + reset, most: lifted.most + reset })} lifted and set again, rounded up, = ${rangeWords(broken)} that may break`,
        ]),
    ...(needed === null || broken === null
      ? []
      : [`${replace} + ${rangeWords(broken)} = ${rangeWords(needed)} new tiles`]),
    ...(notCounted.length === 0 ? [] : [`not counted: ${labels(notCounted)}`]),
  ]
  return `${parts.join('; ')}.`
}

function labels(findings: readonly Finding[]): string {
  return findings.map(({ number }) => findingLabel(number)).join(', ')
}

/** Needed against available in one line. */
export function needAgainstStock({ needed, available }: Repair): string {
  const need = needed === null ? 'not known' : rangeWords(needed)
  return `New tiles needed: ${need}. Matching tiles known of: ${available ?? 'none counted'}.`
}
