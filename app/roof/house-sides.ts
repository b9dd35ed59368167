import type { PlanPoint } from '../job/places.ts'
import { wrapDegrees } from './angles.ts'
import type { Facet } from './facet.ts'
import { sheetDirection } from './plan-frame.ts'

/** How a plan lies and which way its house faces. */
export interface Orientation {
  /** Azimuth of the sheet's up direction. */
  readonly upAzimuthDeg: number
  /** Direction that the front of the house faces, out to the street; null when not known. */
  readonly frontAzimuthDeg: number | null
}

/** The side of a house that a facet faces, and how places along it are told apart. */
export interface HouseSide {
  /** 0 to 7 clockwise seen from above, from the front (from north where the front is not known); 8 for flat facets. */
  readonly place: number
  /** "front", "left", "front left corner"; "south slope" where the front is not known. */
  readonly words: string
  /** Words for the two ends of the side, in the direction of `across`. */
  readonly ends: readonly [string, string]
  /** Unit vector on the sheet along the side, from the first end to the second. */
  readonly across: SheetVector
  /** Unit vector on the sheet away from the house. */
  readonly outward: SheetVector
}

export interface SheetVector {
  readonly x: number
  readonly y: number
}

/** A facet that faces a side within this is taken to face it squarely; in between it is a corner slope. */
const SQUARELY_DEG = 30

/** Clockwise seen from above. Who looks at the front from the street has the side at front azimuth + 90 on the left. */
const FRONT_SIDES = [
  'front',
  'front left corner',
  'left',
  'back left corner',
  'back',
  'back right corner',
  'right',
  'front right corner',
] as const

const WINDS = ['north', 'north-east', 'east', 'south-east', 'south', 'south-west', 'west', 'north-west'] as const

/**
 * The side of the house that a facet faces, by its downslope direction. Left and right are those of a person who looks
 * at the front from the street, on every side of the house; the left and right sides run from front to back. Where the
 * front is not known, sides are named by the compass.
 */
export function houseSide(facet: Facet, orientation: Orientation): HouseSide {
  const { frontAzimuthDeg } = orientation
  return frontAzimuthDeg === null ? compassSide(facet, orientation) : frontSide(facet, orientation, frontAzimuthDeg)
}

/** How far along a direction a point lies, feet. */
export function distanceAlong(point: PlanPoint, direction: SheetVector): number {
  return point.xFt * direction.x + point.yFt * direction.y
}

/** The word for the way a direction on the sheet points: front, back, left or right, or one of eight winds. */
export function directionWord(direction: SheetVector, { upAzimuthDeg, frontAzimuthDeg }: Orientation): string {
  const north = sheetDirection(frontAzimuthDeg ?? 0, upAzimuthDeg)
  const clockwise = sheetDirection((frontAzimuthDeg ?? 0) + 90, upAzimuthDeg)
  const dot = (v: SheetVector) => direction.x * v.x + direction.y * v.y
  const degrees = wrapDegrees((Math.atan2(dot(clockwise), dot(north)) * 180) / Math.PI)
  if (frontAzimuthDeg === null) return windWord(Math.round(degrees / 45))
  return (['front', 'left', 'back', 'right'] as const)[Math.round(degrees / 90) % 4] ?? 'front'
}

function frontSide(facet: Facet, { upAzimuthDeg }: Orientation, frontAzimuthDeg: number): HouseSide {
  const towards = (deg: number) => sheetDirection(frontAzimuthDeg + deg, upAzimuthDeg)
  const leftToRight = { ends: ['left', 'right'], across: towards(-90) } as const
  if (facet.pitchRise === 0) return { place: 8, words: 'flat part', ...leftToRight, outward: towards(0) }
  const place = frontPlace(wrapDegrees(facet.downslopeAzimuthDeg - frontAzimuthDeg))
  const isSide = place === 2 || place === 6
  return {
    place,
    words: FRONT_SIDES[place] ?? 'front',
    ...(isSide ? { ends: ['front', 'back'] as const, across: towards(180) } : leftToRight),
    outward: towards(place * 45),
  }
}

function frontPlace(degrees: number): number {
  const square = Math.round(degrees / 90)
  if (Math.abs(degrees - square * 90) <= SQUARELY_DEG) return (square % 4) * 2
  return Math.floor(degrees / 90) * 2 + 1
}

function compassSide(facet: Facet, { upAzimuthDeg }: Orientation): HouseSide {
  const towards = (deg: number) => sheetDirection(deg, upAzimuthDeg)
  if (facet.pitchRise === 0) {
    return { place: 8, words: 'flat part', ends: ['west', 'east'], across: towards(90), outward: towards(180) }
  }
  const place = Math.round(facet.downslopeAzimuthDeg / 45) % 8
  return {
    place,
    words: `${windWord(place)} slope`,
    ends: [windWord(place + 2), windWord(place + 6)],
    across: towards(place * 45 - 90),
    outward: towards(place * 45),
  }
}

function windWord(place: number): string {
  return WINDS[place % 8] ?? 'north'
}
