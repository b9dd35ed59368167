import { assessmentSchema } from '../../app/assessment/assessment.ts'
import type { DescribedJob } from '../../app/job/described-job.ts'
import { shippedWorkShares } from '../../app/rules/shipped-work-shares.ts'
import type { Write } from '../store/record-edits.ts'

interface Identities {
  readonly facetIdOf: (letter: string | null) => string | null
  readonly findingIds: ReadonlyMap<number, string>
}

/** The record of a described job's assessment: facets by letter and findings by number become identities. */
export function describedAssessmentWrites(
  jobId: string,
  { assessment }: DescribedJob,
  { facetIdOf, findingIds }: Identities,
): readonly Write[] {
  if (assessment === null) return []
  const { rule, sections, planned, earlier, treatments, profile, ...rest } = assessment
  const after = assessmentSchema.parse({
    ...rest,
    rule: shippedWorkShares.find(({ key }) => key === rule) ?? null,
    sections: sections.map(({ facets, ...section }) => ({ ...section, facetIds: facets.map(facetIdOf) })),
    planned: planned.map(({ facet, extent }) => ({ facetId: facetIdOf(facet), extent })),
    earlier: earlier.map(({ facet, ...work }) => ({ ...work, facetId: facetIdOf(facet) })),
    treatments: treatments.map(({ finding, treatment }) => ({ findingId: findingIds.get(finding), treatment })),
    profile: { statement: profile },
  })
  return [{ record: 'assessment', id: jobId, after }]
}
