import type { FacetId } from '../job/ids.ts'
import { roofEdges } from '../roof/edges.ts'
import { facetGeometry } from '../roof/facet-geometry.ts'
import type { Facet } from '../roof/facet.ts'
import type { RoofSection } from './assessment.ts'

/** A part of the roof that a rule on work judges by itself. */
export interface JudgedSection extends RoofSection {
  /** Grouped by a person, or as the plan has it. */
  readonly by: 'person' | 'plan'
  readonly areaSqFt: number
}

/**
 * The sections of a roof: those that a person grouped, then the facets left over, joined wherever they meet without a
 * step in height. Hips, ridges and valleys part nothing.
 */
export function roofSections(
  facets: readonly Facet[],
  grouped: readonly RoofSection[],
  upAzimuthDeg: number,
): readonly JudgedSection[] {
  const byId = new Map(facets.map((facet) => [facet.id, facet]))
  const areaOf = (ids: readonly FacetId[]) =>
    ids.reduce((sum, id) => {
      const facet = byId.get(id)
      return facet === undefined ? sum : sum + facetGeometry(facet).areaSqFt
    }, 0)
  const taken = new Set(grouped.flatMap(({ facetIds }) => facetIds))
  const own = grouped.map((section): JudgedSection => ({
    ...section,
    by: 'person',
    areaSqFt: areaOf(section.facetIds),
  }))
  const found = joined(facets, upAzimuthDeg)
    .map((ids) => ids.filter((id) => !taken.has(id)))
    .filter((ids) => ids.length > 0)
    .map((facetIds): JudgedSection => {
      const letters = facetIds.map((id) => byId.get(id)?.letter ?? '').join(', ')
      const name = `${facetIds.length === 1 ? 'Facet' : 'Facets'} ${letters}`
      return {
        id: `plan-${facetIds.join('-')}`,
        name,
        facetIds,
        permitDate: null,
        permit: '',
        by: 'plan',
        areaSqFt: areaOf(facetIds),
      }
    })
  return [...own, ...found]
}

/** Facets in groups that hang together. */
function joined(facets: readonly Facet[], upAzimuthDeg: number): readonly (readonly FacetId[])[] {
  const groupOf = new Map(facets.map(({ id }) => [id, id]))
  const rootOf = (id: FacetId): FacetId => {
    const up = groupOf.get(id) ?? id
    return up === id ? id : rootOf(up)
  }
  for (const { kind, facetIds } of roofEdges(facets, upAzimuthDeg)) {
    const [first, second] = facetIds
    if (kind !== 'step' && first !== undefined && second !== undefined) groupOf.set(rootOf(first), rootOf(second))
  }
  const groups = new Map<FacetId, FacetId[]>()
  for (const { id } of facets) groups.set(rootOf(id), [...(groups.get(rootOf(id)) ?? []), id])
  return [...groups.values()]
}
