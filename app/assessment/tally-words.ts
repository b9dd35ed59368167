import { components } from '../evidence/catalog/components.ts'
import { conditions } from '../evidence/catalog/conditions.ts'
import { extentWords } from '../evidence/catalog/extent-words.ts'
import { findingLabel, type Finding } from '../evidence/finding.ts'
import type { TallyRow } from '../evidence/tally.ts'
import type { Facet } from '../roof/facet.ts'
import { facetGeometry } from '../roof/facet-geometry.ts'
import type { PieceSize } from '../roof/quantities.ts'
import type { FacetTally, TilesAffected } from './facet-tallies.ts'

/** How much of a facet was looked at: "all", "60 %, wet above the porch", "not looked at", "not stated". */
export function inspectedWords({ inspected: { percent, note } }: Pick<Facet, 'inspected'>): string {
  const words =
    percent === null ? 'not stated' : percent === 0 ? 'not looked at' : percent === 100 ? 'all' : `${percent} %`
  return note.trim() === '' ? words : `${words}, ${note.trim()}`
}

/** What was not counted in a line, as it was said: "several field tiles, not counted (F-3)". */
export function apartWords(row: TallyRow): string {
  const told = (finding: Finding) =>
    `${extentWords(finding.extent, components[finding.component])} (${findingLabel(finding.number)})`
  return row.apart.map(told).join('; ')
}

/** Tiles affected in a few words: "12 of 480 = 2.5 %". */
export function affectedWords(affected: TilesAffected): string {
  switch (affected.kind) {
    case 'none-counted':
      return affected.uncounted === 0 ? 'none counted' : `not counted in ${findingsWords(affected.uncounted)}`
    case 'unknown-tiles':
      return `${affected.affected} counted`
    case 'share': {
      const { affected: found, tiles, uncounted } = affected
      const more = uncounted === 0 ? '' : `, and ${findingsWords(uncounted)} not counted`
      return `${share(found, tiles)}${more}`
    }
  }
}

/** Every figure of a facet's line, in sentences that can be checked. */
export function tallyWorking({ facet, rows, affected }: FacetTally, piece: PieceSize | null): readonly string[] {
  const name = facet === null ? 'Without a facet' : `Facet ${facet.letter}`
  const sums = rows.flatMap(({ component, condition, counted }) => {
    // One finding's count is in the table as it stands.
    if (counted === null || counted.findings.length < 2) return []
    const parts = counted.findings.map(
      ({ number, extent }) => `${extent.kind === 'exactly' ? extent.count : 0} (${findingLabel(number)})`,
    )
    return [
      `${name}, ${components[component].label.toLowerCase()}, ${conditions[condition].label.toLowerCase()}: ${parts.join(' + ')} = ${counted.count}.`,
    ]
  })
  return [...sums, ...shareWorking(name, { facet, affected, piece })]
}

interface ShareParts {
  readonly facet: Facet | null
  readonly affected: TilesAffected
  readonly piece: PieceSize | null
}

function shareWorking(name: string, { facet, affected, piece }: ShareParts): readonly string[] {
  if (affected.kind === 'none-counted') return []
  if (affected.kind === 'unknown-tiles' || facet === null || piece === null) {
    const lack = facet === null ? 'they name no facet' : 'exposure or cover width is not on the job sheet'
    return [`${name}: ${affected.affected} tiles counted with damage; no share of tiles, since ${lack}.`]
  }
  const { affected: found, tiles, lookedAt } = affected
  const area = facetGeometry(facet).areaSqFt.toFixed(1)
  const whole = `${name}: ${area} sq ft × 144 / (${piece.exposureIn} in × ${piece.coverWidthIn} in) = ${tiles} tiles, up to whole ones; ${share(found, tiles)} counted with damage.`
  return [whole, lookedAtWorking(name, found, lookedAt)]
}

function lookedAtWorking(name: string, found: number, lookedAt: number | null): string {
  if (lookedAt === null) return `${name}: how much was looked at is not stated, so the share may be of a part only.`
  if (found > lookedAt) {
    return `${name}: ${found} tiles counted with damage don't fit on the part stated as looked at, about ${lookedAt} tiles. Check both.`
  }
  return `${name}: the part looked at has about ${lookedAt} tiles by area; ${share(found, lookedAt)} of those.`
}

/** What a reader must know about the sums; stands wherever they are shown. */
export const TALLY_CAUTION =
  'Only exact counts are added. A tile that two findings count stands in the sum twice; findings that say "several" or give no number are in no sum.'

function share(found: number, of: number): string {
  return of === 0 ? `${found} of 0` : `${found} of ${of} = ${((100 * found) / of).toFixed(1)} %`
}

function findingsWords(count: number): string {
  return count === 1 ? '1 finding' : `${count} findings`
}
