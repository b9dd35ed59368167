import { z } from 'zod'
import { cameraIdSchema, photoIdSchema } from '../job/ids.ts'
import { localTimeSchema } from './photo-time.ts'

const correctionMsSchema = z
  .number()
  .int()
  .min(-40 * 365 * 86_400_000)
  .max(40 * 365 * 86_400_000)

/** One comparison of a camera's clock with a better one: what the camera wrote, and how much has to be added to it. */
export const clockComparisonSchema = z.object({
  by: z.enum(['clock-photo', 'linked-photo', 'gps-time', 'typed']),
  /** The camera's own photo that was compared; null where many were. */
  photoId: photoIdSchema.nullable(),
  /** What the camera wrote at that moment. */
  cameraLocal: localTimeSchema,
  correctionMs: correctionMsSchema,
  /** What the better clock said, as it was typed or read, with its zone. */
  trueWords: z.string().max(200),
})
export type ClockComparison = z.output<typeof clockComparisonSchema>

/**
 * What was found out about one camera's clock: add `correctionMs` to what it wrote. Where two comparisons are kept the
 * correction runs in a straight line from the one to the other, and `correctionMs` is that of the first.
 */
export const cameraClockSchema = z.object({
  correctionMs: correctionMsSchema.default(0),
  why: z.string().max(1000).default(''),
  comparisons: z.exactOptional(z.array(clockComparisonSchema).min(1).max(2)),
})
export type CameraClock = z.output<typeof cameraClockSchema>

/** A camera that took photos of a job. */
export const cameraSchema = z.object({
  id: cameraIdSchema,
  make: z.string(),
  model: z.string(),
  serial: z.string(),
  clock: cameraClockSchema,
})
export type Camera = z.output<typeof cameraSchema>
