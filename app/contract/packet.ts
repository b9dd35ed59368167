import { z } from 'zod'
import { jobIdSchema } from '../job/ids.ts'
import { packetOptionsSchema } from '../packet/options.ts'
import { packetProblemSchema } from '../packet/problem.ts'
import { packetSummarySchema } from './jobs.ts'
import { read, write } from './procedure.ts'

export const packetProcedures = {
  /** What should be mended before the packet issues. */
  'packet.problems': read(z.object({ jobId: jobIdSchema }), z.object({ problems: z.array(packetProblemSchema) })),
  /** Makes the PDF as it would be issued now, for looking at; answers where to fetch it. */
  'packet.draft': read(
    z.object({ jobId: jobIdSchema, options: packetOptionsSchema.prefault({}) }),
    z.object({
      draftId: z.string(),
      pages: z.number().int(),
      bytes: z.number().int(),
      outline: z.array(z.object({ title: z.string(), page: z.number().int() })),
    }),
  ),
  /** Freezes the next revision. Answers at once; progress comes as events. */
  'packet.issue': write(
    z.object({
      jobId: jobIdSchema,
      options: packetOptionsSchema.prefault({}),
      /** Why problems that may be overruled are let stand. */
      overrules: z
        .array(
          z.object({ problemId: z.string(), reason: z.string().trim().min(3, 'Say why in a few words.').max(1000) }),
        )
        .max(1000)
        .default([]),
    }),
    z.object({ taskId: z.string() }),
  ),
  'packet.list': read(z.object({ jobId: jobIdSchema }), z.object({ packets: z.array(packetSummarySchema) })),
}
