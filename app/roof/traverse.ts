import type { PlanPoint } from '../job/places.ts'
import { wrapDegrees } from './angles.ts'
import { azimuthOf, sheetDirection } from './plan-frame.ts'

/**
 * One side of an outline as it was measured: its length, and either the turn from the side before it (degrees, right
 * positive; the first side turns from the sheet's up direction) or its true azimuth.
 */
export type TraverseSide =
  | { readonly kind: 'turn'; readonly lengthFt: number; readonly turnDeg: number }
  | { readonly kind: 'azimuth'; readonly lengthFt: number; readonly azimuthDeg: number }

/** By how much measured sides miss their start. */
export interface ClosingError {
  readonly lengthFt: number
  /** True azimuth from the start to where the last side ends; null when they close. */
  readonly azimuthDeg: number | null
  /** Perimeter over error, as in "1 in 240"; null when they close. */
  readonly oneIn: number | null
}

/** Measured sides, laid end to end from the plan's origin. */
export interface Traverse {
  readonly kind: 'laid-out'
  /** Where each side starts; the first at 0, 0. */
  readonly corners: readonly PlanPoint[]
  /** Where the last side ends. */
  readonly end: PlanPoint
  readonly sideLengthsFt: readonly number[]
  readonly perimeterFt: number
  readonly closing: ClosingError
}

/** Sides that can't be laid out, with a sentence that says what to do. */
export interface TraverseFault {
  readonly kind: 'fault'
  readonly sentence: string
}

/** Sides that miss their start by less than this close: half a thousandth of a foot. */
const CLOSED_FT = 0.0005

/**
 * Lays measured sides end to end and says by how much they miss their start. Each side's part to the right and up the
 * sheet is its length times the sine and cosine of its direction (latitudes and departures, as surveying textbooks call them).
 *
 * @param upAzimuthDeg azimuth of the sheet's up direction
 */
export function closeTraverse(sides: readonly TraverseSide[], upAzimuthDeg: number): Traverse | TraverseFault {
  const sentence = faultOf(sides)
  if (sentence !== null) return { kind: 'fault', sentence }
  const corners: PlanPoint[] = []
  let at: PlanPoint = { xFt: 0, yFt: 0 }
  let heading = upAzimuthDeg
  for (const side of sides) {
    corners.push(at)
    heading = side.kind === 'turn' ? heading + side.turnDeg : side.azimuthDeg
    const along = sheetDirection(heading, upAzimuthDeg)
    at = { xFt: at.xFt + along.x * side.lengthFt, yFt: at.yFt + along.y * side.lengthFt }
  }
  const sideLengthsFt = sides.map(({ lengthFt }) => lengthFt)
  const perimeterFt = sideLengthsFt.reduce((sum, length) => sum + length, 0)
  return {
    kind: 'laid-out',
    corners,
    end: at,
    sideLengthsFt,
    perimeterFt,
    closing: closingError(at, perimeterFt, upAzimuthDeg),
  }
}

/**
 * The corners with the closing error spread by the compass (Bowditch) rule: each side takes a part of the error that is
 * in proportion to its length, so that the last side ends at the start (surveying textbooks).
 */
export function spreadClosingError({ corners, end, sideLengthsFt, perimeterFt }: Traverse): readonly PlanPoint[] {
  let runFt = 0
  return corners.map(({ xFt, yFt }, i) => {
    const share = runFt / perimeterFt
    runFt += sideLengthsFt[i] ?? 0
    return { xFt: xFt - share * end.xFt, yFt: yFt - share * end.yFt }
  })
}

/** "1 in 240": the closing error against the perimeter; "closes" where there is none. */
export function closingLabel({ oneIn }: ClosingError): string {
  return oneIn === null ? 'closes' : `1 in ${Math.round(oneIn)}`
}

function closingError(end: PlanPoint, perimeterFt: number, upAzimuthDeg: number): ClosingError {
  const lengthFt = Math.hypot(end.xFt, end.yFt)
  if (lengthFt < CLOSED_FT) return { lengthFt, azimuthDeg: null, oneIn: null }
  const azimuthDeg = wrapDegrees(azimuthOf({ x: end.xFt, y: end.yFt }, upAzimuthDeg))
  return { lengthFt, azimuthDeg, oneIn: perimeterFt / lengthFt }
}

function faultOf(sides: readonly TraverseSide[]): string | null {
  if (sides.length < 3) return 'An outline needs at least three sides. Add the sides that are missing.'
  const noLength = sides.findIndex(({ lengthFt }) => !(lengthFt > 0 && Number.isFinite(lengthFt)))
  if (noLength >= 0) return `Side ${noLength + 1} has no length. Enter a length above zero or take the side out.`
  const noDirection = sides.findIndex((side) => !Number.isFinite(side.kind === 'turn' ? side.turnDeg : side.azimuthDeg))
  return noDirection >= 0 ? `Side ${noDirection + 1} has no direction. Enter its turn or its azimuth in degrees.` : null
}
