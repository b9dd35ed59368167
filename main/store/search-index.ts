import type { RecordKind } from '../../app/evidence/log-entry.ts'
import { diaryLabel } from '../../app/diary/entry.ts'
import { wordsOf } from '../../app/diary/entry-words.ts'
import { findingLabel } from '../../app/evidence/finding.ts'
import { photoLabel } from '../../app/evidence/photo.ts'
import { videoLabel } from '../../app/evidence/video-label.ts'
import type { WriteDb } from './database.ts'
import { findJob } from './jobs.ts'
import { findAttachment } from './records/attachments.ts'
import { diaryEntryTable } from './records/diary.ts'
import { markupTable } from './records/markups.ts'
import { findPhoto } from './records/photos.ts'
import { facetTable, findingTable } from './records/tables.ts'
import { findVideo } from './records/videos.ts'
import { forgetWords, indexWords } from './search.ts'

/** Brings the search index up to date with one record after it was written. */
export function indexRecord(db: WriteDb, jobId: string, { record, id }: { record: RecordKind; id: string }): void {
  switch (record) {
    case 'sheet':
      return indexJob(db, jobId)
    case 'photo':
    case 'markup':
      return indexPhoto(db, id)
    case 'finding':
      return indexFinding(db, jobId, id)
    case 'facet':
      return indexFacet(db, jobId, id)
    case 'video':
      return indexVideo(db, id)
    case 'attachment':
      return indexAttachment(db, id)
    case 'diary-entry':
      return indexDiaryEntry(db, jobId, id)
    case 'frame':
    case 'outline':
    case 'camera':
    case 'reading':
    case 'plan-image':
    case 'narration':
    case 'draft-decision':
    case 'field-survey':
    case 'assessment':
    case 'weather-station':
    case 'weather-source':
    case 'weather-choices':
    case 'scope':
    case 'price-book':
    case 'diary-clocks':
      return
  }
}

/** A job is found by its number and by what its sheet says of people, place and claim. */
export function indexJob(db: WriteDb, jobId: string): void {
  const found = findJob(db, jobId)
  if (found === null) return
  const { number, sheet } = found.job
  const { property, owner, insurance } = sheet
  indexWords(db, jobId, {
    kind: 'job',
    id: jobId,
    label: number,
    words: [
      number,
      owner.name,
      property.address,
      property.city,
      property.region,
      property.postalCode,
      insurance.insurer,
      insurance.claimNumber,
      insurance.policyNumber,
      ...sheet.contacts.map((contact) => contact.name),
    ],
  })
}

/** A photo is found by its number, its caption, the words written over it and the name the camera gave it. */
export function indexPhoto(db: WriteDb, id: string): void {
  const photo = findPhoto(db, id)
  if (photo === null) return
  const label = photoLabel(photo.number)
  const marks = markupTable.get(db, { jobId: photo.jobId, id })?.marks ?? []
  const written = marks.flatMap((mark) => (mark.kind === 'text' ? mark.text : []))
  const words = [label, photo.tags.caption, ...written, photo.file.fileName]
  indexWords(db, photo.jobId, { kind: 'photo', id, label, words })
}

/** A video is found by its number, its caption and the name the camera gave it. */
export function indexVideo(db: WriteDb, id: string): void {
  const video = findVideo(db, id)
  if (video === null) return
  const label = videoLabel(video.number)
  indexWords(db, video.jobId, { kind: 'video', id, label, words: [label, video.tags.caption, video.file.fileName] })
}

/** An attachment is found by its name and by what people say of it. */
export function indexAttachment(db: WriteDb, id: string): void {
  const kept = findAttachment(db, id)
  if (kept === null) return
  const { file, tags } = kept.attachment
  const words = [file.fileName, tags.description]
  indexWords(db, kept.jobId, { kind: 'attachment', id, label: file.fileName, words })
}

function indexFinding(db: WriteDb, jobId: string, id: string): void {
  const finding = findingTable.get(db, { jobId, id })
  if (finding === null) return forgetWords(db, { kind: 'finding', id })
  const label = findingLabel(finding.number)
  indexWords(db, jobId, {
    kind: 'finding',
    id,
    label,
    words: [label, finding.observation, finding.placeWords, finding.cause.note, finding.temporaryMeasure],
  })
}

/** An entry of the diary is found by what was said, by whom, and by what was handed over. */
function indexDiaryEntry(db: WriteDb, jobId: string, id: string): void {
  const entry = diaryEntryTable.get(db, { jobId, id })
  if (entry === null) return forgetWords(db, { kind: 'diary', id })
  indexWords(db, jobId, { kind: 'diary', id, label: diaryLabel(entry.number), words: wordsOf(entry) })
}

function indexFacet(db: WriteDb, jobId: string, id: string): void {
  const facet = facetTable.get(db, { jobId, id })
  if (facet === null) return forgetWords(db, { kind: 'facet', id })
  indexWords(db, jobId, { kind: 'facet', id, label: `Facet ${facet.letter}`, words: [facet.letter, facet.name] })
}
