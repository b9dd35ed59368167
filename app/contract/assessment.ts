import { z } from 'zod'
import { assessmentSchema } from '../assessment/assessment.ts'
import { facetSchema } from '../roof/facet.ts'
import { facetIdSchema, jobIdSchema } from '../job/ids.ts'
import { write } from './procedure.ts'

const { shape } = assessmentSchema

/** A part of the assessment, without the defaults that would empty the other parts. */
const assessmentPatchSchema = z
  .object({
    wind: shape.wind.unwrap(),
    rule: shape.rule.removeDefault(),
    workDate: shape.workDate.removeDefault(),
    sections: shape.sections.removeDefault(),
    planned: shape.planned.removeDefault(),
    earlier: shape.earlier.removeDefault(),
    bond: shape.bond.removeDefault(),
    lockFrom: shape.lockFrom.removeDefault(),
    treatments: shape.treatments.removeDefault(),
    breakage: shape.breakage.removeDefault(),
    stock: shape.stock.removeDefault(),
    searches: shape.searches.removeDefault(),
    profile: shape.profile.unwrap(),
  })
  .partial()
export type AssessmentPatch = z.output<typeof assessmentPatchSchema>

/** Edits of the assessment; each is one step of undo and one entry of the evidence log. */
export const assessmentEdits = {
  /** Changes the parts of the assessment that are given. */
  'assessment.save': write(z.object({ jobId: jobIdSchema, set: assessmentPatchSchema }), z.object({})),
  /** States how much of a facet was looked at, and why not all of it. */
  'assessment.state-inspected': write(
    z.object({ jobId: jobIdSchema, facetId: facetIdSchema, inspected: facetSchema.shape.inspected.unwrap() }),
    z.object({}),
  ),
}
