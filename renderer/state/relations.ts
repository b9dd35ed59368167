import type { JobSnapshot } from '../../app/contract/jobs.ts'
import type { LogEntry, RecordKind } from '../../app/evidence/log-entry.ts'
import type { FacetId, FindingId, NarrationId, PhotoId, ReadingId, VideoId } from '../../app/job/ids.ts'

/** What a person has selected, the same in every view. */
export type Selection =
  | { readonly kind: 'none' }
  | { readonly kind: 'photos'; readonly ids: readonly PhotoId[]; readonly lead: PhotoId }
  | { readonly kind: 'video'; readonly id: VideoId }
  | { readonly kind: 'facet'; readonly id: FacetId }
  | { readonly kind: 'finding'; readonly id: FindingId }
  | { readonly kind: 'reading'; readonly id: ReadingId }
  | { readonly kind: 'cue'; readonly narrationId: NarrationId; readonly cue: number }
  | { readonly kind: 'entry'; readonly seq: number }

type Records = Pick<JobSnapshot, 'photos' | 'findings' | 'readings' | 'facets'>

/**
 * Photos that belong to the selection: the selected ones; the stills of the selected video; those tagged on the selected facet and those of its findings;
 * those of the selected finding with its readings, or of the selected reading; those a log entry is about.
 */
export function relatedPhotoIds(
  selection: Selection,
  job: Records,
  entry: LogEntry | null = null,
): ReadonlySet<PhotoId> {
  switch (selection.kind) {
    case 'none':
      return new Set()
    case 'photos':
      return new Set(selection.ids)
    case 'video':
      return new Set(job.photos.filter((photo) => photo.still?.videoId === selection.id).map((photo) => photo.id))
    case 'facet':
      return new Set([
        ...job.photos.filter((photo) => photo.tags.facetId === selection.id).map((photo) => photo.id),
        ...photosOfFindings(job, (finding) => finding.facetId === selection.id),
      ])
    case 'finding':
      return new Set([
        ...photosOfFindings(job, (finding) => finding.id === selection.id),
        ...job.readings.filter((reading) => reading.findingId === selection.id).flatMap((reading) => reading.photoIds),
      ])
    case 'reading':
      return new Set(
        job.readings.filter((reading) => reading.id === selection.id).flatMap((reading) => reading.photoIds),
      )
    case 'cue':
      return new Set(photosOfFindings(job, (finding) => isSpokenIn(finding, selection)))
    case 'entry': {
      const named = new Set([...recordsOfEntry(entry, 'photo'), ...recordsOfEntry(entry, 'markup')])
      return new Set(job.photos.filter((photo) => named.has(photo.id)).map((photo) => photo.id))
    }
  }
}

/** Findings that belong to the selection: shown by the selected photos, on the selected facet, the selected one, or named by a log entry. */
export function relatedFindingIds(
  selection: Selection,
  job: Records,
  entry: LogEntry | null = null,
): ReadonlySet<FindingId> {
  const chosen = (fits: (finding: Records['findings'][number]) => boolean) =>
    new Set(job.findings.filter(fits).map((finding) => finding.id))
  switch (selection.kind) {
    case 'none':
    case 'video':
      return new Set()
    case 'photos': {
      const ids = new Set(selection.ids)
      return chosen((finding) => finding.photos.some((shown) => ids.has(shown.photoId)))
    }
    case 'facet':
      return chosen((finding) => finding.facetId === selection.id)
    case 'finding':
      return chosen((finding) => finding.id === selection.id)
    case 'reading': {
      const findingId = job.readings.find((reading) => reading.id === selection.id)?.findingId ?? null
      return chosen((finding) => finding.id === findingId)
    }
    case 'cue':
      return chosen((finding) => isSpokenIn(finding, selection))
    case 'entry': {
      const named = recordsOfEntry(entry, 'finding')
      return chosen((finding) => named.has(finding.id))
    }
  }
}

