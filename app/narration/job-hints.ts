import type { PlaceHint } from '../evidence/placement/placement-input.ts'
import type { CaseFile } from '../evidence/case-file.ts'
import type { Video } from '../evidence/video.ts'
import type { HouseOutline } from '../roof/house-outline.ts'
import { recordingStartMs } from './aligned.ts'
import { spokenPlaceHints, type TimedPlaces } from './place-hints.ts'
import type { Narration } from './narration.ts'
import type { ReadAgainst, SaidWhere } from './read-narration.ts'

/** Reads the places that a narration names, a sentence at a time. */
export type PlacesOf = (
  narration: Pick<Narration, 'id' | 'cues'>,
  against: ReadAgainst,
) => Generator<void, readonly SaidWhere[]>

/** What spoken hints are made from. */
type SpokenIn = Pick<CaseFile, 'job' | 'facets' | 'photos' | 'narrations'> & {
  readonly outlines: readonly HouseOutline[]
  readonly videos: readonly Video[]
}

/**
 * What a job's narrations say of where its photos were taken, for placing them. A hint lists every place: what the words
 * leave open speaks for all of them alike. Reading takes a while, so that it is done a step at a time.
 */
export function* spokenHintsOfJob(
  { job, facets, outlines, photos, videos, narrations }: SpokenIn,
  placesOf: PlacesOf,
): Generator<void, readonly PlaceHint[]> {
  const { covering, property } = job.sheet
  const { frontAzimuthDeg, doorAt } = property
  const house = { facets, outlines, upAzimuthDeg: job.frame.upAzimuthDeg, frontAzimuthDeg, doorAt }
  const recordings: TimedPlaces[] = []
  for (const narration of narrations) {
    const startMs = recordingStartMs(narration, { photos, videos })
    if (startMs === null) continue
    const places = yield* placesOf(narration, { house, covering: covering.class })
    const lengthMs = narration.cues.reduce((longest, { endMs }) => Math.max(longest, endMs), 0)
    recordings.push({ recordingStartMs: startMs, lengthMs, places })
  }
  const everywhere = [...facets.map(({ id }) => id), 'ground' as const]
  const taken = photos.map(({ id, time }) => ({ photoId: id, instantMs: time.instantMs }))
  return spokenPlaceHints(taken, recordings).map(({ photoId, weights }) => {
    const open = Math.max(0, 1 - weights.reduce((sum, { weight }) => sum + weight, 0)) / everywhere.length
    const said = (place: (typeof everywhere)[number]) =>
      weights.reduce((sum, one) => sum + (one.place === place ? one.weight : 0), 0)
    return { photoId, weights: everywhere.map((place) => ({ place, weight: open + said(place) })) }
  })
}
