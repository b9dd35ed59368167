import { z } from 'zod'

/** Figures of a rule that sets a time from something that happened. */
export const clockSchema = z.object({
  /** What starts the time, in words: "date of loss". */
  trigger: z.string().trim().min(1).max(200),
  count: z.number().int().positive().max(3650),
  unit: z.enum(['hours', 'calendar-days', 'business-days', 'months', 'years']),
})
