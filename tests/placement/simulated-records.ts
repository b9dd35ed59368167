import { cameraIdSchema, photoIdSchema, type FacetId, type PhotoId } from '../../app/job/ids.ts'
import type { PlacementPhoto, PlaceHint, PlaceId } from '../../app/evidence/placement/placement-input.ts'
import type { PlanPoint } from '../../app/job/places.ts'
import { azimuthOf, planToGeo } from '../../app/roof/plan-frame.ts'
import { wrapDegrees } from '../../app/roof/angles.ts'
import type { Chance } from './chance.ts'
import type { SimulatedHouse } from './simulated-houses.ts'
import type { TrueShot } from './simulated-walks.ts'

/** How good a walk's cameras are. */
export interface CameraConditions {
  /** Radius that 68 % of the wandering position errors keep within, metres, beyond the lasting offset. */
  readonly errorM: number
  readonly lastingOffsetM: number
  /** Share of the wandering errors' variance that wanders slowly; the rest is new at every fix. */
  readonly slowShare: number
  /** Share of the photos of the camera with positions that lack one. */
  readonly missing: number
  readonly hasPositions: boolean
  /** Share of the photos taken with a second camera, which writes neither position nor direction. */
  readonly secondCamera: number
}

/** What the cameras wrote down of a walk, and the truth kept apart for the judge. */
export interface RecordedWalk {
  readonly house: SimulatedHouse
  readonly photos: readonly PlacementPhoto[]
  readonly truth: ReadonlyMap<PhotoId, PlaceId>
  readonly shots: readonly TrueShot[]
}

const FT_PER_M = 1 / 0.3048
const PHONE = cameraIdSchema.parse('phone')
const SECOND = cameraIdSchema.parse('second')
const PER_AXIS = 1 / Math.sqrt(-2 * Math.log(0.32))
const OPTIMISTIC = { share: 0.25, states: 0.6 }
const GROSS = { position: 0.02, direction: 0.06 }

/** What the cameras write during a walk. */
export function recordWalk(
  house: SimulatedHouse,
  shots: readonly TrueShot[],
  given: { readonly conditions: CameraConditions; readonly chance: Chance },
): RecordedWalk {
  const { conditions, chance } = given
  const wander = wanderingError(conditions, chance)
  const compass = compassOf(house, chance)
  const secondClockMs = chance.normal(3000)
  let gapLeft = 0
  const photos = shots.map((shot, index): PlacementPhoto => {
    const id = photoIdSchema.parse(`photo-${index + 1}`)
    const error = wander(shot.atMs)
    if (chance.chance(conditions.secondCamera)) {
      const instantMs = Math.round(shot.atMs + secondClockMs)
      return { id, cameraId: SECOND, instantMs, position: null, direction: null }
    }
    if (gapLeft === 0 && chance.chance(conditions.missing / 3)) gapLeft = 1 + Math.floor(chance.between(0, 5))
    const lacks = !conditions.hasPositions || gapLeft > 0
    gapLeft = Math.max(0, gapLeft - 1)
    const isOptimistic = chance.chance(OPTIMISTIC.share)
    const errorM = conditions.errorM * chance.between(0.8, 1.2) * (isOptimistic ? OPTIMISTIC.states : 1)
    const direction = compass(shot)
    const geo = planToGeo({ xFt: shot.at.xFt + error.xFt, yFt: shot.at.yFt + error.yFt }, house.frame)
    const position = lacks || geo === null ? null : { ...geo, altitudeM: null, errorM }
    return {
      id,
      cameraId: PHONE,
      instantMs: shot.atMs,
      position,
      direction: conditions.hasPositions ? direction : null,
    }
  })
  const truth = new Map(
    shots.map((shot, index) => [photoIdSchema.parse(`photo-${index + 1}`), placeOf(house, shot.shows)]),
  )
  return { house, photos, truth, shots }
}

/** A lasting offset in any direction, a slow wander with a memory of one to four minutes, and jumps that are rarely gross. */
function wanderingError(conditions: CameraConditions, chance: Chance): (atMs: number) => PlanPoint {
  const sigmaFt = conditions.errorM * PER_AXIS * FT_PER_M
  const slowFt = sigmaFt * Math.sqrt(conditions.slowShare)
  const jumpFt = sigmaFt * Math.sqrt(1 - conditions.slowShare)
  const turn = chance.between(0, 2 * Math.PI)
  const lastingFt = conditions.lastingOffsetM * FT_PER_M
  const memoryS = chance.between(60, 240)
  let slow = { xFt: chance.normal(slowFt), yFt: chance.normal(slowFt) }
  let lastMs: number | null = null
  return (atMs) => {
    const keep = lastMs === null ? 1 : Math.exp(-Math.max(0, atMs - lastMs) / 1000 / memoryS)
    const fresh = slowFt * Math.sqrt(1 - keep ** 2)
    slow = { xFt: slow.xFt * keep + chance.normal(fresh), yFt: slow.yFt * keep + chance.normal(fresh) }
    lastMs = atMs
    const jump = chance.chance(GROSS.position) ? jumpFt * 6 : jumpFt
    return {
      xFt: lastingFt * Math.cos(turn) + slow.xFt + chance.normal(jump),
      yFt: lastingFt * Math.sin(turn) + slow.yFt + chance.normal(jump),
    }
  }
}

