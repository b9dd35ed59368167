import { z } from 'zod'
import { logEntrySchema } from '../evidence/log-entry.ts'
import { jobIdSchema } from '../job/ids.ts'
import { read } from './procedure.ts'

export const logProcedures = {
  /** Entries after `afterSeq`, oldest first. */
  'log.page': read(
    z.object({
      jobId: jobIdSchema,
      afterSeq: z.number().int().min(0).default(0),
      limit: z.number().int().min(1).max(1000).default(200),
    }),
    z.object({ entries: z.array(logEntrySchema), total: z.number().int() }),
  ),
  /** Replays a job's chain; `brokenAtSeq` is the first entry that does not fit. */
  'log.verify': read(
    z.object({ jobId: jobIdSchema }),
    z.object({
      entries: z.number().int(),
      headHash: z.string(),
      brokenAtSeq: z.number().int().nullable(),
      why: z.string().nullable(),
    }),
  ),
}
