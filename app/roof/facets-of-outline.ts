import type { EdgeId, FacetId } from '../job/ids.ts'
import type { PlanFrame } from '../job/places.ts'
import type { Facet, HandSet } from './facet.ts'
import { wrapDegrees } from './angles.ts'
import { nextLetters } from './facet-letters.ts'
import { roofOutlineOf, type HouseOutline } from './house-outline.ts'
import { azimuthOf } from './plan-frame.ts'
import { buildRoofBeside } from './skeleton/build-roof-beside.ts'
import type { BuiltFacet } from './skeleton/built-roof.ts'
import { overlapSentence, roofFaultSentence, type RoofFault } from './skeleton/roof-faults.ts'

/** The facets that follow from an outline, or why there are none: what is wrong in a word, and as a sentence. */
export type OutlineFacets =
  | {
      readonly ok: true
      readonly facets: readonly Facet[]
      readonly removed: readonly FacetId[]
      /** Facets that had gone and are there again. */
      readonly returned: readonly FacetId[]
    }
  | { readonly ok: false; readonly fault: RoofFault['kind'] | 'ring-facet'; readonly sentence: string }

/** What stands round an outline when its facets are made. */
export interface OutlinePlan {
  /** All facets of the job, also those of other outlines. */
  readonly existing: readonly Facet[]
  /** Facets that the outline's edges bore once and do no more, the last one first. */
  readonly former: readonly Facet[]
  /** Other outlines of the house. */
  readonly neighbours: readonly HouseOutline[]
  readonly frame: PlanFrame
  readonly frontAzimuthDeg: number | null
  /** Asked once for each new facet. */
  readonly newId: () => FacetId
}

/**
 * Builds the roof over an outline and turns it into the facets of a plan. A facet that rises from an edge it rose from
 * before keeps its identity, letter, name and what was inspected; what a person set on it by hand stays. An edge that bears
 * a slope again, such as a gable turned back into an eave, gets back the facet that it bore last: identity, name, what was
 * inspected, what was stated about its edges, and its letter unless another facet has taken it meanwhile. New facets get
 * the next letters round the house; facets whose edge no longer bears one are named as removed.
 */
export function facetsOfOutline(outline: HouseOutline, plan: OutlinePlan): OutlineFacets {
  const built = buildRoofBeside(roofOutlineOf(outline), plan.neighbours.map(roofOutlineOf))
  if (!built.ok) {
    const [fault] = built.faults
    return fault === undefined
      ? { ok: false, fault: 'unsolved', sentence: 'This outline has no roof.' }
      : { ok: false, fault: fault.kind, sentence: sentenceOf(fault, outline, plan.neighbours) }
  }
  if (built.roof.facets.some((facet) => facet.holes.length > 0)) {
    return {
      ok: false,
      fault: 'ring-facet',
      sentence: 'One slope runs all the way round a courtyard. Make two of its sides eaves.',
    }
  }
  const mine = plan.existing.filter((facet) => facet.from?.outlineId === outline.id)
  const taken = new Set(plan.existing.map(({ id }) => id))
  const former = plan.former.filter((facet) => facet.from?.outlineId === outline.id && !taken.has(facet.id))
  const made = built.roof.facets.flatMap((facet) => {
    const edges = edgesUnder(outline, facet)
    const [edgeId] = edges
    if (edgeId === undefined) return []
    const rose = ({ from }: Facet) => from !== null && edges.includes(from.edgeId)
    const known = mine.find(rose)
    const back = known === undefined ? former.find(rose) : undefined
    const from = {
      outlineId: outline.id,
      edgeId: (known ?? back)?.from?.edgeId ?? edgeId,
      eaveHeightFt: outline.eaveHeightFt,
    }
    return [{ known, back, shape: { ...shapeOf(facet, plan.frame), from } }]
  })
  const kept = made.flatMap(({ known, shape }) => (known === undefined ? [] : [followed(known, shape)]))
  const staying = plan.existing.filter(
    (facet) => facet.from?.outlineId !== outline.id || kept.some(({ id }) => id === facet.id),
  )
  const back = made.flatMap(({ back, shape }) => (back === undefined ? [] : [{ ...back, ...shape, setByHand: [] }]))
  const unnamed = made.flatMap(({ known, back, shape }) =>
    known === undefined && back === undefined ? [newFacet(plan.newId(), shape)] : [],
  )
  const lettered = withFreeLetters(back, staying)
  const named = withLetters([...back.filter((facet) => !lettered.includes(facet)), ...unnamed], {
    ...plan,
    existing: [...staying, ...lettered],
  })
  return {
    ok: true,
    facets: [...kept, ...lettered, ...named],
    removed: mine.filter((facet) => !kept.some(({ id }) => id === facet.id)).map((facet) => facet.id),
    returned: back.map(({ id }) => id),
  }
}