/** Readings that belong to the selection: the selected one, or those of the selected facet or finding, or shown by the selected photos. */
export function relatedReadingIds(selection: Selection, job: Pick<Records, 'readings'>): ReadonlySet<ReadingId> {
  const chosen = (fits: (reading: Records['readings'][number]) => boolean) =>
    new Set(job.readings.filter(fits).map((reading) => reading.id))
  switch (selection.kind) {
    case 'none':
    case 'video':
    case 'cue':
    case 'entry':
      return new Set()
    case 'photos': {
      const ids = new Set(selection.ids)
      return chosen((reading) => reading.photoIds.some((id) => ids.has(id)))
    }
    case 'facet':
      return chosen((reading) => reading.facetId === selection.id)
    case 'finding':
      return chosen((reading) => reading.findingId === selection.id)
    case 'reading':
      return chosen((reading) => reading.id === selection.id)
  }
}

/** Facets that belong to the selection: the selected one, or where the selected photos, finding or reading are, or named by a log entry. */
export function relatedFacetIds(
  selection: Selection,
  job: Records,
  entry: LogEntry | null = null,
): ReadonlySet<FacetId> {
  switch (selection.kind) {
    case 'none':
    case 'video':
      return new Set()
    case 'photos': {
      const ids = new Set(selection.ids)
      return known(job.photos.filter((photo) => ids.has(photo.id)).map((photo) => photo.tags.facetId))
    }
    case 'facet':
      return new Set([selection.id])
    case 'finding':
      return known(job.findings.filter((finding) => finding.id === selection.id).map((finding) => finding.facetId))
    case 'reading':
      return known(job.readings.filter((reading) => reading.id === selection.id).map((reading) => reading.facetId))
    case 'cue':
      return known(job.findings.filter((finding) => isSpokenIn(finding, selection)).map((finding) => finding.facetId))
    case 'entry': {
      const named = recordsOfEntry(entry, 'facet')
      return new Set(job.facets.filter((facet) => named.has(facet.id)).map((facet) => facet.id))
    }
  }
}

/** Cues of a narration in which the selected records were spoken of, or the selected cue itself. */
export function relatedCues(selection: Selection, job: Records, narrationId: NarrationId): ReadonlySet<number> {
  if (selection.kind === 'cue') return new Set(selection.narrationId === narrationId ? [selection.cue] : [])
  if (selection.kind === 'none' || selection.kind === 'entry') return new Set()
  const findings = relatedFindingIds(selection, job)
  return new Set(
    job.findings
      .filter(({ id }) => findings.has(id))
      .flatMap(({ spoken }) => spoken.flatMap((one) => (one.narrationId === narrationId ? [one.cue] : []))),
  )
}

function isSpokenIn({ spoken }: Records['findings'][number], at: { narrationId: NarrationId; cue: number }): boolean {
  return spoken.some((one) => one.narrationId === at.narrationId && one.cue === at.cue)
}

function photosOfFindings(job: Records, fits: (finding: Records['findings'][number]) => boolean): readonly PhotoId[] {
  return job.findings.filter(fits).flatMap((finding) => finding.photos.map((shown) => shown.photoId))
}

function known(ids: readonly (FacetId | null)[]): ReadonlySet<FacetId> {
  return new Set(ids.filter((id) => id !== null))
}

/** Identities of one kind of record that a log entry names. */
export function recordsOfEntry(entry: LogEntry | null, kind: RecordKind): ReadonlySet<string> {
  if (entry === null) return new Set()
  const { event } = entry
  switch (event.type) {
    case 'photo-taken-in':
    case 'still-taken':
    case 'double-seen':
      return kind === 'photo' ? new Set([event.photoId]) : new Set()
    case 'edited':
    case 'undone':
    case 'redone':
      return new Set(event.changes.filter((change) => change.record === kind).map((change) => change.id))
    case 'job-opened':
    case 'video-taken-in':
    case 'attachment-taken-in':
    case 'problem-overruled':
    case 'packet-issued':
      return new Set()
  }
}
