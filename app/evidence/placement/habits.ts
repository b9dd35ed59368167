import { PLACEMENT_CALIBRATION } from './calibration.ts'
import { heardFromAll, type ChainTables } from './chain.ts'
import { facingChance, learnedFacing, usualFacing, type FacingHabit } from './facing.ts'
import { arrivalFactor, learnedSpeaking, usualSpeaking } from './speaking.ts'
import { welcomeAfter } from './visits.ts'

/** What a photo says of the place stood on, before anything is known of habits. */
export interface PlaceMoment {
  readonly seconds: number
  /** How likely it is for each place when it shows that place, and when it shows another. */
  readonly own: Float64Array
  readonly across: Float64Array
  /** Which way it faces from each facet's uphill; empty without a direction. */
  readonly fromUphillDeg: readonly number[]
  readonly isHinted: boolean
}

/** How one inspector goes about a roof. */
export interface Habits {
  readonly facing: FacingHabit
  /** For each moment, factors on coming to each place with it. */
  readonly welcome: readonly Float64Array[]
}

/** What is expected of an inspector of whom nothing is known. */
export function usualHabits(moments: readonly PlaceMoment[], places: number): Habits {
  const visits = moments.map(() => new Float64Array(places).fill(1))
  return { facing: usualFacing(), welcome: withArrivals(visits, arrivals(moments, null)) }
}

/**
 * Learns habits from a walk in rounds of hearing it by places alone: which way the inspector faces on a slope, whether
 * words come on arrival, and which facets are visited at other moments already.
 */
export function* learnHabits(
  moments: readonly PlaceMoment[],
  tables: Omit<ChainTables, 'steps' | 'offsetAfter'>,
): Generator<void, Habits> {
  const { places } = tables
  const flat: ChainTables = { ...tables, steps: 1, offsetAfter: () => Float64Array.of(1) }
  let visits: readonly Float64Array[] = moments.map(() => new Float64Array(places).fill(1))
  let habits = usualHabits(moments, places)
  for (let round = 0; round < PLACEMENT_CALIBRATION.rounds; round++) {
    const facings = moments.map(({ fromUphillDeg }) => facingFactors(habits.facing, fromUphillDeg, places))
    const likelihoods = moments.map(({ own, across }, at) => {
      return own.map((chance, place) => chance * (facings[at]?.[place] ?? 1) + (across[place] ?? 0))
    })
    const heard = yield* heardFromAll(
      moments.map(({ seconds }, at) => ({ seconds, likelihood: likelihoods[at] ?? new Float64Array(places) })),
      flat,
      habits.welcome,
    )
    const seen = moments.flatMap(({ own, fromUphillDeg }, at) =>
      fromUphillDeg.map((deg, place) => {
        const all = likelihoods[at]?.[place] ?? 0
        const share = all > 0 ? ((own[place] ?? 0) * (facings[at]?.[place] ?? 1)) / all : 0
        return { fromUphillDeg: deg, chance: share * (heard.states[at]?.[place] ?? 0) }
      }),
    )
    visits = welcomeAfter(heard.entries, visits)
    habits = { facing: learnedFacing(seen), welcome: withArrivals(visits, arrivals(moments, heard.entries)) }
  }
  return habits
}

/** By how much each place's own photos are likelier in a photo's direction. */
export function facingFactors(habit: FacingHabit, fromUphillDeg: readonly number[], places: number): Float64Array {
  const factors = new Float64Array(places).fill(1)
  fromUphillDeg.forEach((deg, place) => (factors[place] = facingChance(habit, deg)))
  return factors
}

/** By how much arriving is likelier with each moment; a walk without hints says nothing. */
function arrivals(moments: readonly PlaceMoment[], entries: readonly Float64Array[] | null): readonly number[] {
  const hinted = moments.map(({ isHinted }) => isHinted)
  if (!hinted.includes(true)) return hinted.map(() => 1)
  const habit = entries === null ? usualSpeaking() : learnedSpeaking(hinted, entries)
  return hinted.map((isHinted) => arrivalFactor(habit, isHinted))
}

function withArrivals(visits: readonly Float64Array[], arrival: readonly number[]): readonly Float64Array[] {
  return visits.map((factors, at) => factors.map((factor) => factor * (arrival[at] ?? 1)))
}
