import type { JobSnapshot } from '../../app/contract/jobs.ts'
import type { SearchHit } from '../../app/contract/search.ts'
import type { ProblemPlace } from '../../app/packet/problem.ts'
import type { Selection } from '../state/selection.tsx'
import type { Target, Workspace } from './addresses.ts'

/** Somewhere in a job: a workspace, and what to show there. */
export interface Place {
  readonly workspace: Workspace
  readonly target: Target | null
}

/** Where a problem is mended. */
export function placeOfProblem(place: ProblemPlace): Place {
  switch (place.kind) {
    case 'sheet':
      return { workspace: 'sheet', target: { kind: 'field', id: place.field } }
    case 'facet':
      return { workspace: 'plan', target: { kind: 'facet', id: place.id } }
    case 'photo':
      return { workspace: 'photos', target: { kind: 'photo', id: place.id } }
    case 'finding':
      return { workspace: 'findings', target: { kind: 'finding', id: place.id } }
    case 'reading':
      return { workspace: 'field-tests', target: { kind: 'reading', id: place.id } }
    case 'field-tests':
      return { workspace: 'field-tests', target: null }
    case 'scope':
      return { workspace: 'scope', target: null }
    case 'plan':
      return { workspace: 'plan', target: null }
    case 'photos':
      return { workspace: 'photos', target: null }
    case 'job':
      return { workspace: 'sheet', target: null }
  }
}

/** Where something that was searched for is. */
export function placeOfHit(hit: Pick<SearchHit, 'kind' | 'id'>): Place {
  switch (hit.kind) {
    case 'job':
    case 'attachment':
      return { workspace: 'sheet', target: null }
    case 'photo':
      return { workspace: 'photos', target: { kind: 'photo', id: hit.id } }
    case 'finding':
      return { workspace: 'findings', target: { kind: 'finding', id: hit.id } }
    case 'facet':
      return { workspace: 'plan', target: { kind: 'facet', id: hit.id } }
    case 'video':
      return { workspace: 'video', target: { kind: 'video', id: hit.id } }
    case 'diary':
      return { workspace: 'diary', target: { kind: 'diary', id: hit.id } }
  }
}

/** The selection that a target stands for; null when the job has no such record. */
export function selectionOf(
  target: Target,
  job: Pick<JobSnapshot, 'photos' | 'videos' | 'findings' | 'facets' | 'readings'>,
): Selection | null {
  switch (target.kind) {
    case 'field':
    case 'diary':
      return null
    case 'photo': {
      const photo = job.photos.find((one) => one.id === target.id)
      return photo === undefined ? null : { kind: 'photos', ids: [photo.id], lead: photo.id }
    }
    case 'video': {
      const video = job.videos.find((one) => one.id === target.id)
      return video === undefined ? null : { kind: 'video', id: video.id }
    }
    case 'finding': {
      const finding = job.findings.find((one) => one.id === target.id)
      return finding === undefined ? null : { kind: 'finding', id: finding.id }
    }
    case 'facet': {
      const facet = job.facets.find((one) => one.id === target.id)
      return facet === undefined ? null : { kind: 'facet', id: facet.id }
    }
    case 'reading': {
      const reading = job.readings.find((one) => one.id === target.id)
      return reading === undefined ? null : { kind: 'reading', id: reading.id }
    }
    case 'entry':
      return /^[1-9]\d*$/.test(target.id) ? { kind: 'entry', seq: Number(target.id) } : null
  }
}
