import { z } from 'zod'
import { facetIdSchema } from '../job/ids.ts'
import { edgeKinds } from './plan-drawing.ts'

export const edgeKindSchema = z.enum(edgeKinds)

/**
 * Which edge of a facet is meant, in terms that outlast small moves of its corners: the edge that it shares with another
 * facet; or one of its outer sides, by the direction that the side faces against the facet's downhill direction (0 for an
 * eave, 90 for the rake on its right hand as water sees it), and by where on the facet its middle lies, as shares of the
 * facet's width and of its depth from the low side.
 */
export const edgeOfFacetSchema = z.discriminatedUnion('at', [
  z.object({ at: z.literal('shared'), with: facetIdSchema }),
  z.object({
    at: z.literal('side'),
    facingDeg: z.number().min(0).max(360),
    across: z.number().min(-10).max(10),
    up: z.number().min(-10).max(10),
  }),
])
export type EdgeOfFacet = z.output<typeof edgeOfFacetSchema>

/** An edge whose kind a person has stated, against or in want of what follows from the slopes. */
export const edgeByHandSchema = z.object({ edge: edgeOfFacetSchema, kind: edgeKindSchema })
export type EdgeByHand = z.output<typeof edgeByHandSchema>

/** Words for kinds of edge in a sentence. */
export const edgeKindWords = {
  ridge: 'ridge',
  hip: 'hip',
  valley: 'valley',
  eave: 'eave',
  rake: 'rake',
  'pitch-break': 'change of pitch',
  step: 'step in height',
  'top-edge': 'top edge',
} as const satisfies Record<z.output<typeof edgeKindSchema>, string>