/** 10 to 15 degrees of noise, a lasting error of the walk's compass, one in seven photos without, some wholly wrong. */
function compassOf(house: SimulatedHouse, chance: Chance): (shot: TrueShot) => PlacementPhoto['direction'] {
  const noiseDeg = chance.between(10, 15)
  const lastingDeg = chance.normal(4)
  const isMagnetic = chance.chance(0.3)
  return (shot) => {
    const line = { x: shot.towards.xFt - shot.at.xFt, y: shot.towards.yFt - shot.at.yFt }
    const trueDeg = azimuthOf(line, house.frame.upAzimuthDeg)
    const read = chance.chance(GROSS.direction)
      ? chance.between(0, 360)
      : trueDeg + chance.normal(noiseDeg) + lastingDeg
    // Florida's compass needles point about 6 degrees west of true north, so that they read 6 degrees more.
    const azimuthDeg = wrapDegrees(read + (isMagnetic ? 6 : 0))
    if (chance.chance(1 / 7)) return null
    return { azimuthDeg, reference: isMagnetic ? 'magnetic' : 'true' }
  }
}

function placeOf(house: SimulatedHouse, facet: number): PlaceId {
  const id: FacetId | undefined = house.facets[facet]?.id
  return id ?? 'ground'
}

/** A draw without return of photos that a person confirms, with what is true of them. */
export function confirmSome(walk: RecordedWalk, count: number, chance: Chance) {
  const left = [...walk.photos]
  return Array.from({ length: Math.min(count, left.length) }, () => {
    const [photo] = left.splice(Math.floor(chance.between(0, left.length)), 1)
    return photo
  }).flatMap((photo) => {
    const place = photo === undefined ? undefined : walk.truth.get(photo.id)
    return photo === undefined || place === undefined ? [] : [{ photoId: photo.id, place, pin: null }]
  })
}

/** How an inspector speaks on a walk. */
export interface Speech {
  /** Share of arrivals that are spoken of. */
  readonly speaks: number
  /** Share of those that say which of several slopes on that side. */
  readonly exact: number
  /** Share of those that are wrong. */
  readonly wrong: number
}

/** Hints as place words give them: the slopes of a side, or one third of a side, on the photo that follows the words. */
export function spokenHints(walk: RecordedWalk, speech: Speech, chance: Chance): readonly PlaceHint[] {
  return walk.shots.flatMap((shot, index): readonly PlaceHint[] => {
    const photo = walk.photos[index]
    if (photo === undefined || !chance.chance(shot.arrives ? speech.speaks : 0.05)) return []
    const said = chance.chance(speech.wrong) ? Math.floor(chance.between(0, walk.house.facets.length)) : shot.standsOn
    const isExact = chance.chance(speech.exact)
    return [
      { photoId: photo.id, weights: said === -1 ? [{ place: 'ground', weight: 1 }] : sideWords(walk, said, isExact) },
    ]
  })
}

function sideWords({ house }: RecordedWalk, said: number, isExact: boolean): PlaceHint['weights'] {
  const meant = house.facets[said]
  if (meant === undefined) return []
  const turn = (deg: number) => Math.abs(((deg - meant.downslopeAzimuthDeg + 540) % 360) - 180)
  const onSide = house.facets.filter(({ downslopeAzimuthDeg }) => turn(downslopeAzimuthDeg) < 45)
  const fit = isExact
    ? onSide.filter((facet) => thirdOf(house, facet.outline) === thirdOf(house, meant.outline))
    : onSide
  return fit.map(({ id }) => ({ place: id, weight: 1 }))
}

/** 0, 1 or 2: which third of the house's breadth a slope's middle is in. */
function thirdOf(house: SimulatedHouse, outline: readonly PlanPoint[]): number {
  const xs = house.facets.flatMap((facet) => facet.outline.map(({ xFt }) => xFt))
  const mean = outline.reduce((sum, { xFt }) => sum + xFt, 0) / outline.length
  const low = Math.min(...xs)
  return Math.min(2, Math.floor((3 * (mean - low)) / (Math.max(...xs) - low)))
}
