import { z } from 'zod'
import { calendarDateSchema, timeZoneSchema } from '../job/calendar.ts'

/** Day, and where it matters the time, on which what starts a clock happened. */
export const clockStartSchema = z.object({
  date: calendarDateSchema,
  /** `HH:MM`; null when only the day is known. Clocks that count hours need it. */
  time: z
    .string()
    .regex(/^([01]\d|2[0-3]):[0-5]\d$/, 'Write the time as 14:30.')
    .nullable()
    .default(null),
  timeZone: timeZoneSchema,
})
export type ClockStart = z.output<typeof clockStartSchema>

/** One rule that somebody asked to have counted in this job. */
export const askedClockSchema = z.object({
  id: z.string().min(1).max(64),
  ruleKey: z.string().min(1).max(64),
  start: clockStartSchema,
  /** What the start rests on, such as "letter in the file". */
  note: z.string().trim().max(1000).default(''),
})
export type AskedClock = z.output<typeof askedClockSchema>

/** What was asked for of statutory clocks in one job. Nothing is: the state in which every job begins. */
export const jobClocksSchema = z.object({
  /** ISO 3166-2 codes of the jurisdictions whose rules are shown to choose from. */
  jurisdictions: z
    .array(z.string().regex(/^[A-Z]{2}(-[A-Z0-9]{1,3})?$/))
    .max(20)
    .default([]),
  asked: z.array(askedClockSchema).max(100).default([]),
})
export type JobClocks = z.output<typeof jobClocksSchema>

/** No clock at all. */
export const NO_CLOCKS: JobClocks = { jurisdictions: [], asked: [] }
