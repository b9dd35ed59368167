import { z } from 'zod'
import { describedAssessmentSchema } from '../assessment/described-assessment.ts'
import { diaryContentSchema } from '../diary/entry.ts'
import { cameraClockSchema } from '../evidence/camera.ts'
import { photoRoleSchema } from '../evidence/catalog/keys.ts'
import { findingSchema } from '../evidence/finding.ts'
import { marksSchema } from '../evidence/markup.ts'
import { photoTagsSchema } from '../evidence/photo.ts'
import { readingSchema } from '../fieldtest/reading.ts'
import { fieldSurveySchema, handCheckSchema, otherTestSchema, testSquareSchema } from '../fieldtest/survey.ts'
import { facetSchema } from '../roof/facet.ts'
import { scopeSchema } from '../scope/scope-record.ts'
import { readingChoicesSchema } from '../weather/reading-choices.ts'
import { weatherChoicesSchema, weatherStationSchema } from '../weather/weather-records.ts'
import { jobNumberSchema } from './job.ts'
import { planFrameSchema } from './places.ts'
import { jobSheetSchema } from './sheet.ts'

const fileNameSchema = z.string().min(1).max(255)
const facetLetterSchema = facetSchema.shape.letter
const namedPlace = {
  facet: facetLetterSchema.nullable().default(null),
  photos: z.array(fileNameSchema).max(50).default([]),
}
const byIdentity = { facetId: true, photoIds: true } as const

/** A field survey whose lines name facets by letter and photos by file name. */
const describedSurveySchema = fieldSurveySchema
  .omit({ checks: true, squares: true, others: true })
  .extend({
    checks: z.array(handCheckSchema.omit(byIdentity).extend(namedPlace).strict()).max(2000).default([]),
    squares: z.array(testSquareSchema.omit(byIdentity).extend(namedPlace).strict()).max(2000).default([]),
    others: z.array(otherTestSchema.omit(byIdentity).extend(namedPlace).strict()).max(500).default([]),
  })
  .strict()

const facetLettersSchema = z.array(facetLetterSchema).max(500).nullable().default(null)

/** A scope whose bids name facets by letter, and the file of its prices in `prices/`. */
const describedScopeSchema = scopeSchema
  .extend({
    facets: z.strictObject({ repair: facetLettersSchema, replacement: facetLettersSchema }).prefault({}),
    prices: fileNameSchema.nullable().default(null),
  })
  .strict()

/**
 * A job written down by hand or by another program: `job.json` beside a folder `photos/` and, where there is narration, `narration/`. Records name each other the
 * way people do, facets by letter and photos by file name, never by identity.
 */
export const describedJobSchema = z.strictObject({
  format: z.literal('battenbook-job'),
  version: z.literal(1),
  number: jobNumberSchema,
  sheet: jobSheetSchema.prefault({}),
  frame: planFrameSchema.prefault({}),
  facets: z
    .array(facetSchema.omit({ id: true, from: true, setByHand: true, edgesByHand: true }).strict())
    .max(500)
    .default([]),
  cameras: z
    .array(
      z.strictObject({
        make: z.string(),
        model: z.string(),
        serial: z.string().default(''),
        clock: cameraClockSchema,
      }),
    )
    .max(50)
    .default([]),
  photos: z
    .array(
      photoTagsSchema
        .omit({ facetId: true })
        .extend({
          file: fileNameSchema,
          facet: facetLetterSchema.nullable().default(null),
          marks: marksSchema.default([]),
        })
        .strict(),
    )
    .max(20_000)
    .default([]),
  findings: z
    .array(
      findingSchema
        .omit({ id: true, facetId: true, photos: true, spoken: true })
        .extend({
          facet: facetLetterSchema.nullable().default(null),
          photos: z
            .array(z.strictObject({ file: fileNameSchema, role: photoRoleSchema }))
            .max(200)
            .default([]),
        })
        .strict(),
    )
    .max(5000)
    .default([]),
  readings: z
    .array(
      readingSchema
        .omit({ id: true, facetId: true, photoIds: true, findingId: true })
        .extend({
          facet: facetLetterSchema.nullable().default(null),
          photos: z.array(fileNameSchema).max(50).default([]),
          /** Number of the finding that the reading belongs to. */
          finding: z.number().int().positive().nullable().default(null),
        })
        .strict(),
    )
    .max(5000)
    .default([]),
  /** Subtitle files in `narration/` beside `photos/`, and when their recordings began. */
  narrations: z
    .array(
      z.strictObject({ file: fileNameSchema, recordedFrom: z.iso.datetime({ offset: true }).nullable().default(null) }),
    )
    .max(50)
    .default([]),
  /** Entries of the diary, without files and packets: those are tied to entries in the program. */
  diary: z
    .array(z.strictObject({ number: z.number().int().positive(), content: diaryContentSchema }))
    .max(2000)
    .default([]),
  survey: describedSurveySchema.nullable().default(null),
  scope: describedScopeSchema.nullable().default(null),
  assessment: describedAssessmentSchema.nullable().default(null),
  weather: z
    .strictObject({
      stations: z
        .array(weatherStationSchema.omit({ id: true }).strict())
        .max(200)
        .default([]),
      files: z
        .array(
          z.strictObject({
            file: fileNameSchema,
            provenance: z.string().max(2000).default(''),
            choices: readingChoicesSchema.prefault({}),
          }),
        )
        .max(50)
        .default([]),
      choices: weatherChoicesSchema.prefault({}),
    })
    .prefault({}),
})
export type DescribedJob = z.output<typeof describedJobSchema>
/** As written, before defaults are filled in. */
export type DescribedJobInput = z.input<typeof describedJobSchema>
