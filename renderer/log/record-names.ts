import type { JobSnapshot } from '../../app/contract/jobs.ts'
import { diaryLabel } from '../../app/diary/entry.ts'
import { findingLabel } from '../../app/evidence/finding.ts'
import type { RecordKind } from '../../app/evidence/log-entry.ts'
import { photoLabel } from '../../app/evidence/photo.ts'
import { videoLabel } from '../../app/evidence/video-label.ts'
import type { Place } from '../frame/places.ts'

/** A record as the log names it. */
export interface RecordName {
  readonly kind: RecordKind
  readonly id: string
}

type Named = { readonly name: string; readonly place: Place | null }
type Namer = (id: string, job: JobSnapshot) => Named

function removed(name: string): Named {
  return { name, place: null }
}

function oneOf<T extends { readonly id: string }>(list: readonly T[], id: string): T | undefined {
  return list.find((one) => one.id === id)
}

const namers: Readonly<Record<RecordName['kind'], Namer>> = {
  photo: (id, job) => {
    const photo = oneOf(job.photos, id)
    if (photo === undefined) return removed('a photo')
    return { name: photoLabel(photo.number), place: { workspace: 'photos', target: { kind: 'photo', id } } }
  },
  markup: (id, job) => {
    const photo = oneOf(job.photos, id)
    if (photo === undefined) return removed('a photo')
    return {
      name: `Marks on ${photoLabel(photo.number)}`,
      place: { workspace: 'photos', target: { kind: 'photo', id } },
    }
  },
  finding: (id, job) => {
    const finding = oneOf(job.findings, id)
    if (finding === undefined) return removed('a finding that was removed')
    return { name: findingLabel(finding.number), place: { workspace: 'findings', target: { kind: 'finding', id } } }
  },
  facet: (id, job) => {
    const facet = oneOf(job.facets, id)
    if (facet === undefined) return removed('a facet that was removed')
    return { name: `Facet ${facet.letter}`, place: { workspace: 'plan', target: { kind: 'facet', id } } }
  },
  outline: (id, job) => {
    const outline = oneOf(job.outlines, id)
    if (outline === undefined) return removed('an outline that was removed')
    return { name: `Outline "${outline.name}"`, place: { workspace: 'plan', target: null } }
  },
  'plan-image': (id, job) => {
    const image = oneOf(job.planImages, id)
    if (image === undefined) return removed('an image that was taken off the plan')
    return { name: `Image "${image.label}"`, place: { workspace: 'plan', target: null } }
  },
  reading: (id, job) => {
    const reading = oneOf(job.readings, id)
    if (reading === undefined) return removed('a reading that was removed')
    return {
      name: `Reading ${reading.number}`,
      place: { workspace: 'field-tests', target: { kind: 'reading', id } },
    }
  },
  video: (id, job) => {
    const video = oneOf(job.videos, id)
    if (video === undefined) return removed('a video')
    return { name: videoLabel(video.number), place: { workspace: 'video', target: { kind: 'video', id } } }
  },
  attachment: (id, job) => ({
    name: oneOf(job.attachments, id)?.file.fileName ?? 'a file',
    place: { workspace: 'sheet', target: null },
  }),
  narration: (id, job) => {
    const narration = oneOf(job.narrations, id)
    if (narration === undefined) return removed('a narration that was removed')
    return { name: `Narration ${narration.name}`, place: { workspace: 'narration', target: null } }
  },
  'draft-decision': () => ({
    name: 'A draft of the narration',
    place: { workspace: 'narration', target: null },
  }),
  'field-survey': () => ({ name: 'Field tests', place: { workspace: 'field-tests', target: null } }),
  assessment: () => ({ name: 'Assessment', place: { workspace: 'assessment', target: null } }),
  'weather-station': (id, job) => {
    const station = oneOf(job.weather.stations, id)
    if (station === undefined) return removed('a station that was removed')
    return { name: `Station ${station.code}`, place: { workspace: 'weather', target: null } }
  },
  'weather-source': () => ({ name: 'Weather', place: { workspace: 'weather', target: null } }),
  'weather-choices': () => ({ name: 'Weather', place: { workspace: 'weather', target: null } }),
  scope: () => ({ name: 'Scope', place: { workspace: 'scope', target: null } }),
  'price-book': () => ({ name: 'Price book', place: { workspace: 'scope', target: null } }),
  'diary-entry': (id, job) => {
    const entry = oneOf(job.diary.entries, id)
    if (entry === undefined) return removed('a diary entry that was taken back')
    return { name: diaryLabel(entry.number), place: { workspace: 'diary', target: { kind: 'diary', id } } }
  },
  'diary-clocks': () => ({ name: 'Statutory clocks', place: { workspace: 'diary', target: null } }),
  sheet: () => ({ name: 'Job sheet', place: { workspace: 'sheet', target: null } }),
  camera: () => ({ name: 'Camera clock', place: { workspace: 'sheet', target: { kind: 'field', id: 'cameras' } } }),
  frame: () => ({ name: 'Roof plan', place: { workspace: 'plan', target: null } }),
}

/** What a record is called now, and where it is; no place when it is gone. */
export function nameRecord({ kind, id }: RecordName, job: JobSnapshot): Named {
  return namers[kind](id, job)
}
