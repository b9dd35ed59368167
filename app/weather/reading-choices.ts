import { z } from 'zod'
import { calendarDateSchema, timeZoneSchema } from '../job/calendar.ts'
import { speedUnitSchema } from './speed.ts'

/** What the times in a file mean; always stated by a person, because files seldom say. */
export const timeBasisSchema = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('utc') }),
  /** One offset all year, such as local standard time. */
  z.object({ kind: z.literal('fixed-offset'), offsetMinutes: z.number().int().min(-720).max(840) }),
  /** Local time with daylight saving, by zone. */
  z.object({ kind: z.literal('zone'), zone: timeZoneSchema }),
])
export type TimeBasis = z.output<typeof timeBasisSchema>

/** Over what time a station's mean wind is taken. */
export const averagingSchema = z.enum(['two-minute', 'ten-minute', 'one-minute', 'not-stated'])
export type Averaging = z.output<typeof averagingSchema>

export const averagingWords = {
  'two-minute': '2-minute mean',
  'ten-minute': '10-minute mean',
  'one-minute': '1-minute mean',
  'not-stated': 'mean wind, averaging time not stated',
} as const satisfies Record<Averaging, string>

const columnSchema = z.string().max(200).nullable().default(null)

/** How a person says a station file is to be read. */
export const readingChoicesSchema = z.object({
  timeBasis: timeBasisSchema.default({ kind: 'utc' }),
  unit: speedUnitSchema.default('kt'),
  averaging: averagingSchema.default('not-stated'),
  /** Reports with a day and no month are dated near this day. */
  nearDate: calendarDateSchema.nullable().default(null),
  /** Only reports of these UTC days are taken; the file keeps all. */
  fromDate: calendarDateSchema.nullable().default(null),
  toDate: calendarDateSchema.nullable().default(null),
  /** Columns of a table by name; a station that no column names is named here. */
  columns: z
    .object({
      station: columnSchema,
      time: columnSchema,
      direction: columnSchema,
      mean: columnSchema,
      gust: columnSchema,
    })
    .prefault({}),
  stationCode: z.string().trim().max(60).default(''),
  hasDecimalComma: z.boolean().default(false),
})
export type ReadingChoices = z.output<typeof readingChoicesSchema>
