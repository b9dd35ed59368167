import type { CameraId, PhotoId } from '../../job/ids.ts'
import type { PlanFrame, PlanPoint } from '../../job/places.ts'
import { radians } from '../../roof/angles.ts'
import { geoToPlan } from '../../roof/plan-frame.ts'
import { PLACEMENT_CALIBRATION } from './calibration.ts'
import { planCells, type PlanCells } from './plan-cells.ts'
import type { PlacementInput, PlacementPhoto } from './placement-input.ts'
import { sigmaFtOf } from './position-error.ts'
import { fitSimilarity, type PointPair } from './similarity.ts'

/** How one camera's positions lie on the plan, learned from photos whose place a person confirmed. */
export interface LearnedFrame {
  readonly cameraId: CameraId | null
  /** Confirmed photos with a position that it rests on. */
  readonly photoCount: number
  /** What the positions are off by on the plan, feet. */
  readonly shift: PlanPoint
  /** The middle of the roof, about which they are turned. */
  readonly about: PlanPoint
  /** Turn of the positions, degrees counter-clockwise, or why none was fitted. */
  readonly turn:
    | { readonly kind: 'fitted'; readonly deg: number; readonly errorDeg: number }
    | { readonly kind: 'refused'; readonly because: 'too-few-photos' | 'too-close-together' }
  /** How far each position lies from where it should, feet, and the weight from 0 to 1 that it kept. */
  readonly residuals: readonly { readonly photoId: PhotoId; readonly ft: number; readonly weight: number }[]
  /** Root of the weighted mean square of the residuals, feet. */
  readonly typicalResidualFt: number
}

const LEAST_FOR_SHIFT = 3
const LEAST_FOR_TURN = 8
/** A turn known no better than this is no use. */
const WORST_TURN_DEG = 8
/** How well a sheet is usually turned before photos say more, one standard deviation. */
const TURN_SIGMA_DEG = 5
/** A pin is where the thing stands, the camera a few steps from it. */
const PIN_SIGMA_FT = 5
const ROUNDS = 40
/** Degrees of freedom of the t distribution whose weights tame positions that lie far out. */
const TAME = 4

/** A confirmed photo: its position by the plan as drawn, and the points it can have been taken from. */
interface Sighting {
  readonly photoId: PhotoId
  readonly at: PlanPoint
  readonly sigmaFt: number
  readonly places: readonly PlanPoint[]
}

/**
 * Fits, for every camera with at least 3 confirmed photos that have a position, how its positions are shifted on the plan
 * and, with at least 8 photos spread widely enough, turned about the middle of the roof.
 *
 * A confirmed facet is an area and not a point: expectation maximisation takes each photo's place as the mean over its
 * facet, weighted by its position under the fit so far, then fits by least squares, with the weights of a t
 * distribution so that a wild position does not carry the fit away. Photos confirmed as taken from the ground are left
 * out, as they could have been taken from anywhere around the house.
 */
export function learnFrames(input: PlacementInput): readonly LearnedFrame[] {
  const cells = planCells(input.facets)
  if (cells === null) return []
  const cameras = new Map<CameraId | null, PlacementPhoto[]>()
  for (const photo of input.photos) {
    const of = cameras.get(photo.cameraId)
    if (of === undefined) cameras.set(photo.cameraId, [photo])
    else of.push(photo)
  }
  return [...cameras].flatMap(([cameraId, photos]) => {
    const sightings = sightingsOf(photos, input, cells)
    return sightings.length < LEAST_FOR_SHIFT ? [] : [fitFrame(cameraId, sightings, cells.middle)]
  })
}

/** A camera position on the plan with what was learned of its camera taken off. */
export function corrected(
  at: PlanPoint,
  { shift, about, turn }: Pick<LearnedFrame, 'shift' | 'about' | 'turn'>,
): PlanPoint {
  const back = turn.kind === 'fitted' ? radians(-turn.deg) : 0
  const x = at.xFt - about.xFt - shift.xFt
  const y = at.yFt - about.yFt - shift.yFt
  return {
    xFt: about.xFt + x * Math.cos(back) - y * Math.sin(back),
    yFt: about.yFt + x * Math.sin(back) + y * Math.cos(back),
  }
}

