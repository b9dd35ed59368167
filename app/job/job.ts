import { z } from 'zod'
import { jobIdSchema } from './ids.ts'
import { planFrameSchema } from './places.ts'
import { jobSheetSchema } from './sheet.ts'

/** The number people use for a job: unique in a library, part of its folder's name. */
export const jobNumberSchema = z
  .string()
  .trim()
  .normalize('NFC')
  .min(1, 'A job number is needed.')
  .max(40, 'A job number has at most 40 characters.')
  .regex(
    /^[\p{L}\p{N}][\p{L}\p{N} ._-]*$/u,
    'A job number starts with a letter or digit and has only letters, digits, spaces, dots, dashes and underscores.',
  )

export const jobSchema = z.object({
  id: jobIdSchema,
  number: jobNumberSchema,
  createdAtMs: z.number().int(),
  sheet: jobSheetSchema,
  frame: planFrameSchema,
})
export type Job = z.output<typeof jobSchema>
