import { z } from 'zod'
import { jobIdSchema } from '../job/ids.ts'
import { taskStateSchema } from './intake.ts'

/** What the desk tells every screen that listens. Events announce state; they never steer. */
export const deskEventSchema = z.discriminatedUnion('type', [
  /** Records of a job changed: fetch it again. */
  z.object({ type: z.literal('job-changed'), jobId: jobIdSchema }),
  /** The list of jobs changed. */
  z.object({ type: z.literal('jobs-changed') }),
  z.object({ type: z.literal('task'), task: taskStateSchema }),
])
export type DeskEvent = z.output<typeof deskEventSchema>