function sentenceOf(fault: RoofFault, outline: HouseOutline, neighbours: readonly HouseOutline[]): string {
  if (fault.kind !== 'roofs-overlap') return roofFaultSentence(fault)
  const other = neighbours[fault.other - 1]?.name ?? `outline ${fault.other}`
  return overlapSentence(`"${outline.name}" and "${other}"`, fault.at)
}

/** Those of the facets whose letter nobody has taken meanwhile. */
function withFreeLetters(facets: readonly Facet[], staying: readonly Facet[]): readonly Facet[] {
  const taken = new Set(staying.map(({ letter }) => letter))
  return facets.filter(({ letter }) => !taken.has(letter) && taken.add(letter))
}

function withLetters(facets: readonly Facet[], plan: OutlinePlan): readonly Facet[] {
  const letters = new Map(
    nextLetters(
      plan.existing.map((facet) => facet.letter),
      facets,
      { upAzimuthDeg: plan.frame.upAzimuthDeg, frontAzimuthDeg: plan.frontAzimuthDeg },
    ).map(({ facetId, letter }) => [facetId, letter]),
  )
  return facets.map((facet) => ({ ...facet, letter: letters.get(facet.id) ?? facet.letter }))
}

type Shape = Pick<Facet, 'outline' | 'pitchRise' | 'downslopeAzimuthDeg'>
type Following = Shape & Pick<Facet, 'from'>

/** Directions to a ten-thousandth of a degree: a person reads "180", not what is left of the arithmetic. */
function shapeOf({ outline, pitchRise, downhill }: BuiltFacet, { upAzimuthDeg }: PlanFrame): Shape {
  const downslopeAzimuthDeg = wrapDegrees(Math.round(azimuthOf(downhill, upAzimuthDeg) * 1e4) / 1e4)
  return { outline: [...outline], pitchRise, downslopeAzimuthDeg }
}

/** What was set by hand stays; the rest follows the outline. */
function followed(known: Facet, shape: Following): Facet {
  const isByHand = (field: HandSet) => known.setByHand.includes(field)
  return {
    ...known,
    from: shape.from,
    outline: isByHand('outline') ? known.outline : shape.outline,
    pitchRise: isByHand('pitchRise') ? known.pitchRise : shape.pitchRise,
    downslopeAzimuthDeg: isByHand('downslopeAzimuthDeg') ? known.downslopeAzimuthDeg : shape.downslopeAzimuthDeg,
  }
}

function newFacet(id: FacetId, shape: Following): Facet {
  return { ...shape, id, letter: 'X', name: '', inspected: { percent: null, note: '' }, setByHand: [] }
}

function edgesUnder(outline: HouseOutline, facet: BuiltFacet): readonly EdgeId[] {
  const rings = [outline.outer, ...outline.courtyards]
  return facet.eaves.flatMap(({ ring, edge }) => rings[ring]?.edges[edge - 1]?.id ?? [])
}
