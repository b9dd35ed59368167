import type { FacetId } from '../job/ids.ts'
import { looseShare, type LooseShare } from './loose-share.ts'
import { roofAreas, type RoofArea } from './roof-area.ts'
import type { HandCheck } from './survey.ts'

/** Hand checks added up for one area, on one facet or over the roof. */
export interface CheckTally {
  /** Null over all facets. */
  readonly facetId: FacetId | null
  /** Null where no area was stated. */
  readonly area: RoofArea | null
  readonly checked: number
  readonly loose: number
  readonly tested: number
  readonly share: LooseShare
}

const areasAndNone: readonly (RoofArea | null)[] = [...roofAreas, null]

/** Hand checks by area over all facets. There is no line for the whole roof: a total would hide a bad edge in a good field. */
export function tallyByArea(checks: readonly HandCheck[]): readonly CheckTally[] {
  return areasAndNone.flatMap((area) =>
    summed(
      checks.filter((check) => check.area === area),
      null,
      area,
    ),
  )
}

/** Hand checks by facet, and in it by area, in the order in which facets first appear. */
export function tallyByFacet(checks: readonly HandCheck[]): readonly CheckTally[] {
  const facetIds = [...new Set(checks.map(({ facetId }) => facetId))]
  return facetIds.flatMap((facetId) =>
    areasAndNone.flatMap((area) =>
      summed(
        checks.filter((check) => check.facetId === facetId && check.area === area),
        facetId,
        area,
      ),
    ),
  )
}

function summed(checks: readonly HandCheck[], facetId: FacetId | null, area: RoofArea | null): readonly CheckTally[] {
  if (checks.length === 0) return []
  const sum = (pick: (check: HandCheck) => number) => checks.reduce((total, check) => total + pick(check), 0)
  const counts = { checked: sum((c) => c.checked), loose: sum((c) => c.loose), tested: sum((c) => c.tested) }
  return [{ facetId, area, ...counts, share: looseShare(counts) }]
}
