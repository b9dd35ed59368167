import { Temporal } from 'temporal-polyfill'
import { z } from 'zod'
import { offsetAtLocal, type HourPass, type OffsetAtLocal } from '../evidence/offset-at-local.ts'
import { calendarDateSchema, timeZoneSchema } from '../job/calendar.ts'
import { dateWords, offsetWords } from '../packet/format/times.ts'

interface WallTime {
  readonly date: string
  readonly time: string
  readonly timeZone: string
  readonly repeatedHour: HourPass | null
}

const passSchema = z.enum(['first', 'second']).nullable().default(null)

/** A time as it stands on a wall clock in a named zone, to the minute. */
export const diaryTimeSchema = z
  .object({
    date: calendarDateSchema,
    /** `HH:MM`, 24 hours. */
    time: z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/, 'Write the time as 14:30.'),
    timeZone: timeZoneSchema,
    /** Which of the two hours is meant where the clocks are set back. */
    repeatedHour: passSchema,
  })
  .refine((at) => offsetOf(at)?.change !== 'skipped', {
    message: 'The clocks are set forward over this time, so it never was. Write the time before or after.',
    path: ['time'],
  })
export type DiaryTime = z.output<typeof diaryTimeSchema>

function offsetOf({ date, time, timeZone, repeatedHour }: WallTime): OffsetAtLocal | null {
  return offsetAtLocal(asUtcMs(date, time), timeZone, repeatedHour)
}

function asUtcMs(date: string, time: string): number {
  return Temporal.PlainDateTime.from(`${date}T${time}`).toZonedDateTime('UTC').epochMilliseconds
}

/** The instant of a diary time, milliseconds since 1970. Of an hour that comes twice it is the first unless the second is named. */
export function diaryInstantMs(at: DiaryTime): number {
  return asUtcMs(at.date, at.time) - (offsetOf(at)?.offsetMinutes ?? 0) * 60_000
}

/** True where the clocks are set back over this time, so that it comes twice. */
export function comesTwice(at: DiaryTime): boolean {
  return offsetOf(at)?.change === 'repeated'
}

/** "March 14, 2026, 09:30 -04:00 (America/New_York)". */
export function diaryTimeWords(at: DiaryTime): string {
  return `${dateWords(at.date)}, ${at.time} ${offsetWords(offsetOf(at)?.offsetMinutes ?? 0)} (${at.timeZone})`
}

/** "2026-03-14 09:30 -04:00", for lists in which every line is in sight of the others. */
export function diaryTimeShort(at: DiaryTime): string {
  return `${at.date} ${at.time} ${offsetWords(offsetOf(at)?.offsetMinutes ?? 0)}`
}

/** An instant as a diary time of a zone, to the minute; the hour that comes twice is told apart. */
export function diaryTimeAt(atMs: number, timeZone: string): DiaryTime {
  const at = Temporal.Instant.fromEpochMilliseconds(atMs).toZonedDateTimeISO(timeZone).round({
    smallestUnit: 'minute',
    roundingMode: 'floor',
  })
  const plain: DiaryTime = {
    date: at.toPlainDate().toString(),
    time: at.toPlainTime().toString({ smallestUnit: 'minute' }),
    timeZone,
    repeatedHour: null,
  }
  if (!comesTwice(plain)) return plain
  return { ...plain, repeatedHour: diaryInstantMs(plain) === at.epochMilliseconds ? 'first' : 'second' }
}
