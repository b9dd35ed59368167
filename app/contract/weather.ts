import { z } from 'zod'
import { attachmentIdSchema, jobIdSchema } from '../job/ids.ts'
import { dailyPeakSchema, observationSchema, rowProblemSchema, stationNoteSchema } from '../weather/observation.ts'
import { averagingSchema, readingChoicesSchema, timeBasisSchema } from '../weather/reading-choices.ts'
import { speedUnitSchema } from '../weather/speed.ts'
import {
  weatherChoicesSchema,
  weatherSourceIdSchema,
  weatherSourceSchema,
  weatherStationIdSchema,
  weatherStationSchema,
} from '../weather/weather-records.ts'
import { read, write } from './procedure.ts'

const inJob = { jobId: jobIdSchema }
const done = z.object({})

/** All about the weather of a job, as snapshots carry it. */
export const jobWeatherSchema = z.object({
  stations: z.array(weatherStationSchema),
  sources: z.array(weatherSourceSchema),
  choices: weatherChoicesSchema,
})

/** A file as it was understood by the choices: enough to judge it by, not every row. */
const fileReadingSchema = z.object({
  kind: z.enum(['metar', 'lcd', 'isd-table', 'isd-lines', 'table', 'storm-reports', 'forecast', 'bulletin', 'unknown']),
  columns: z.array(z.string()),
  lacks: z.array(z.string()),
  stations: z.array(stationNoteSchema),
  total: z.number().int(),
  /** The first reports and the one with the highest speed. */
  first: z.array(observationSchema),
  highest: observationSchema.nullable(),
  firstMs: z.number().int().nullable(),
  lastMs: z.number().int().nullable(),
  dailyPeaks: z.array(dailyPeakSchema),
  problems: z.array(rowProblemSchema),
  problemTotal: z.number().int(),
  merged: z.number().int(),
  outsideDays: z.number().int(),
  proofs: z.array(z.string()),
  provenUnit: speedUnitSchema.nullable(),
  provenTimeBasis: timeBasisSchema.nullable(),
  cautions: z.array(z.string()),
})
export type FileReading = z.output<typeof fileReadingSchema>

export const weatherProcedures = {
  /** Reads a kept file by the choices and says what it would give; changes nothing. */
  'weather.read-file': read(
    z.object({ ...inJob, attachmentId: attachmentIdSchema, choices: readingChoicesSchema }),
    fileReadingSchema,
  ),
}

/** Edits of the weather; each is one step of undo. */
export const weatherEdits = {
  /** Takes the reports of a kept file. Refused while rows can't be read, unless the person says that the others are enough. */
  'weather.take-file': write(
    z.object({
      ...inJob,
      attachmentId: attachmentIdSchema,
      choices: readingChoicesSchema,
      provenance: weatherSourceSchema.shape.provenance,
      withoutBadRows: z.boolean().default(false),
    }),
    z.object({ id: weatherSourceIdSchema, observations: z.number().int() }),
  ),
  /** Adds one report typed by hand; where it was read is part of it. */
  'weather.add-observation': write(
    z.object({
      ...inJob,
      observation: observationSchema.omit({ line: true, doubts: true }),
      averaging: averagingSchema,
      provenance: z.string().trim().min(1, 'Say where this was read: the source is part of the observation.').max(2000),
    }),
    z.object({ id: weatherSourceIdSchema }),
  ),
  'weather.set-provenance': write(
    z.object({ ...inJob, id: weatherSourceIdSchema, provenance: weatherSourceSchema.shape.provenance.removeDefault() }),
    done,
  ),
  /** Lets go of a source and of stations that no other source reports of. The file stays among the attachments. */
  'weather.remove-source': write(z.object({ ...inJob, id: weatherSourceIdSchema }), done),
  /** Adds a station when `id` is null. */
  'weather.save-station': write(
    z.object({
      ...inJob,
      id: weatherStationIdSchema.nullable(),
      station: weatherStationSchema.omit({ id: true }),
    }),
    z.object({ id: weatherStationIdSchema }),
  ),
  'weather.choose': write(z.object({ ...inJob, choices: weatherChoicesSchema }), done),
}
