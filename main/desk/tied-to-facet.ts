import type { Assessment } from '../../app/assessment/assessment.ts'
import type { FacetId } from '../../app/job/ids.ts'
import type { ReadDb } from '../store/database.ts'
import type { Write } from '../store/record-edits.ts'
import { assessmentOf } from '../store/records/assessment.ts'
import { fieldSurveyOf } from '../store/records/field-survey.ts'
import { listPhotos } from '../store/records/photos.ts'
import { findingTable, readingTable } from '../store/records/tables.ts'

/** What points to facets lets go of them in the same step, so that undo brings all of it back. */
export function withoutFacets(db: ReadDb, jobId: string, facetIds: readonly string[]): readonly Write[] {
  const isGone = (facetId: FacetId | null) => facetId !== null && facetIds.includes(facetId)
  const freed = <T extends { readonly facetId: FacetId | null }>(record: T): T =>
    isGone(record.facetId) ? { ...record, facetId: null } : record
  const survey = fieldSurveyOf(db, jobId)
  const after = {
    ...survey,
    checks: survey.checks.map(freed),
    squares: survey.squares.map(freed),
    others: survey.others.map(freed),
  }
  const isNamed = [...survey.checks, ...survey.squares, ...survey.others].some(({ facetId }) => isGone(facetId))
  return [
    ...listPhotos(db, jobId)
      .filter((photo) => isGone(photo.tags.facetId))
      .map((photo): Write => ({ record: 'photo', id: photo.id, after: { ...photo.tags, facetId: null } })),
    ...findingTable
      .list(db, jobId)
      .filter((finding) => isGone(finding.facetId))
      .map((finding): Write => ({ record: 'finding', id: finding.id, after: freed(finding) })),
    ...readingTable
      .list(db, jobId)
      .filter((reading) => isGone(reading.facetId))
      .map((reading): Write => ({ record: 'reading', id: reading.id, after: freed(reading) })),
    ...(isNamed ? [{ record: 'field-survey', id: jobId, after } as const] : []),
    ...assessmentWrites(db, jobId, isGone),
  ]
}

function assessmentWrites(db: ReadDb, jobId: string, isGone: (facetId: FacetId | null) => boolean): readonly Write[] {
  const { sections, planned, earlier, ...rest } = assessmentOf(db, jobId)
  const named = [...sections.flatMap(({ facetIds }) => facetIds), ...[...planned, ...earlier].map((one) => one.facetId)]
  if (!named.some(isGone)) return []
  const after: Assessment = {
    ...rest,
    sections: sections.map((one) => ({ ...one, facetIds: one.facetIds.filter((id) => !isGone(id)) })),
    planned: planned.filter(({ facetId }) => !isGone(facetId)),
    earlier: earlier.map((one) => (isGone(one.facetId) ? { ...one, facetId: null } : one)),
  }
  return [{ record: 'assessment', id: jobId, after }]
}

/** What once pointed to a facet, and points to none by now, points to it again. */
export function withFacetAgain(
  db: ReadDb,
  jobId: string,
  { facetId, tied }: { readonly facetId: string; readonly tied: readonly string[] },
): readonly Write[] {
  const isFree = (one: { readonly id: string; readonly facetId: string | null }) =>
    one.facetId === null && tied.includes(one.id)
  return [
    ...listPhotos(db, jobId)
      .filter(({ id, tags }) => isFree({ id, facetId: tags.facetId }))
      .map((photo): Write => ({ record: 'photo', id: photo.id, after: { ...photo.tags, facetId } })),
    ...findingTable
      .list(db, jobId)
      .filter(isFree)
      .map((finding): Write => ({ record: 'finding', id: finding.id, after: { ...finding, facetId } })),
    ...readingTable
      .list(db, jobId)
      .filter(isFree)
      .map((reading): Write => ({ record: 'reading', id: reading.id, after: { ...reading, facetId } })),
  ]
}
