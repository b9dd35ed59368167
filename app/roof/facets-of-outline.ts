import type { EdgeId, FacetId } from '../job/ids.ts'
import type { PlanFrame } from '../job/places.ts'
import { facetSchema, type Facet } from './facet.ts'
import { wrapDegrees } from './angles.ts'
import { nextLetters } from './facet-letters.ts'
import { roofOutlineOf, type HouseOutline } from './house-outline.ts'
import { azimuthOf } from './plan-frame.ts'
import { buildRoof } from './skeleton/build-roof.ts'
import type { BuiltFacet } from './skeleton/built-roof.ts'
import { roofFaultSentence } from './skeleton/roof-faults.ts'

/** The facets that follow from an outline, or the sentence that says why there are none. */
export type OutlineFacets =
  | { readonly ok: true; readonly facets: readonly Facet[]; readonly removed: readonly FacetId[] }
  | { readonly ok: false; readonly sentence: string }

/**
 * Builds the roof over an outline and turns it into the facets of a plan. A facet that rises from an edge it rose from
 * before keeps its identity, letter, name and what was inspected; what a person set on it by hand stays. New facets get
 * the next letters round the house; facets whose edge no longer bears one are named as removed.
 *
 * @param plan `existing` are all facets of the job, also those of other outlines; `newId` is asked once for each new facet
 */
export function facetsOfOutline(
  outline: HouseOutline,
  plan: {
    readonly existing: readonly Facet[]
    readonly frame: PlanFrame
    readonly frontAzimuthDeg: number | null
    readonly newId: () => FacetId
  },
): OutlineFacets {
  const built = buildRoof(roofOutlineOf(outline))
  if (!built.ok) {
    const [fault] = built.faults
    return { ok: false, sentence: fault === undefined ? 'This outline has no roof.' : roofFaultSentence(fault) }
  }
  if (built.roof.facets.some((facet) => facet.holes.length > 0)) {
    return { ok: false, sentence: 'One slope runs all the way round a courtyard. Make two of its sides eaves.' }
  }
  const mine = plan.existing.filter((facet) => facet.from?.outlineId === outline.id)
  const made = built.roof.facets.flatMap((facet) => {
    const edges = edgesUnder(outline, facet)
    const [edgeId] = edges
    if (edgeId === undefined) return []
    const known = mine.find(({ from }) => from !== null && edges.includes(from.edgeId))
    return [{ known, shape: shapeOf(facet, plan.frame), from: known?.from ?? { outlineId: outline.id, edgeId } }]
  })
  const kept = made.flatMap(({ known, shape, from }) => (known === undefined ? [] : [followed(known, shape, from)]))
  const unnamed = made.flatMap(({ known, shape, from }) =>
    known === undefined ? [facetSchema.parse({ ...shape, id: plan.newId(), letter: 'X', from })] : [],
  )
  const staying = plan.existing.filter(
    (facet) => facet.from?.outlineId !== outline.id || kept.some(({ id }) => id === facet.id),
  )
  const letters = new Map(
    nextLetters(
      staying.map((facet) => facet.letter),
      unnamed,
      { upAzimuthDeg: plan.frame.upAzimuthDeg, frontAzimuthDeg: plan.frontAzimuthDeg },
    ).map(({ facetId, letter }) => [facetId, letter]),
  )
  return {
    ok: true,
    facets: [...kept, ...unnamed.map((facet) => ({ ...facet, letter: letters.get(facet.id) ?? facet.letter }))],
    removed: mine.filter((facet) => !kept.some(({ id }) => id === facet.id)).map((facet) => facet.id),
  }
}

type Shape = Pick<Facet, 'outline' | 'pitchRise' | 'downslopeAzimuthDeg'>

/** Directions to a ten-thousandth of a degree: a person reads "180", not what is left of the arithmetic. */
function shapeOf({ outline, pitchRise, downhill }: BuiltFacet, { upAzimuthDeg }: PlanFrame): Shape {
  const downslopeAzimuthDeg = wrapDegrees(Math.round(azimuthOf(downhill, upAzimuthDeg) * 1e4) / 1e4)
  return { outline: [...outline], pitchRise, downslopeAzimuthDeg }
}

/** What was set by hand stays; the rest follows the outline. */
function followed(known: Facet, shape: Shape, from: Facet['from']): Facet {
  const byHand = Object.fromEntries(known.setByHand.map((field) => [field, known[field]]))
  return facetSchema.parse({ ...known, ...shape, ...byHand, from })
}

function edgesUnder(outline: HouseOutline, facet: BuiltFacet): readonly EdgeId[] {
  const rings = [outline.outer, ...outline.courtyards]
  return facet.eaves.flatMap(({ ring, edge }) => rings[ring]?.edges[edge - 1]?.id ?? [])
}
