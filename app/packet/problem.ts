import { z } from 'zod'
import { cameraClockSchema } from '../evidence/camera.ts'
import { photoRoleSchema } from '../evidence/catalog/keys.ts'
import { photoTagsSchema } from '../evidence/photo.ts'
import { cameraIdSchema, findingIdSchema, photoIdSchema } from '../job/ids.ts'

/** Where in the job a problem is, so that a screen can go there. */
const problemPlaceSchema = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('sheet'), field: z.string() }),
  z.object({ kind: z.literal('facet'), id: z.string() }),
  z.object({ kind: z.literal('photo'), id: z.string() }),
  z.object({ kind: z.literal('finding'), id: z.string() }),
  z.object({ kind: z.literal('reading'), id: z.string() }),
  z.object({ kind: z.literal('field-tests') }),
  z.object({ kind: z.literal('scope') }),
  z.object({ kind: z.literal('plan') }),
  z.object({ kind: z.literal('photos') }),
  z.object({ kind: z.literal('job') }),
])
export type ProblemPlace = z.output<typeof problemPlaceSchema>

/** One step that mends a problem, as data; `label` says what it does. Each is an ordinary edit that can be undone. */
const problemFixSchema = z.discriminatedUnion('kind', [
  z.object({
    kind: z.literal('tag-photo'),
    label: z.string(),
    photoId: photoIdSchema,
    set: z.object({
      role: z.exactOptional(photoRoleSchema),
      leftOutBecause: z.exactOptional(photoTagsSchema.shape.leftOutBecause.removeDefault()),
      repeatedHour: photoTagsSchema.shape.repeatedHour,
    }),
  }),
  z.object({ kind: z.literal('set-clock'), label: z.string(), cameraId: cameraIdSchema, clock: cameraClockSchema }),
  z.object({
    kind: z.literal('show-photo'),
    label: z.string(),
    findingId: findingIdSchema,
    photoId: photoIdSchema,
    role: photoRoleSchema,
  }),
])
export type ProblemFix = z.output<typeof problemFixSchema>

/** Something to mend before a packet issues. `blocking` ones make the packet false or broken; the rest may be overruled with a reason. */
export const packetProblemSchema = z.object({
  /** Stable across runs for the same problem at the same place. */
  id: z.string(),
  weight: z.enum(['blocking', 'mend', 'notice']),
  sentence: z.string(),
  place: problemPlaceSchema,
  /** Ways to mend it in one step, likeliest first; left out where there is none. */
  fixes: z.exactOptional(z.array(problemFixSchema).min(1)),
})
export type PacketProblem = z.output<typeof packetProblemSchema>
