import type { PhotoSuggestion, PlacementInput } from '../../app/evidence/placement/placement-input.ts'
import { findingTellingPhotos } from '../../app/evidence/placement/telling-photos.ts'
import { suggestFacets } from '../../app/evidence/placement/suggest-facets.ts'
import { chanceFrom } from './chance.ts'
import { simulatedHouse, type HouseKind } from './simulated-houses.ts'
import {
  confirmSome,
  recordWalk,
  spokenHints,
  type CameraConditions,
  type RecordedWalk,
  type Speech,
} from './simulated-records.ts'
import { simulatedWalk, type Manner } from './simulated-walks.ts'

/** What a set of walks is like. */
export interface Condition {
  readonly name: string
  readonly manner: Manner
  readonly cameras: CameraConditions | ((seed: number) => CameraConditions)
  readonly confirmed: number
  /** The program asks for the photos that tell most, a few at a time; by chance otherwise. */
  readonly chosen?: 'asked'
  readonly speech: Speech | null
}

/** One judged photo: how sure the method was of its first choice, and whether that was right. */
export interface Judged {
  readonly stated: number
  readonly isRight: boolean
  /** Probability that it gave to the truth. */
  readonly truth: number
  readonly isOnRoof: boolean
}

/** Makes one walk with what a person confirmed and said of it. */
export function makeWalk(
  condition: Condition,
  kind: HouseKind,
  seed: number,
): { walk: RecordedWalk; input: PlacementInput } {
  const chance = chanceFrom(seed)
  const house = simulatedHouse(kind, chance)
  const cameras = typeof condition.cameras === 'function' ? condition.cameras(seed) : condition.cameras
  const walk = recordWalk(house, simulatedWalk(house, chance, condition.manner), { conditions: cameras, chance })
  const { facets, frame } = house
  const confirmed = confirmSome(walk, condition.confirmed, chance)
  const hints = condition.speech === null ? [] : spokenHints(walk, condition.speech, chance)
  return { walk, input: { facets, frame, photos: walk.photos, confirmed, hints } }
}

/** Judges the photos that nobody confirmed. */
export function judge(walk: RecordedWalk, suggestions: readonly PhotoSuggestion[]): readonly Judged[] {
  return suggestions.flatMap(({ photoId, ranking, isConfirmed }) => {
    const [first] = ranking
    const truth = walk.truth.get(photoId)
    if (isConfirmed || first === undefined || truth === undefined) return []
    return [
      {
        stated: first.probability,
        isRight: first.place === truth,
        truth: ranking.find(({ place }) => place === truth)?.probability ?? 0,
        isOnRoof: truth !== 'ground',
      },
    ]
  })
}

/** All judged photos of walks over the kinds of house in turn. */
export function judgedWalks(
  condition: Condition,
  kinds: readonly HouseKind[],
  seeds: readonly number[],
): readonly Judged[] {
  return seeds.flatMap((seed, index) => {
    const kind = kinds[index % kinds.length]
    if (kind === undefined) return []
    const { walk, input } = makeWalk(condition, kind, seed)
    const known = condition.chosen === 'asked' ? askedOf(walk, input, condition.confirmed) : input
    return judge(walk, suggestFacets(known))
  })
}

/** Photos that the program asks about before it listens to the answers; in the workstation it listens after each. */
const ASKED_AT_ONCE = 3

/** The walk with that many photos confirmed which the program asked for, each answered by what is true. */
function askedOf(walk: RecordedWalk, input: PlacementInput, count: number): PlacementInput {
  let known: PlacementInput = { ...input, confirmed: [] }
  for (let left = count; left > 0; left -= ASKED_AT_ONCE) {
    const asking = findingTellingPhotos(known.photos, suggestFacets(known), Math.min(left, ASKED_AT_ONCE))
    const answers = finished(asking).flatMap(({ photoId }) => {
      const place = walk.truth.get(photoId)
      return place === undefined ? [] : [{ photoId, place, pin: null }]
    })
    known = { ...known, confirmed: [...known.confirmed, ...answers] }
  }
  return known
}

function finished<Result>(work: Generator<void, Result>): Result {
  for (;;) {
    const step = work.next()
    if (step.done === true) return step.value
  }
}

/** The share that is right. */
export function shareRight(judged: readonly Judged[]): number {
  return judged.filter(({ isRight }) => isRight).length / judged.length
}

/** Photos by stated probability in tenths: how many, what was stated and what was true, on the mean. */
export interface Tenth {
  readonly count: number
  readonly stated: number
  readonly right: number
}

/** The tenths from 0 to 1, those without photos left out. */
export function tenths(judged: readonly Judged[]): readonly Tenth[] {
  return Array.from({ length: 10 }, (_, tenth) => {
    const within = judged.filter(({ stated }) => Math.min(9, Math.floor(stated * 10)) === tenth)
    const stated = within.reduce((sum, photo) => sum + photo.stated, 0) / within.length
    return { count: within.length, stated, right: shareRight(within) }
  }).filter(({ count }) => count > 0)
}

/** Largest and mean distance between what was stated and what was true, in points, over tenths with enough photos. */
export function calibrationGaps(judged: readonly Judged[], leastCount: number): { largest: number; mean: number } {
  const counted = tenths(judged).filter(({ count }) => count >= leastCount)
  const gaps = counted.map(({ stated, right, count }) => ({ gap: 100 * Math.abs(stated - right), count }))
  const all = gaps.reduce((sum, { count }) => sum + count, 0)
  return {
    largest: Math.max(0, ...gaps.map(({ gap }) => gap)),
    mean: gaps.reduce((sum, { gap, count }) => sum + gap * count, 0) / Math.max(1, all),
  }
}
