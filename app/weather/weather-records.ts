import { z } from 'zod'
import { idSchema } from '../job/brand.ts'
import { attachmentIdSchema } from '../job/ids.ts'
import { geoPointSchema } from '../job/places.ts'
import { dailyPeakSchema, observationSchema } from './observation.ts'
import { averagingSchema, readingChoicesSchema } from './reading-choices.ts'
import { exposureSchema } from './velocity-pressure.ts'

export const weatherStationIdSchema = idSchema('WeatherStationId')
export const weatherSourceIdSchema = idSchema('WeatherSourceId')
export type WeatherSourceId = z.output<typeof weatherSourceIdSchema>

/** A place where wind is measured. */
export const weatherStationSchema = z.object({
  id: weatherStationIdSchema,
  /** As the reports name it; unique in a job. */
  code: z.string().trim().min(1, 'A station needs the code that its reports carry.').max(60),
  name: z.string().trim().max(200).default(''),
  position: geoPointSchema.nullable().default(null),
  elevationFt: z.number().min(-2000).max(30_000).nullable().default(null),
  /** Height of the wind instrument above ground. */
  anemometerHeightFt: z.number().positive().max(2000).nullable().default(null),
  note: z.string().max(1000).default(''),
})
export type WeatherStation = z.output<typeof weatherStationSchema>

/** Where observations come from: a kept file, or a person who typed them from a source that is named. */
export const weatherSourceSchema = z.object({
  id: weatherSourceIdSchema,
  /** The kept file; null for what was typed by hand. */
  attachmentId: attachmentIdSchema.nullable(),
  fileName: z.string().max(300),
  sha256: z.string().max(64),
  /** Where and when the file was got and by whom, in the person's words. */
  provenance: z.string().trim().max(2000).default(''),
  /** How the file was read; null for what was typed. */
  choices: readingChoicesSchema.nullable(),
  averaging: averagingSchema,
  observations: z.array(observationSchema).max(6000),
  dailyPeaks: z.array(dailyPeakSchema).max(2000).default([]),
  /** Rows of the file that could not be read and were left out. */
  leftOut: z.number().int().min(0).default(0),
  merged: z.number().int().min(0).default(0),
})
export type WeatherSource = z.output<typeof weatherSourceSchema>

const hours = z.number().min(0).max(720)

/** What a person chose for looking at the wind of a job, and for the figures that are printed as context. */
export const weatherChoicesSchema = z.object({
  /** The window around the day of loss, hours before it begins and after it ends. */
  hoursBefore: hours.default(24),
  hoursAfter: hours.default(24),
  exposure: exposureSchema.nullable().default(null),
  /** Wind speed for the context figures, 3-second gust, mph; null when none is wanted. */
  speedMph: z.number().positive().max(400).nullable().default(null),
  /** Where that speed comes from, in the person's words. */
  speedSource: z.string().max(400).default(''),
  elevationFt: z.number().min(-2000).max(20_000).nullable().default(null),
  kzt: z.number().min(1).max(5).default(1),
  kd: z.number().min(0.5).max(1).default(0.85),
  liftCoefficient: z.number().positive().max(2).default(0.2),
  tileLengthFt: z.number().positive().max(4).nullable().default(null),
  armFt: z.number().positive().max(4).nullable().default(null),
  gcp: z.number().min(-6).max(0).nullable().default(null),
})
export type WeatherChoices = z.output<typeof weatherChoicesSchema>

/** All about the weather of a job. */
export interface JobWeather {
  readonly stations: readonly WeatherStation[]
  readonly sources: readonly WeatherSource[]
  readonly choices: WeatherChoices
}

/** A job in which nothing is known of the weather. */
export const NO_WEATHER: JobWeather = { stations: [], sources: [], choices: weatherChoicesSchema.parse({}) }
