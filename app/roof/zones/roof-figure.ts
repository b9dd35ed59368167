import type { FacetId } from '../../job/ids.ts'
import type { RoofEdge } from '../edges.ts'
import type { RoofFigure } from './edition.ts'

/** Edges across which two facets belong to one roof. At a step heights differ: what lies behind it is another roof. */
const JOINING: readonly RoofEdge['kind'][] = ['ridge', 'hip', 'valley', 'pitch-break']

/**
 * Which of the standard's figures the roof of a facet matches: all the facets that join it, directly or by way of
 * others, have ridges and rakes without hips (gable), or hips without rakes (hip). Null for anything else, such as a hip
 * roof with a gable at one end or a single slope.
 */
export function roofFigure(facetId: FacetId, edges: readonly RoofEdge[]): RoofFigure | null {
  const roof = joinedTo(facetId, edges)
  const kinds = new Set(edges.filter(({ facetIds }) => facetIds.some((id) => roof.has(id))).map(({ kind }) => kind))
  if (kinds.has('top-edge')) return null
  if (kinds.has('hip')) return kinds.has('rake') ? null : 'hip'
  return kinds.has('ridge') && kinds.has('rake') ? 'gable' : null
}

function joinedTo(start: FacetId, edges: readonly RoofEdge[]): ReadonlySet<FacetId> {
  const found = new Set([start])
  const joining = edges.filter(({ kind }) => JOINING.includes(kind))
  for (let before = 0; before < found.size;) {
    before = found.size
    for (const { facetIds } of joining) {
      if (facetIds.some((id) => found.has(id))) for (const id of facetIds) found.add(id)
    }
  }
  return found
}
