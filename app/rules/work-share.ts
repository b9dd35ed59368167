import { z } from 'zod'
import { calendarDateSchema } from '../job/calendar.ts'

/** Figures of a rule on the share of a roof that is worked on within some months. */
export const workShareSchema = z.object({
  /** The rule's bound is passed by more than this share; at exactly this share it is not. */
  morePercent: z.number().positive().max(100),
  /** Earlier work counts when it was done within so many months. */
  withinMonths: z.number().int().positive().max(120),
  /** What divides a roof into the sections that are judged, and what does not. */
  sections: z.string().trim().max(1000),
  /** A roof built or replaced under a permit of this day or later may be worked on in part, from this share up. */
  exception: z
    .object({
      permitFrom: calendarDateSchema,
      atLeastPercent: z.number().positive().max(100),
      says: z.string().max(1000),
    })
    .nullable(),
})
