import type { PhotoId } from '../../job/ids.ts'
import type { PhotoSuggestion, PlacementPhoto, RankedPlace } from './placement-input.ts'

/** A photo that a person is asked to place. */
export interface TellingPhoto {
  readonly photoId: PhotoId
  /** How many suggestions that are expected to be wrong now, its own among them, its place would speak to. */
  readonly expectedWrong: number
}

/** Photos so far apart in time are in one stay on a facet about one time in three (common practice, no source). */
const STAY_MS = 75_000
/** Beyond this, one photo's place says next to nothing of another's. */
const REACH_MS = 5 * STAY_MS
/** Places of a photo that are compared; the rest are too unlikely to matter. */
const COMPARED = 3

/** An open photo as asking sees it. */
interface Open {
  readonly photoId: PhotoId
  /** Null for a photo without a time, which tells of itself alone. */
  readonly instantMs: number | null
  readonly doubt: number
  readonly likeliest: readonly RankedPlace[]
}

/**
 * The photos whose facet a person should say first, the most telling one first: doubtful themselves and amid doubtful
 * photos that likely show the same place. What one answers is taken off before the next is chosen, so that each asks
 * about a stay of its own. It pauses after every photo, so that thousands need not hold up a desk.
 *
 * @param suggestions as the method made them with what is confirmed so far
 * @param count at most so many
 */
export function* findingTellingPhotos(
  photos: readonly Pick<PlacementPhoto, 'id' | 'instantMs'>[],
  suggestions: readonly PhotoSuggestion[],
  count: number,
): Generator<void, readonly TellingPhoto[]> {
  const open = openPhotos(photos, suggestions)
  const doubts = open.map(({ doubt }) => doubt)
  const reached = open.map(() => 0)
  for (const at of open.keys()) {
    for (const near of within(open, at)) reached[at] = (reached[at] ?? 0) + (doubts[near.at] ?? 0) * near.share
    yield
  }
  const asked: TellingPhoto[] = []
  while (asked.length < count) {
    // A photo that is sure itself tells nothing, however doubtful its neighbours are.
    const worth = reached.map((expectedWrong, at) => expectedWrong * (doubts[at] ?? 0))
    const best = worth.reduce((top, value, at) => (value > (worth[top] ?? 0) ? at : top), 0)
    const photo = open[best]
    if (photo === undefined || (worth[best] ?? 0) <= 0) break
    asked.push({ photoId: photo.photoId, expectedWrong: reached[best] ?? 0 })
    for (const settled of within(open, best)) {
      const before = doubts[settled.at] ?? 0
      doubts[settled.at] = before * (1 - settled.share)
      for (const near of within(open, settled.at)) {
        reached[near.at] = (reached[near.at] ?? 0) - before * settled.share * near.share
      }
      yield
    }
  }
  return asked
}

/** In the order of time, those without one last. */
function openPhotos(
  photos: readonly Pick<PlacementPhoto, 'id' | 'instantMs'>[],
  suggestions: readonly PhotoSuggestion[],
): readonly Open[] {
  const timeOf = new Map(photos.map(({ id, instantMs }) => [id, instantMs]))
  return suggestions
    .flatMap(({ photoId, ranking, isConfirmed }): Open[] => {
      const [first] = ranking
      if (isConfirmed || first === undefined) return []
      const instantMs = timeOf.get(photoId) ?? null
      return [{ photoId, instantMs, doubt: 1 - first.probability, likeliest: ranking.slice(0, COMPARED) }]
    })
    .toSorted((a, b) => (a.instantMs ?? Infinity) - (b.instantMs ?? Infinity) || 0)
}

/** The photos that one photo's place speaks to, itself among them, and how much from 0 to 1. */
function* within(open: readonly Open[], from: number): Generator<{ readonly at: number; readonly share: number }> {
  const photo = open[from]
  if (photo === undefined) return
  yield { at: from, share: 1 }
  const { instantMs } = photo
  if (instantMs === null) return
  for (const step of [-1, 1]) {
    for (let at = from + step; ; at += step) {
      const other = open[at]
      if (other === undefined || other.instantMs === null) break
      const apartMs = Math.abs(other.instantMs - instantMs)
      if (apartMs > REACH_MS) break
      yield { at, share: overlap(photo.likeliest, other.likeliest) * Math.exp(-apartMs / STAY_MS) }
    }
  }
}

/** Bhattacharyya's coefficient of two photos' places: 1 when they are as likely on the same ones. */
function overlap(one: readonly RankedPlace[], other: readonly RankedPlace[]): number {
  let sum = 0
  for (const { place, probability } of one) {
    const same = other.find((ranked) => ranked.place === place)
    if (same !== undefined) sum += Math.sqrt(probability * same.probability)
  }
  return sum
}
