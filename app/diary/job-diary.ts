import { z } from 'zod'
import { diaryEntrySchema } from './entry.ts'
import { jobClocksSchema } from './job-clocks.ts'

/** A job's diary and the clocks asked for in it, as snapshots carry them. Nothing of it goes into a packet by itself. */
export const jobDiarySchema = z.object({
  /** By number. */
  entries: z.array(diaryEntrySchema).default([]),
  clocks: jobClocksSchema.prefault({}),
})
