import { z } from 'zod'
import { jobIdSchema, photoIdSchema } from '../job/ids.ts'
import { read } from './procedure.ts'

const nearDoublesSchema = z.object({
  photos: z.array(z.object({ photoId: photoIdSchema, sharpness: z.number(), clippedShare: z.number() })).min(2),
  /** The photo proposed to be kept, and why. Nothing is left out until a person says so. */
  best: photoIdSchema,
  why: z.string(),
})
export type NearDoublesGroup = z.output<typeof nearDoublesSchema>

export const nearDoubleProcedures = {
  /** Photos of the packet that show nearly the same. `waiting` counts those not looked at yet: ask again. */
  'near-doubles.find': read(
    z.object({ jobId: jobIdSchema }),
    z.object({ groups: z.array(nearDoublesSchema), waiting: z.number().int() }),
  ),
}
