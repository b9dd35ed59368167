import { z } from 'zod'
import { edgeIdSchema, outlineIdSchema } from '../job/ids.ts'
import { planPointSchema } from '../job/places.ts'
import { pitchRiseSchema } from './facet.ts'
import type { OutlineRing, RoofOutline } from './skeleton/roof-outline.ts'

/** One edge of an outline: an eave that a slope rises from, or a gable wall that the slopes beside it run to. */
export const houseEdgeSchema = z.discriminatedUnion('kind', [
  z.object({ id: edgeIdSchema, kind: z.literal('eave'), pitchRise: pitchRiseSchema }),
  z.object({ id: edgeIdSchema, kind: z.literal('gable') }),
])
export type HouseEdge = z.output<typeof houseEdgeSchema>

/** A closed line of an outline: edge n runs from corner n to the next one. */
const houseRingSchema = z.object({
  corners: z.array(planPointSchema).min(3, 'An outline needs at least three corners.').max(1000),
  edges: z.array(houseEdgeSchema).min(3).max(1000),
})
export type HouseRing = z.output<typeof houseRingSchema>

/** The eaves line of one roof, from which its facets follow: the main roof, a garage, a porch. */
export const houseOutlineSchema = z.object({
  id: outlineIdSchema,
  name: z.string().trim().min(1, 'An outline needs a name.').max(60),
  outer: houseRingSchema,
  courtyards: z.array(houseRingSchema).max(20).default([]),
  /** Height of the eaves above the ground, feet. */
  eaveHeightFt: z.number().min(0).max(500).default(0),
})
export type HouseOutline = z.output<typeof houseOutlineSchema>

/** The outline as the roof builder takes it. */
export function roofOutlineOf({ outer, courtyards, eaveHeightFt }: HouseOutline): RoofOutline {
  return { outer: plainRing(outer), courtyards: courtyards.map(plainRing), eaveHeightFt }
}

function plainRing({ corners, edges }: HouseRing): OutlineRing {
  return {
    corners,
    edges: edges.map((edge) =>
      edge.kind === 'eave' ? { kind: 'eave', pitchRise: edge.pitchRise } : { kind: 'gable' },
    ),
  }
}
