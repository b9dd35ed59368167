import { z } from 'zod'
import { facetSchema } from '../roof/facet.ts'
import {
  assessmentSchema,
  earlierWorkSchema,
  plannedWorkSchema,
  roofSectionSchema,
  stockSchema,
  stockSearchSchema,
  treatmentSchema,
} from './assessment.ts'

const letter = facetSchema.shape.letter

/** An assessment as a described job states it: facets by letter, findings by number, a shipped rule by its key, no documents. */
export const describedAssessmentSchema = assessmentSchema
  .omit({
    rule: true,
    sections: true,
    planned: true,
    earlier: true,
    treatments: true,
    stock: true,
    searches: true,
    profile: true,
  })
  .extend({
    rule: z.string().min(1).max(64).nullable().default(null),
    sections: z
      .array(
        roofSectionSchema
          .omit({ facetIds: true })
          .extend({ facets: z.array(letter).max(500) })
          .strict(),
      )
      .max(200)
      .default([]),
    planned: z
      .array(plannedWorkSchema.omit({ facetId: true }).extend({ facet: letter }).strict())
      .max(500)
      .default([]),
    earlier: z
      .array(
        earlierWorkSchema
          .omit({ facetId: true })
          .extend({ facet: letter.nullable().default(null) })
          .strict(),
      )
      .max(200)
      .default([]),
    treatments: z
      .array(z.strictObject({ finding: z.number().int().positive(), treatment: treatmentSchema }))
      .max(5000)
      .default([]),
    stock: z
      .array(stockSchema.omit({ attachmentIds: true }).strict())
      .max(200)
      .default([]),
    searches: z
      .array(stockSearchSchema.omit({ attachmentIds: true }).strict())
      .max(200)
      .default([]),
    profile: z.string().max(2000).default(''),
  })
  .strict()
