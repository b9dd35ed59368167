import type { PlanFrame } from '../../job/places.ts'
import { radians, wrapDegrees } from '../../roof/angles.ts'
import { PLACEMENT_CALIBRATION } from './calibration.ts'
import type { PlanCells } from './plan-cells.ts'
import type { PlacementPhoto } from './placement-input.ts'

/** What a photo shows from each point of the plan, up to a factor that all share. */
export interface Sight {
  /** For each point, how likely a photo from it shows the place stood on and was taken in its direction. */
  readonly own: Float64Array
  /** Factor on the usual shares of photos that show another facet. */
  readonly usual: number
  /** Facets ahead, `ahead` for each point, -1 for none, and the factor that each adds on the usual share of its facet. */
  readonly hits: Int16Array
  readonly factors: readonly number[]
}

/** Distances that a facet is photographed over from the roof, feet: closes look down at the feet's own facet. */
const CLOSE_FT = [2, 4.5] as const
const ACROSS_FT = [5, 9, 14, 20, 28] as const
/** From the ground, the house is looked for along this. */
const FROM_GROUND_FT = [8, 16, 24, 34, 46, 60] as const
/** Three lines of sight whose mean and variance are those of the direction's error. */
const LINES = [
  { sigmas: -Math.sqrt(3), share: 1 / 6 },
  { sigmas: 0, share: 2 / 3 },
  { sigmas: Math.sqrt(3), share: 1 / 6 },
] as const
/** Directions are taken to this, far finer than any compass reads. */
const GRAIN_DEG = 3

/**
 * Gives what a photo shows along its direction, with some doubt left that the compass was wholly wrong; without a direction
 * it is mostly the place stood on and sometimes a neighbour, from all points alike.
 *
 * @param shares for each facet, how often a photo from it shows each other one
 */
export function sightOver(
  cells: PlanCells,
  frame: PlanFrame,
  shares: readonly Float64Array[],
): (direction: PlacementPhoto['direction']) => Sight {
  const stays = Float64Array.from(cells.placeOf, (place) => {
    return (shares[place] ?? new Float64Array(0)).reduce((left, share) => left - share, 1)
  })
  const blind: Sight = { own: stays, usual: 1, hits: new Int16Array(0), factors: [] }
  const known = new Map<string, Sight>()
  return (direction) => {
    if (direction === null) return blind
    const grain = Math.round(wrapDegrees(direction.azimuthDeg - frame.upAzimuthDeg) / GRAIN_DEG)
    const key = `${grain} ${direction.reference}`
    const sight = known.get(key) ?? lookAlong(grain * GRAIN_DEG, direction.reference, { cells, stays })
    known.set(key, sight)
    return sight
  }
}

/** Lattice steps to what lies some way along a line of sight. */
interface Glance {
  readonly steps: number
  readonly share: number
}

function lookAlong(
  fromUpDeg: number,
  reference: NonNullable<PlacementPhoto['direction']>['reference'],
  { cells, stays }: { readonly cells: PlanCells; readonly stays: Float64Array },
): Sight {
  const { directionSigmaDeg, grossDirection, away, aimed } = PLACEMENT_CALIBRATION
  const glances = (distancesFt: readonly number[]): readonly Glance[] =>
    LINES.flatMap(({ sigmas, share }) => {
      const turn = radians(fromUpDeg + sigmas * directionSigmaDeg[reference])
      return distancesFt.map((ft) => ({
        steps:
          Math.round((Math.sin(turn) * ft) / cells.stepFt) +
          Math.round((Math.cos(turn) * ft) / cells.stepFt) * cells.wide,
        share: share / distancesFt.length,
      }))
    })
  const close = glances(CLOSE_FT)
  const across = glances(ACROSS_FT)
  const fromGround = glances(FROM_GROUND_FT)
  const ground = cells.places.length - 1
  const hits = new Int16Array(stays.length * across.length).fill(-1)
  const own = stays.map((usual, point) => {
    const at = cells.at[point] ?? 0
    const place = cells.placeOf[point] ?? 0
    if (place === ground) {
      const sees = fromGround.some(({ steps }) => (cells.raster[at + steps] ?? -1) >= 0)
      return usual * (grossDirection + (1 - grossDirection) * (sees ? 1 : away))
    }
    let keeps = 0
    for (const { steps, share } of close) keeps += share * (cells.raster[at + steps] === place ? 1 : away)
    for (let ahead = 0; ahead < across.length; ahead++) {
      const other = cells.raster[at + (across[ahead]?.steps ?? 0)] ?? -1
      if (other !== place) hits[point * across.length + ahead] = other
    }
    return usual * (grossDirection + (1 - grossDirection) * keeps)
  })
  return { own, usual: grossDirection, hits, factors: across.map(({ share }) => share * aimed * (1 - grossDirection)) }
}

/** For each facet, how often a photo from it shows each other one: neighbours, now and then. */
export function acrossShares(neighbours: readonly Float64Array[]): readonly Float64Array[] {
  return neighbours.map((row) => {
    const total = row.reduce((sum, weight) => sum + weight, 0)
    return row.map((weight) => (total > 0 ? (PLACEMENT_CALIBRATION.looksAcross * weight) / total : 0))
  })
}
