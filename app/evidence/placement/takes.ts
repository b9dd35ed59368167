import type { PhotoId } from '../../job/ids.ts'
import { radians, wrapDegrees } from '../../roof/angles.ts'
import { PLACEMENT_CALIBRATION } from './calibration.ts'
import type { ConfirmedPlace, PlacementInput, PlacementPhoto } from './placement-input.ts'

/**
 * Photos of one thing taken within seconds: overview, mid, close. They were taken from about the same spot, so that what
 * one says of the place the next hardly adds to: they are heard as one photo with their mean position and direction.
 */
export interface Take extends PlacementPhoto {
  /** The photos that it stands for, in the order of time; its own id is that of the first. */
  readonly photoIds: readonly PhotoId[]
  /** How many positions and directions were averaged. */
  readonly fixes: number
  readonly looks: number
}

/** Places and hints come with the takes that hold their photos. */
export interface TakenInput extends PlacementInput {
  readonly photos: readonly Take[]
}

/** Gathers the photos of each camera that were taken within seconds in about the same direction. */
export function takenTogether(input: PlacementInput): TakenInput {
  const places = new Map(input.confirmed.map((known) => [known.photoId, known]))
  const takes = gathered(input.photos, places).map(asOne)
  const takeOf = new Map(takes.flatMap(({ id, photoIds }) => photoIds.map((photoId) => [photoId, id] as const)))
  const moved = <T extends { readonly photoId: PhotoId }>(of: readonly T[]): T[] =>
    of.map((one) => ({ ...one, photoId: takeOf.get(one.photoId) ?? one.photoId }))
  return { ...input, photos: takes, confirmed: moved(input.confirmed), hints: moved(input.hints ?? []) }
}

type Known = ReadonlyMap<PhotoId, ConfirmedPlace>

function gathered(photos: readonly PlacementPhoto[], places: Known): readonly (readonly PlacementPhoto[])[] {
  const timed = photos.filter(({ instantMs }) => instantMs !== null)
  const takes: PlacementPhoto[][] = photos.filter(({ instantMs }) => instantMs === null).map((photo) => [photo])
  const open = new Map<PlacementPhoto['cameraId'], PlacementPhoto[]>()
  for (const photo of timed.toSorted((a, b) => (a.instantMs ?? 0) - (b.instantMs ?? 0))) {
    const take = open.get(photo.cameraId)
    if (take !== undefined && belongs(photo, take, places)) take.push(photo)
    else {
      const next = [photo]
      takes.push(next)
      open.set(photo.cameraId, next)
    }
  }
  return takes
}

function belongs(photo: PlacementPhoto, take: readonly PlacementPhoto[], places: Known): boolean {
  const { sameThingS, sameThingDeg } = PLACEMENT_CALIBRATION
  const before = take.at(-1)
  if (before === undefined || (photo.instantMs ?? 0) - (before.instantMs ?? 0) > sameThingS * 1000) return false
  const place = places.get(photo.id)?.place
  const known = take.flatMap(({ id }) => places.get(id)?.place ?? [])
  if (place !== undefined && known.some((other) => other !== place)) return false
  const facing = meanDeg(take)
  if (facing === null || photo.direction === null) return true
  return Math.abs(wrapDegrees(photo.direction.azimuthDeg - facing + 180) - 180) <= sameThingDeg
}

function asOne(photos: readonly PlacementPhoto[]): Take {
  const [first] = photos
  if (first === undefined) throw new Error('A take holds at least one photo.')
  const azimuthDeg = meanDeg(photos)
  const reference = photos.find(({ direction }) => direction !== null)?.direction?.reference
  return {
    ...first,
    photoIds: photos.map(({ id }) => id),
    position: meanPosition(photos),
    direction: azimuthDeg === null || reference === undefined ? null : { azimuthDeg, reference },
    fixes: photos.filter(({ position }) => position !== null).length,
    looks: photos.filter(({ direction }) => direction !== null).length,
  }
}

function meanDeg(photos: readonly PlacementPhoto[]): number | null {
  const azimuths = photos.flatMap(({ direction }) => (direction === null ? [] : [radians(direction.azimuthDeg)]))
  if (azimuths.length === 0) return null
  const sum = (of: (azimuth: number) => number) => azimuths.reduce((total, azimuth) => total + of(azimuth), 0)
  return wrapDegrees((Math.atan2(sum(Math.sin), sum(Math.cos)) * 180) / Math.PI)
}

/** Means of the latitudes, longitudes and stated errors; with three or more, middle ones, as one may be far out. */
function meanPosition(photos: readonly PlacementPhoto[]): PlacementPhoto['position'] {
  const positions = photos.flatMap(({ position }) => position ?? [])
  const [first] = positions
  if (first === undefined) return null
  const errors = positions.flatMap(({ errorM }) => errorM ?? [])
  return {
    ...first,
    latDeg: middling(positions.map(({ latDeg }) => latDeg)),
    lonDeg: middling(positions.map(({ lonDeg }) => lonDeg)),
    errorM: errors.length === 0 ? null : middling(errors),
  }
}

/** The mean without the least and the greatest where there are more than two. */
function middling(values: readonly number[]): number {
  const kept = values.length > 2 ? values.toSorted((a, b) => a - b).slice(1, -1) : values
  return kept.reduce((sum, value) => sum + value, 0) / Math.max(1, kept.length)
}
