import { radians, wrapDegrees } from '../../roof/angles.ts'
import { PLACEMENT_CALIBRATION } from './calibration.ts'
import type { PlanCells } from './plan-cells.ts'
import { facingChance, usualFacing } from './facing.ts'
import type { PlacementInput } from './placement-input.ts'
import type { Take } from './takes.ts'

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
const CLOSE_FT = [3, 7, 11] as const
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
/** Directions that are averaged over lie this far apart. */
const TURN_DEG = 15

/**
 * Gives what a photo shows along its direction, with some doubt left that the compass was wholly wrong; without a direction
 * it is mostly the place stood on and sometimes a neighbour, from all points alike.
 *
 * @param shares for each facet, how often a photo from it shows each other one
 */
export function sightOver(
  cells: PlanCells,
  input: Pick<PlacementInput, 'facets' | 'frame'>,
  shares: readonly Float64Array[],
): (take: Pick<Take, 'direction' | 'looks'>) => Sight {
  const stays = Float64Array.from(cells.placeOf, (place) => {
    return (shares[place] ?? new Float64Array(0)).reduce((left, share) => left - share, 1)
  })
  const expected = expectedKept(cells, input)
  const blind: Sight = { own: stays, usual: 1, hits: new Int16Array(0), factors: [] }
  const known = new Map<string, Sight>()
  return ({ direction, looks }) => {
    if (direction === null) return blind
    const grain = Math.round(wrapDegrees(direction.azimuthDeg - input.frame.upAzimuthDeg) / GRAIN_DEG)
    const sigmaDeg = directionSigmaDeg(direction, looks)
    const key = `${grain} ${sigmaDeg}`
    const sight = known.get(key) ?? lookAlong({ deg: grain * GRAIN_DEG, sigmaDeg }, { cells, stays, expected })
    known.set(key, sight)
    return sight
  }
}

/** One standard deviation: part is the same for all photos of a take, part is new with each. */
function directionSigmaDeg({ reference }: NonNullable<Take['direction']>, looks: number): number {
  const { lastingDirectionDeg, freshDirectionDeg } = PLACEMENT_CALIBRATION
  return Math.hypot(lastingDirectionDeg[reference], freshDirectionDeg / Math.sqrt(Math.max(1, looks)))
}

/** Where a line of sight points, clockwise from the sheet's up, and its error. */
interface Direction {
  readonly deg: number
  readonly sigmaDeg: number
}

/** Lattice steps to what lies some way along a line of sight. */
interface Glance {
  readonly steps: number
  readonly share: number
}

function lookAlong(
  direction: Direction,
  {
    cells,
    stays,
    expected,
  }: { readonly cells: PlanCells; readonly stays: Float64Array; readonly expected: Float64Array },
): Sight {
  const { grossDirection, aimed } = PLACEMENT_CALIBRATION
  const across = glancesAlong(cells, direction, ACROSS_FT)
  const kept = keptAlong(cells, direction)
  const hits = new Int16Array(stays.length * across.length).fill(-1)
  const own = stays.map((usual, point) => {
    const at = cells.at[point] ?? 0
    const place = cells.placeOf[point] ?? 0
    for (let ahead = 0; place < cells.places.length - 1 && ahead < across.length; ahead++) {
      const other = cells.raster[at + (across[ahead]?.steps ?? 0)] ?? -1
      if (other !== place) hits[point * across.length + ahead] = other
    }
    return usual * (grossDirection + ((1 - grossDirection) * (kept[point] ?? 0)) / (expected[point] ?? 1))
  })
  return { own, usual: grossDirection, hits, factors: across.map(({ share }) => share * aimed * (1 - grossDirection)) }
}

function glancesAlong(cells: PlanCells, { deg, sigmaDeg }: Direction, distancesFt: readonly number[]) {
  return LINES.flatMap(({ sigmas, share }): readonly Glance[] => {
    const turn = radians(deg + sigmas * sigmaDeg)
    return distancesFt.map((ft) => ({
      steps:
        Math.round((Math.sin(turn) * ft) / cells.stepFt) +
        Math.round((Math.cos(turn) * ft) / cells.stepFt) * cells.wide,
      share: share / distancesFt.length,
    }))
  })
}

/** For each point, how much of a line of sight stays on its facet; from the ground, whether it meets the house. */
function keptAlong(cells: PlanCells, direction: Direction): Float64Array {
  const { away } = PLACEMENT_CALIBRATION
  const close = glancesAlong(cells, direction, CLOSE_FT)
  const fromGround = glancesAlong(cells, direction, FROM_GROUND_FT)
  const ground = cells.places.length - 1
  return Float64Array.from(cells.placeOf, (place, point) => {
    const at = cells.at[point] ?? 0
    if (place === ground) return fromGround.some(({ steps }) => (cells.raster[at + steps] ?? -1) >= 0) ? 1 : away
    let keeps = 0
    for (const { steps, share } of close) keeps += share * (cells.raster[at + steps] === place ? 1 : away)
    return keeps
  })
}

/**
 * What is kept on the mean over the directions that are usual at each point: on a narrow facet or near an edge most lines of
 * sight leave it, and whoever stands there looks along it all the more.
 */
function expectedKept(cells: PlanCells, { facets, frame }: Pick<PlacementInput, 'facets' | 'frame'>): Float64Array {
  const habit = usualFacing()
  const expected = new Float64Array(cells.placeOf.length)
  for (let deg = 0; deg < 360; deg += TURN_DEG) {
    const kept = keptAlong(cells, { deg, sigmaDeg: PLACEMENT_CALIBRATION.freshDirectionDeg })
    const facing = cells.places.map((_, place) => {
      const facet = facets[place]
      if (facet === undefined) return 1
      return facingChance(habit, deg + frame.upAzimuthDeg - facet.downslopeAzimuthDeg - 180)
    })
    kept.forEach((keeps, point) => {
      const share = ((facing[cells.placeOf[point] ?? 0] ?? 1) * TURN_DEG) / 360
      expected[point] = (expected[point] ?? 0) + share * keeps
    })
  }
  return expected
}

/** For each facet, how often a photo from it shows each other one: neighbours, now and then. */
export function acrossShares(neighbours: readonly Float64Array[]): readonly Float64Array[] {
  return neighbours.map((row) => {
    const total = row.reduce((sum, weight) => sum + weight, 0)
    return row.map((weight) => (total > 0 ? (PLACEMENT_CALIBRATION.looksAcross * weight) / total : 0))
  })
}
