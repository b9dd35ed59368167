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
 * Spoken places as hints for placing photos: each saying speaks for the first photo taken after it, or a moment before. The
 * photos after that one get none from it: one saying is one piece of evidence, and the order of the walk carries it on. The
 * weight falls with time; where the words fit several facets they share it. Photos outside all recordings get no hint.
 */
export function spokenPlaceHints(
  photos: readonly { readonly photoId: PhotoId; readonly instantMs: number | null }[],
  recordings: readonly TimedPlaces[],
): readonly SpokenPlaceHint[] {
  const taken = photos
    .flatMap(({ photoId, instantMs }) => (instantMs === null ? [] : [{ photoId, instantMs }]))
    .toSorted((a, b) => a.instantMs - b.instantMs)
  const weights = new Map<PhotoId, SpokenPlaceHint['weights']>()
  for (const recording of recordings) {
    const spent = new Set<SaidWhere>()
    for (const { photoId, instantMs } of taken) {
      const said = saidBefore(recording, instantMs)
      if (said === null || spent.has(said.place)) continue
      spent.add(said.place)
      weights.set(photoId, [...(weights.get(photoId) ?? []), ...weightsOf(said)])
    }
  }
  return taken.flatMap(({ photoId }) => {
    const own = weights.get(photoId)
    return own === undefined || own.length === 0 ? [] : [{ photoId, weights: own }]
  })
}

interface SaidBefore {
  readonly place: SaidWhere
  readonly agoMs: number
}

/** The place named last before an instant of a recording, or a moment after; null outside it and before any was named. */
function saidBefore({ recordingStartMs, lengthMs, places }: TimedPlaces, instantMs: number): SaidBefore | null {
  const at = instantMs - recordingStartMs
  if (at < 0 || at > lengthMs + SOON_MS) return null
  const place = places.findLast(({ startMs }) => startMs <= at + SOON_MS)
  return place === undefined ? null : { place, agoMs: Math.max(0, at - place.startMs) }
}

function weightsOf({ place, agoMs }: SaidBefore): SpokenPlaceHint['weights'] {
  const named = place.isGround ? ['ground' as const] : place.facetIds
  const sure = SURE * 2 ** (-agoMs / HALF_AFTER_MS)
  return named.map((one) => ({ place: one, weight: sure / named.length }))
}
