import { z } from 'zod'
import { jobIdSchema } from '../job/ids.ts'
import { read } from './procedure.ts'

export const searchHitSchema = z.object({
  jobId: jobIdSchema,
  jobNumber: z.string(),
  kind: z.enum(['job', 'photo', 'finding', 'facet', 'attachment', 'video', 'diary']),
  id: z.string(),
  label: z.string(),
  /** Text around the match. */
  excerpt: z.string(),
})
export type SearchHit = z.output<typeof searchHitSchema>

export const searchProcedures = {
  /** Finds jobs, photos, findings and files by the words in them, in one job or in all. */
  'search.find': read(
    z.object({
      text: z.string().max(200),
      jobId: jobIdSchema.nullable().default(null),
      limit: z.number().int().min(1).max(200).default(50),
    }),
    z.object({ hits: z.array(searchHitSchema) }),
  ),
}
