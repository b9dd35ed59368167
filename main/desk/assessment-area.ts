import { assessmentSchema, type Assessment } from '../../app/assessment/assessment.ts'
import { refuse } from '../../app/contract/app-error.ts'
import type { ReadDb } from '../store/database.ts'
import { assessmentOf } from '../store/records/assessment.ts'
import { findAttachment } from '../store/records/attachments.ts'
import { facetTable, findingTable } from '../store/records/tables.ts'
import type { DeskWorld } from './desk-world.ts'
import { editJob } from './edit-job.ts'
import type { Area } from './handlers.ts'
import { needRecords } from './need-records.ts'
import { onlyGiven } from './only-given.ts'

const partNames = {
  wind: 'the wind direction',
  rule: 'the rule on the share of work',
  workDate: 'the day of the work',
  sections: 'roof sections',
  planned: 'proposed work',
  earlier: 'earlier work',
  bond: 'how courses lie',
  lockFrom: 'the side of the lock',
  treatments: 'what tiles need',
  breakage: 'the allowance for breaking',
  stock: 'matching tile',
  searches: 'searches for matching tile',
  profile: 'what is known of the profile',
} as const satisfies Record<keyof Assessment, string>

/** What people state for the assessment of a job. */
export function assessmentArea(world: DeskWorld): Area<'assessment'> {
  return {
    'assessment.save': ({ jobId, set }) =>
      editJob(world, jobId, (db) => {
        const given = onlyGiven(set)
        const after = withoutLostFindings(db, jobId, assessmentSchema.parse({ ...assessmentOf(db, jobId), ...given }))
        refuseFaults(db, jobId, after)
        const parts = Object.entries(partNames).flatMap(([key, name]) => (key in given ? [name] : []))
        return {
          summary: `Change ${parts.join(', ')} of the assessment`,
          writes: [{ record: 'assessment', id: jobId, after }],
          result: {},
        }
      }),
    'assessment.state-inspected': ({ jobId, facetId, inspected }) =>
      editJob(world, jobId, (db) => {
        const facet =
          facetTable.get(db, { jobId, id: facetId }) ?? refuse('not-found', 'This facet is no longer in the job.')
        return {
          summary: `State what was looked at of facet ${facet.letter}`,
          writes: [{ record: 'facet', id: facetId, after: { ...facet, inspected } }],
          result: {},
        }
      }),
  }
}

/** What was said of findings that have been removed since goes with them. */
function withoutLostFindings(db: ReadDb, jobId: string, assessment: Assessment): Assessment {
  const known = new Set(findingTable.list(db, jobId).map(({ id }) => id))
  return { ...assessment, treatments: assessment.treatments.filter(({ findingId }) => known.has(findingId)) }
}

/** Refuses what points to records that are not in the job, and a facet in two sections. */
function refuseFaults(db: ReadDb, jobId: string, { sections, planned, earlier, ...rest }: Assessment): void {
  const grouped = sections.flatMap(({ facetIds }) => facetIds)
  if (new Set(grouped).size < grouped.length) {
    refuse('invalid', 'A facet can be in one section only.', { about: 'sections' })
  }
  const stated = planned.map(({ facetId }) => facetId)
  if (new Set(stated).size < stated.length) {
    refuse('invalid', 'The work on a facet is stated twice.', { about: 'planned' })
  }
  for (const facetId of new Set([...grouped, ...stated, ...earlier.map((one) => one.facetId)])) {
    needRecords(db, jobId, { facetId })
  }
  for (const id of [...rest.stock, ...rest.searches, rest.profile].flatMap(({ attachmentIds }) => attachmentIds)) {
    if (findAttachment(db, id)?.jobId !== jobId) {
      refuse('not-found', 'A document that is named is not among the files of this job.', { about: 'attachmentIds' })
    }
  }
}
