import type { NarrationId } from '../../app/job/ids.ts'
import type { PlacesOf } from '../../app/narration/job-hints.ts'
import { readingNarration, type SaidWhere } from '../../app/narration/read-narration.ts'

interface KeptPlaces {
  /** The plan and covering that the words were read against. */
  readonly against: string
  readonly places: readonly SaidWhere[]
}

/**
 * Reads narrations for the places that they name. Hours of speech take a while to read and jobs change often, so that what
 * was read is kept until the plan or the covering changes; the cues of a narration never do.
 */
export function keptSpokenPlaces(): PlacesOf {
  const kept = new Map<NarrationId, KeptPlaces>()
  return function* placesOf({ id, cues }, readAgainst) {
    const against = JSON.stringify(readAgainst)
    const known = kept.get(id)
    if (known?.against === against) return known.places
    const { places } = yield* readingNarration(cues, readAgainst)
    kept.set(id, { against, places })
    return places
  }
}
