import { z } from 'zod'
import { cameraIdSchema } from '../job/ids.ts'

/** What was found out about one camera's clock: add `correctionMs` to what it wrote. */
export const cameraClockSchema = z.object({
  correctionMs: z
    .number()
    .int()
    .min(-40 * 365 * 86_400_000)
    .max(40 * 365 * 86_400_000)
    .default(0),
  why: z.string().max(1000).default(''),
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
