import { z } from 'zod'
import { jobIdSchema } from '../job/ids.ts'
import { taskStateSchema } from './intake.ts'

/** What the desk tells every screen that listens. Events announce state; they never steer. */
export const deskEventSchema = z.discriminatedUnion('type', [
  /**
   * Records of a job changed: fetch what changed. `revision` is the job's newest; a screen that has it already needs
   * nothing, and one that missed events catches up from the one it has.
   */
  z.object({ type: z.literal('job-changed'), jobId: jobIdSchema, revision: z.number().int() }),
  /** The list of jobs changed. */
  z.object({ type: z.literal('jobs-changed') }),
  /** Rules of the library were added, changed, hidden or withdrawn. */
  z.object({ type: z.literal('rules-changed') }),
  z.object({ type: z.literal('task'), task: taskStateSchema }),
])
export type DeskEvent = z.output<typeof deskEventSchema>