/** A photo's position on the plan as drawn; null when it has none or the plan lies nowhere on the earth. */
export function positionOnPlan(photo: PlacementPhoto, frame: PlanFrame): PlanPoint | null {
  return photo.position === null ? null : geoToPlan(photo.position, frame)
}

function sightingsOf(photos: readonly PlacementPhoto[], input: PlacementInput, cells: PlanCells): readonly Sighting[] {
  const confirmed = new Map(input.confirmed.map((place) => [place.photoId, place]))
  return photos.flatMap((photo): readonly Sighting[] => {
    const known = confirmed.get(photo.id)
    const at = positionOnPlan(photo, input.frame)
    if (known === undefined || at === null) return []
    const stated = photo.position?.errorM ?? input.defaultErrorM ?? PLACEMENT_CALIBRATION.defaultErrorM
    const sigmaFt = Math.hypot(sigmaFtOf(stated), PLACEMENT_CALIBRATION.leastSigmaFt)
    if (known.pin !== null) {
      return [{ photoId: photo.id, at, sigmaFt: Math.hypot(sigmaFt, PIN_SIGMA_FT), places: [known.pin] }]
    }
    const place = known.place === 'ground' ? -1 : cells.places.indexOf(known.place)
    return place === -1 ? [] : [{ photoId: photo.id, at, sigmaFt, places: pointsOf(cells, place) }]
  })
}

function pointsOf({ column, row, starts, xFt, yFt }: PlanCells, place: number): readonly PlanPoint[] {
  const points: PlanPoint[] = []
  for (let at = starts[place] ?? 0; at < (starts[place + 1] ?? 0); at++) {
    points.push({ xFt: xFt[column[at] ?? 0] ?? 0, yFt: yFt[row[at] ?? 0] ?? 0 })
  }
  return points
}

/** Places to positions: about the middle of the roof, turned and then shifted. */
interface Fit {
  readonly turnRad: number
  readonly x: number
  readonly y: number
}

function fitFrame(cameraId: CameraId | null, sightings: readonly Sighting[], middle: PlanPoint): LearnedFrame {
  const shiftOnly = maximise(sightings, middle, null)
  const spreadFt = spreadOf(shiftOnly.pairs)
  const sigmaFt = Math.sqrt(sightings.reduce((sum, s) => sum + s.sigmaFt ** 2, 0) / sightings.length)
  const seenDeg = ((sigmaFt / Math.max(1e-9, spreadFt) / Math.sqrt(sightings.length)) * 180) / Math.PI
  const errorDeg = 1 / Math.sqrt(1 / seenDeg ** 2 + 1 / TURN_SIGMA_DEG ** 2)
  const because = sightings.length < LEAST_FOR_TURN ? 'too-few-photos' : 'too-close-together'
  const refused = sightings.length < LEAST_FOR_TURN || seenDeg > WORST_TURN_DEG
  const { fit, pairs } = refused ? shiftOnly : maximise(sightings, middle, spreadFt)
  const residuals = sightings.map(({ photoId, sigmaFt: sigma }, index) => {
    const pair = pairs[index]
    const ft = pair === undefined ? 0 : residualFt(pair, fit)
    return { photoId, ft, weight: (pair?.weight ?? 0) * sigma ** 2 * (TAME / (TAME + 2)) }
  })
  const total = residuals.reduce((sum, { weight }) => sum + weight, 0)
  return {
    cameraId,
    photoCount: sightings.length,
    shift: { xFt: fit.x, yFt: fit.y },
    about: middle,
    turn: refused ? { kind: 'refused', because } : { kind: 'fitted', deg: (fit.turnRad * 180) / Math.PI, errorDeg },
    residuals,
    typicalResidualFt: Math.sqrt(residuals.reduce((sum, { ft, weight }) => sum + weight * ft * ft, 0) / total),
  }
}

