import type { Facet } from '../../app/roof/facet.ts'
import type { ReadDb } from '../store/database.ts'
import { standingSteps } from '../store/record-edits.ts'
import { facetTable } from '../store/records/tables.ts'

/** A facet that went, as it was, and the records that pointed to it until then. */
export interface FormerFacet {
  readonly facet: Facet
  readonly tied: readonly string[]
}

/** Facets of an outline that went in a step which still stands, the last one first. */
export function formerFacets(db: ReadDb, jobId: string, outlineId: string): readonly FormerFacet[] {
  return standingSteps(db, jobId, { removing: 'facet' }).flatMap((changes) =>
    changes.flatMap(({ record, before, after }): FormerFacet[] => {
      if (record !== 'facet' || before === null || after !== null) return []
      const facet = facetTable.parse(before)
      if (facet.from?.outlineId !== outlineId) return []
      const tied = changes.filter((change) => facetIdIn(change.before) === facet.id && facetIdIn(change.after) === null)
      return [{ facet, tied: tied.map(({ id }) => id) }]
    }),
  )
}

/** The facet that a photo's tags, a finding or a reading points to. */
function facetIdIn(value: unknown): unknown {
  return typeof value === 'object' && value !== null && 'facetId' in value ? value.facetId : undefined
}
