import { PLACEMENT_CALIBRATION } from './calibration.ts'

/** Shares of photos with a hint among those on which the inspector came to a place, and among the others. */
export interface SpeakingHabit {
  readonly onArrival: number
  readonly otherwise: number
}

/** What is expected of an inspector of whom nothing is known. */
export function usualSpeaking(): SpeakingHabit {
  return { onArrival: PLACEMENT_CALIBRATION.hintOnArrival, otherwise: PLACEMENT_CALIBRATION.hintOtherwise }
}

/** How many photos the usual shares are worth. */
const SPEAKING_WORTH_PHOTOS = 10

/** The habit after a walk was heard: place words mostly come on arrival, but not with everyone. */
export function learnedSpeaking(isHinted: readonly boolean[], entries: readonly Float64Array[]): SpeakingHabit {
  const usual = usualSpeaking()
  const arrival = { all: SPEAKING_WORTH_PHOTOS, hinted: usual.onArrival * SPEAKING_WORTH_PHOTOS }
  const other = { all: SPEAKING_WORTH_PHOTOS, hinted: usual.otherwise * SPEAKING_WORTH_PHOTOS }
  isHinted.forEach((hinted, moment) => {
    const came = Math.min(1, entries[moment]?.reduce((sum, chance) => sum + chance, 0) ?? 0)
    arrival.all += came
    other.all += 1 - came
    if (hinted) arrival.hinted += came
    if (hinted) other.hinted += 1 - came
  })
  return { onArrival: arrival.hinted / arrival.all, otherwise: other.hinted / other.all }
}

/** By how much arriving is likelier with a photo that has a hint, or has none. */
export function arrivalFactor({ onArrival, otherwise }: SpeakingHabit, isHinted: boolean): number {
  return isHinted ? onArrival / otherwise : (1 - onArrival) / (1 - otherwise)
}