/** Runs the rounds; with a spread, the turn is fitted as well and held to what sheets usually are by two added pairs. */
function maximise(
  sightings: readonly Sighting[],
  middle: PlanPoint,
  spreadFt: number | null,
): { readonly fit: Fit; readonly pairs: readonly PointPair[] } {
  let fit: Fit = { turnRad: 0, x: 0, y: 0 }
  let pairs: readonly PointPair[] = []
  for (let round = 0; round < ROUNDS; round++) {
    pairs = sightings.map((sighting) => expected(sighting, fit, middle))
    const held = spreadFt === null ? pairs : [...pairs, ...holding(pairs, fit, spreadFt)]
    const next = fitSimilarity(held, spreadFt === null ? 'shift' : 'shift-and-turn')
    if (next === null) break
    fit = { turnRad: next.turnRad, x: next.shift.x, y: next.shift.y }
  }
  return { fit, pairs }
}

/** Where a photo is expected to have been taken, about the middle of the roof, and its position. */
function expected({ at, sigmaFt, places }: Sighting, fit: Fit, middle: PlanPoint): PointPair {
  const to = { x: at.xFt - middle.xFt, y: at.yFt - middle.yFt }
  let total = 0
  let x = 0
  let y = 0
  const apart = places.map((place) => {
    const from = { x: place.xFt - middle.xFt, y: place.yFt - middle.yFt }
    return { from, square: residualFt({ from, to, weight: 1 }, fit) ** 2 }
  })
  // Measured from the nearest place, so that a position far outside still has a mean.
  const least = apart.reduce((low, { square }) => Math.min(low, square), Infinity)
  for (const { from, square } of apart) {
    const chance = Math.exp((least - square) / (2 * sigmaFt ** 2))
    total += chance
    x += chance * from.x
    y += chance * from.y
  }
  const from = { x: x / total, y: y / total }
  const square = residualFt({ from, to, weight: 1 }, fit) ** 2
  return { from, to, weight: (TAME + 2) / (TAME + square / sigmaFt ** 2) / sigmaFt ** 2 }
}

function residualFt({ from, to }: PointPair, { turnRad, x, y }: Fit): number {
  const cos = Math.cos(turnRad)
  const sin = Math.sin(turnRad)
  return Math.hypot(from.x * cos - from.y * sin + x - to.x, from.x * sin + from.y * cos + y - to.y)
}

/** Two pairs that pull the turn to 0 as strongly as `TURN_SIGMA_DEG` does, and the shift nowhere. */
function holding(pairs: readonly PointPair[], fit: Fit, spreadFt: number): readonly PointPair[] {
  const weight = 1 / radians(TURN_SIGMA_DEG) ** 2 / spreadFt ** 2 / 2
  const total = pairs.reduce((sum, pair) => sum + pair.weight, 0)
  const x = pairs.reduce((sum, pair) => sum + pair.weight * pair.from.x, 0) / total
  const y = pairs.reduce((sum, pair) => sum + pair.weight * pair.from.y, 0) / total
  const cos = Math.cos(fit.turnRad)
  const sin = Math.sin(fit.turnRad)
  const image = { x: x * cos - y * sin + fit.x, y: x * sin + y * cos + fit.y }
  return [-spreadFt, spreadFt].map((off) => ({
    from: { x: x + off, y },
    to: { x: image.x + off, y: image.y },
    weight,
  }))
}

function spreadOf(pairs: readonly PointPair[]): number {
  const count = Math.max(1, pairs.length)
  const x = pairs.reduce((sum, { from }) => sum + from.x, 0) / count
  const y = pairs.reduce((sum, { from }) => sum + from.y, 0) / count
  return Math.sqrt(pairs.reduce((sum, { from }) => sum + (from.x - x) ** 2 + (from.y - y) ** 2, 0) / count)
}
