import { z } from 'zod'
import { csvReadingsSchema, newReadingSchema } from '../fieldtest/csv-readings.ts'
import { fieldSurveySchema } from '../fieldtest/survey.ts'
import { jobIdSchema, readingIdSchema } from '../job/ids.ts'
import { read, write } from './procedure.ts'

const inJob = { jobId: jobIdSchema }

/** A part of the survey, without the defaults that would empty the other parts. */
export const surveyPatchSchema = z
  .object({
    criterionKey: fieldSurveySchema.shape.criterionKey.removeDefault(),
    ownCriteria: fieldSurveySchema.shape.ownCriteria.removeDefault(),
    agency: fieldSurveySchema.shape.agency.unwrap(),
    listedResistanceLbf: fieldSurveySchema.shape.listedResistanceLbf.removeDefault(),
    instruments: fieldSurveySchema.shape.instruments.removeDefault(),
    checks: fieldSurveySchema.shape.checks.removeDefault(),
    squares: fieldSurveySchema.shape.squares.removeDefault(),
    others: fieldSurveySchema.shape.others.removeDefault(),
  })
  .partial()
export type SurveyPatch = z.output<typeof surveyPatchSchema>

/** Edits of field tests; each is one step of undo and one entry of the evidence log. */
export const fieldTestEdits = {
  /** Adds readings in one step; their numbers follow each other in the order given. */
  'readings.add': write(
    z.object({ ...inJob, readings: z.array(newReadingSchema).min(1).max(2000) }),
    z.object({ ids: z.array(readingIdSchema) }),
  ),
  /** Changes the parts of the survey that are given. */
  'survey.save': write(z.object({ ...inJob, set: surveyPatchSchema }), z.object({})),
}

export const fieldTestProcedures = {
  /** Reads a file of readings in CSV and keeps nothing of it. */
  'field-files.read-csv': read(z.object({ ...inJob, text: z.string().max(5_000_000) }), csvReadingsSchema),
}
