import { refuse } from '../../app/contract/app-error.ts'
import type { ReadDb } from '../store/database.ts'
import { findPhoto } from '../store/records/photos.ts'
import { facetTable, findingTable } from '../store/records/tables.ts'

/** Refuses an edit that points to a record which is not in the job. */
export function needRecords(
  db: ReadDb,
  jobId: string,
  named: { facetId: string | null; photoIds?: readonly string[]; findingId?: string | null },
): void {
  const { facetId, photoIds = [], findingId = null } = named
  if (facetId !== null && facetTable.get(db, { jobId, id: facetId }) === null)
    refuse('not-found', 'This facet is no longer in the job.', { about: 'facetId' })
  if (photoIds.some((id) => findPhoto(db, id)?.jobId !== jobId))
    refuse('not-found', 'A photo that is named is not in this job.', { about: 'photos' })
  if (findingId !== null && findingTable.get(db, { jobId, id: findingId }) === null)
    refuse('not-found', 'This finding is no longer in the job.', { about: 'findingId' })
}
