import { findingSchema } from '../../app/evidence/finding.ts'
import { markupSchema, withoutMark, type Mark } from '../../app/evidence/markup.ts'
import { markOutside } from '../../app/evidence/markup/mark-points.ts'
import { photoTagsSchema, type PhotoFile } from '../../app/evidence/photo.ts'
import { fieldSurveySchema } from '../../app/fieldtest/survey.ts'
import { readingSchema } from '../../app/fieldtest/reading.ts'
import type { DescribedJob } from '../../app/job/described-job.ts'
import type { PhotoId } from '../../app/job/ids.ts'
import { facetSchema } from '../../app/roof/facet.ts'
import type { PriceBook } from '../../app/scope/price-book.ts'
import { doublesOf } from '../library/intake/file-rows.ts'
import type { ReadDb } from '../store/database.ts'
import type { Write } from '../store/record-edits.ts'
import { listCameras } from '../store/records/cameras.ts'
import { listPhotos } from '../store/records/photos.ts'
import { describedAssessmentWrites } from './described-assessment.ts'
import { describedScopeWrites } from './described-scope.ts'

/** The records of a described job, its names (facet letters, file names, finding numbers) turned into identities. */
export function describedRecords(
  db: ReadDb,
  jobId: string,
  { described, book, newId }: { described: DescribedJob; book: PriceBook | null; newId: () => string },
): readonly Write[] {
  const photoIds = photoIdsByName(db, jobId)
  const sizes = new Map(listPhotos(db, jobId).map((photo) => [photo.id, photo.file]))
  const written = new Set<string>()
  const facetIds = new Map(described.facets.map((facet) => [facet.letter, newId()]))
  const findingIds = new Map(described.findings.map((finding) => [finding.number, newId()]))
  const facetIdOf = (letter: string | null) => (letter === null ? null : (facetIds.get(letter) ?? null))
  return [
    { record: 'frame', id: jobId, after: described.frame },
    ...described.facets.map((facet): Write => {
      const after = facetSchema.parse({ ...facet, id: facetIdOf(facet.letter) })
      return { record: 'facet', id: after.id, after }
    }),
    ...cameraWrites(db, jobId, described),
    ...described.photos.flatMap(({ file, facet, marks, ...tags }): Write[] => {
      const id = photoIds.get(file)
      // Two names for the same bytes are one photo; what is said of the first name holds.
      if (id === undefined || written.has(id)) return []
      written.add(id)
      const tagged = photoTagsSchema.parse({ ...tags, facetId: facetIdOf(facet) })
      return [{ record: 'photo', id, after: tagged }, ...markupWrites(id, marks, sizes.get(id))]
    }),
    ...described.findings.map(({ facet, photos: shown, ...finding }): Write => {
      const after = findingSchema.parse({
        ...finding,
        id: findingIds.get(finding.number),
        facetId: facetIdOf(facet),
        photos: shown.flatMap(({ file, role }) => {
          const photoId = photoIds.get(file)
          return photoId === undefined ? [] : [{ photoId, role }]
        }),
      })
      return { record: 'finding', id: after.id, after }
    }),
    ...described.readings.map(({ facet, photos: shown, finding, ...reading }): Write => {
      const after = readingSchema.parse({
        ...reading,
        id: newId(),
        facetId: facetIdOf(facet),
        findingId: finding === null ? null : (findingIds.get(finding) ?? null),
        photoIds: shown.flatMap((file) => photoIds.get(file) ?? []),
      })
      return { record: 'reading', id: after.id, after }
    }),
    ...surveyWrites(jobId, described, { facetIdOf, photoIds }),
    ...describedScopeWrites(jobId, described, { facetIdOf, book }),
    ...describedAssessmentWrites(jobId, described, { facetIdOf, findingIds }),
  ]
}

/** Marks that lie beside the picture are passed over: they would be seen nowhere. */
function markupWrites(id: PhotoId, marks: readonly Mark[], file: PhotoFile | undefined): readonly Write[] {
  if (file === undefined) return []
  let inside = marks
  for (let out = markOutside(inside, file); out !== null; out = markOutside(inside, file))
    inside = withoutMark(inside, out.id)
  if (inside.length === 0) return []
  return [{ record: 'markup', id, after: markupSchema.parse({ photoId: id, marks: inside }) }]
}

interface Identities {
  readonly facetIdOf: (letter: string | null) => string | null
  readonly photoIds: ReadonlyMap<string, PhotoId>
}

function surveyWrites(jobId: string, { survey }: DescribedJob, { facetIdOf, photoIds }: Identities): readonly Write[] {
  if (survey === null) return []
  const named = <T extends { readonly facet: string | null; readonly photos: readonly string[] }>(
    lines: readonly T[],
  ) =>
    lines.map(({ facet, photos: shown, ...line }) => ({
      ...line,
      facetId: facetIdOf(facet),
      photoIds: shown.flatMap((file) => photoIds.get(file) ?? []),
    }))
  const after = fieldSurveySchema.parse({
    ...survey,
    checks: named(survey.checks),
    squares: named(survey.squares),
    others: named(survey.others),
  })
  return [{ record: 'field-survey', id: jobId, after }]
}

/** Photos by the names they came with; a name that was a double leads to the photo with the same bytes. */
function photoIdsByName(db: ReadDb, jobId: string): ReadonlyMap<string, PhotoId> {
  const photos = listPhotos(db, jobId)
  const byHash = new Map(photos.map((photo) => [photo.file.sha256, photo.id]))
  const ids = new Map(photos.map((photo) => [photo.file.fileName, photo.id]))
  for (const { fileName, sha256 } of doublesOf(db, jobId)) {
    const id = byHash.get(sha256)
    if (id !== undefined && !ids.has(fileName)) ids.set(fileName, id)
  }
  return ids
}

/** Cameras named in the description that took none of the photos are passed over. */
function cameraWrites(db: ReadDb, jobId: string, described: DescribedJob): readonly Write[] {
  return listCameras(db, jobId).flatMap((camera): Write[] => {
    const named = described.cameras.find(
      (one) =>
        one.make === camera.make && one.model === camera.model && (one.serial === '' || one.serial === camera.serial),
    )
    return named === undefined ? [] : [{ record: 'camera', id: camera.id, after: named.clock }]
  })
}
