import { z } from 'zod'
import { cameraIdSchema, facetIdSchema, jobIdSchema, photoIdSchema } from '../job/ids.ts'
import { read, write } from './procedure.ts'

const inJob = { jobId: jobIdSchema }
const feetOnPlan = z.object({ xFt: z.number(), yFt: z.number() })

/** The places that a photo may show, likeliest first; offered to a person, never a tag by itself. */
export const suggestionSchema = z.object({
  photoId: photoIdSchema,
  ranking: z.array(
    z.object({ place: z.union([z.literal('ground'), facetIdSchema]), probability: z.number().min(0).max(1) }),
  ),
})
export type Suggestion = z.output<typeof suggestionSchema>

/** How one camera's positions lie on the plan, for correcting them: see `corrected`. Feet on the plan. */
const learnedFrameSchema = z.object({
  cameraId: cameraIdSchema.nullable(),
  photoCount: z.number().int(),
  shift: feetOnPlan,
  about: feetOnPlan,
  turn: z.discriminatedUnion('kind', [
    z.object({ kind: z.literal('fitted'), deg: z.number(), errorDeg: z.number() }),
    z.object({ kind: z.literal('refused'), because: z.enum(['too-few-photos', 'too-close-together']) }),
  ]),
  typicalResidualFt: z.number(),
})

export const placementSchema = z.object({
  /** For photos that nobody has placed. Empty while no facet is drawn. */
  suggestions: z.array(suggestionSchema),
  /** The photos that a person should place first, as they tell most of the others; see `findingTellingPhotos`. */
  asked: z.array(z.object({ photoId: photoIdSchema, expectedWrong: z.number().nonnegative() })),
  /** Cameras of whose positions something was learned. */
  frames: z.array(learnedFrameSchema),
})
export type Placement = z.output<typeof placementSchema>

export const placementProcedures = {
  'placement.suggest': read(z.object(inJob), placementSchema),
  /** Gives every photo without a facet its likeliest one where that is at least so probable; one step of undo. */
  'placement.accept': write(
    z.object({
      ...inJob,
      leastProbability: z.number().min(0.5, 'Below 50 % a suggestion is more often wrong than right.').max(1),
    }),
    z.object({ tagged: z.number().int() }),
  ),
}
