import { listPhotos } from '../store/records/photos.ts'
import type { ReadDb } from '../store/database.ts'
import type { Write } from '../store/record-edits.ts'
import { findingTable, readingTable } from '../store/records/tables.ts'

/** What points to a facet lets go of it in the same step, so that undo brings both back. */
export function withoutFacet(db: ReadDb, jobId: string, facetId: string): readonly Write[] {
  return [
    ...listPhotos(db, jobId)
      .filter((photo) => photo.tags.facetId === facetId)
      .map((photo): Write => ({ record: 'photo', id: photo.id, after: { ...photo.tags, facetId: null } })),
    ...findingTable
      .list(db, jobId)
      .filter((finding) => finding.facetId === facetId)
      .map((finding): Write => ({ record: 'finding', id: finding.id, after: { ...finding, facetId: null } })),
    ...readingTable
      .list(db, jobId)
      .filter((reading) => reading.facetId === facetId)
      .map((reading): Write => ({ record: 'reading', id: reading.id, after: { ...reading, facetId: null } })),
  ]
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
