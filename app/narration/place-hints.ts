import type { FacetId, PhotoId } from '../job/ids.ts'
import type { SaidWhere } from './read-narration.ts'

/** How much the narration speaks for each place of a photo. What is left to 1 says nothing. */
export interface SpokenPlaceHint {
  readonly photoId: PhotoId
  readonly weights: readonly { readonly place: FacetId | 'ground'; readonly weight: number }[]
}

/** A recording whose start is known. */
export interface TimedPlaces {
  readonly recordingStartMs: number
  /** Length of the recording as far as it has cues. */
  readonly lengthMs: number
  readonly places: readonly SaidWhere[]
}

/** How sure the spoken place is right after it was said, and after how long it is half as sure. A judgement, no source. */
const SURE = 0.9
const HALF_AFTER_MS = 8 * 60_000
/** People often name the place while they raise the camera: a place said this soon after a photo is still its place. */
const SOON_MS = 4000

/**
 * Spoken places as hints for placing photos: for each photo that was taken during a recording, the place named last before
 * it, or a moment after. The weight falls with time; where the words fit several facets they share it. Photos outside all
 * recordings, and those before any place is named, get no hint.
 */
export function spokenPlaceHints(
  photos: readonly { readonly photoId: PhotoId; readonly instantMs: number | null }[],
  recordings: readonly TimedPlaces[],
): readonly SpokenPlaceHint[] {
  return photos.flatMap(({ photoId, instantMs }) => {
    if (instantMs === null) return []
    const weights = recordings.flatMap((recording) => weightsAt(recording, instantMs))
    return weights.length === 0 ? [] : [{ photoId, weights }]
  })
}

function weightsAt({ recordingStartMs, lengthMs, places }: TimedPlaces, instantMs: number): SpokenPlaceHint['weights'] {
  const at = instantMs - recordingStartMs
  if (at < 0 || at > lengthMs + SOON_MS) return []
  const last = places.findLast(({ startMs }) => startMs <= at + SOON_MS)
  if (last === undefined) return []
  const named = last.isGround ? ['ground' as const] : last.facetIds
  const sure = SURE * 2 ** (-Math.max(0, at - last.startMs) / HALF_AFTER_MS)
  return named.map((place) => ({ place, weight: sure / named.length }))
}
