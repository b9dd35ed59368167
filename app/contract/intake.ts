import { z } from 'zod'
import { jobIdSchema, planImageIdSchema } from '../job/ids.ts'
import { planImageSchema } from '../roof/plan-image.ts'
import { read, write } from './procedure.ts'

/** A file that was not taken in, or came in with something missing, and why. */
export const fileNoteSchema = z.object({ fileName: z.string(), reason: z.string() })

/** How a long-running piece of work stands. */
export const taskStateSchema = z.object({
  taskId: z.string(),
  jobId: jobIdSchema,
  kind: z.enum(['intake', 'issue']),
  title: z.string(),
  state: z.enum(['running', 'done', 'cancelled', 'failed']),
  done: z.number().int(),
  total: z.number().int(),
  /** What is being done now, in words. */
  doing: z.string(),
  startedAtMs: z.number().int(),
  /** Estimated time left, milliseconds; null while unknown. */
  leftMs: z.number().nullable(),
  intake: z
    .object({
      photosAdded: z.number().int(),
      videosAdded: z.number().int(),
      attachmentsAdded: z.number().int(),
      doubles: z.array(z.object({ fileName: z.string(), sameAs: z.string() })),
      failed: z.array(fileNoteSchema),
      attached: z.array(fileNoteSchema),
      /** Videos taken in, each with the number it got. */
      videos: z.array(fileNoteSchema),
    })
    .nullable(),
  /** Set when an issue task is done. */
  packetId: z.string().nullable(),
  error: z.string().nullable(),
})
export type TaskState = z.output<typeof taskStateSchema>

/** Where the files of an intake come from. */
export const intakeSourceSchema = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('paths'), paths: z.array(z.string().min(1)).min(1) }),
  z.object({ kind: z.literal('upload'), uploadId: z.string().regex(/^[A-Za-z0-9-]{1,64}$/) }),
])
export type IntakeSource = z.output<typeof intakeSourceSchema>

export const intakeProcedures = {
  /** Takes files and folders into a job. Answers at once; progress comes as events. */
  'intake.start': write(z.object({ jobId: jobIdSchema, from: intakeSourceSchema }), z.object({ taskId: z.string() })),
  /** Takes one picture in to be laid under the plan. It becomes a supporting picture of the job, not a photo. */
  'plan-images.add': write(
    z.object({
      jobId: jobIdSchema,
      from: intakeSourceSchema,
      about: planImageSchema.pick({ kind: true, label: true, source: true }),
    }),
    z.object({ id: planImageIdSchema }),
  ),
  'tasks.list': read(z.object({}), z.object({ tasks: z.array(taskStateSchema) })),
  'tasks.show': read(z.object({ taskId: z.string() }), taskStateSchema),
  'tasks.cancel': read(z.object({ taskId: z.string() }), z.object({})),
}
