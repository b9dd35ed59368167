import { z } from 'zod'
import { geoPointSchema } from '../job/places.ts'

/** Why an observation is shown with a question mark beside it. */
export const doubtSchema = z.enum([
  'no-unit',
  'above-range',
  'gust-below-mean',
  'implausible',
  'marked-suspect',
  'peak-long-before',
  'contradicted',
  'clock-change',
])
export type Doubt = z.output<typeof doubtSchema>

export const doubtWords = {
  'no-unit': 'the report has no unit of speed, so its speeds are not used',
  'above-range': 'the report says "more than" this speed',
  'gust-below-mean': 'the gust is lower than the mean wind',
  implausible: 'the speed is beyond what stations record near the ground',
  'marked-suspect': 'the archive marks the value as suspect',
  'peak-long-before': 'the peak is dated more than two hours before its report',
  contradicted: 'another report of the same minute says otherwise',
  'clock-change': 'local time of this hour is not certain: the clocks changed',
} as const satisfies Record<Doubt, string>

/** Degrees that the wind comes from, clockwise from true north; north may be written 360. */
const fromDegSchema = z.number().min(0).max(360)
const speedKtSchema = z.number().min(0).max(1000)

/** One report of a station. Speeds in knots; what was not reported is null, never zero. */
export const observationSchema = z.object({
  station: z.string().min(1).max(60),
  atMs: z.number().int(),
  /** Line of the file it stands on, counted from 1; null when typed by hand. */
  line: z.number().int().positive().nullable(),
  fromDeg: fromDegSchema.nullable(),
  isVariable: z.boolean(),
  between: z.object({ fromDeg: fromDegSchema, toDeg: fromDegSchema }).nullable(),
  meanKt: speedKtSchema.nullable(),
  gustKt: speedKtSchema.nullable(),
  /** The highest wind since the report before, with its own time. */
  peak: z.object({ kt: speedKtSchema, fromDeg: fromDegSchema.nullable(), atMs: z.number().int() }).nullable(),
  doubts: z.array(doubtSchema).max(8),
})
export type Observation = z.output<typeof observationSchema>

/** The highest wind of a day as a station's daily summary gives it: a date and no hour. */
export const dailyPeakSchema = z.object({
  station: z.string(),
  date: z.string(),
  line: z.number().int().positive(),
  kt: speedKtSchema,
  fromDeg: fromDegSchema.nullable(),
})
export type DailyPeak = z.output<typeof dailyPeakSchema>

/** What a file says of a station. */
export const stationNoteSchema = z.object({
  code: z.string(),
  name: z.string(),
  position: geoPointSchema.nullable(),
  elevationFt: z.number().nullable(),
})
export type StationNote = z.output<typeof stationNoteSchema>

/** A row that could not be read, and why. */
export const rowProblemSchema = z.object({ line: z.number().int(), sentence: z.string() })
export type RowProblem = z.output<typeof rowProblemSchema>
