import { z } from 'zod'

/** Where in the job a problem is, so that a screen can go there. */
const problemPlaceSchema = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('sheet'), field: z.string() }),
  z.object({ kind: z.literal('facet'), id: z.string() }),
  z.object({ kind: z.literal('photo'), id: z.string() }),
  z.object({ kind: z.literal('finding'), id: z.string() }),
  z.object({ kind: z.literal('reading'), id: z.string() }),
  z.object({ kind: z.literal('field-tests') }),
  z.object({ kind: z.literal('plan') }),
  z.object({ kind: z.literal('job') }),
])
export type ProblemPlace = z.output<typeof problemPlaceSchema>

/** Something to mend before a packet issues. `blocking` ones make the packet false or broken; the rest may be overruled with a reason. */
export const packetProblemSchema = z.object({
  /** Stable across runs for the same problem at the same place. */
  id: z.string(),
  weight: z.enum(['blocking', 'mend', 'notice']),
  sentence: z.string(),
  place: problemPlaceSchema,
})
export type PacketProblem = z.output<typeof packetProblemSchema>
