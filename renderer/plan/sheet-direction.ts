import type { PlanPoint } from '../../app/job/places.ts'
import { wrapDegrees } from '../../app/roof/angles.ts'
import { azimuthOf } from '../../app/roof/plan-frame.ts'

/** A direction on the sheet: degrees clockwise from the sheet's up, 0 up to but not including 360. */
export type SheetDegrees = number

/** The direction from one point to another on the sheet. */
export function directionFrom(from: PlanPoint, to: PlanPoint): SheetDegrees {
  return azimuthOf({ x: to.xFt - from.xFt, y: to.yFt - from.yFt }, 0)
}

/** The point at a distance (feet) in a direction. Multiples of 90 degrees come out without rounding noise. */
export function pointTowards(from: PlanPoint, directionDeg: SheetDegrees, lengthFt: number): PlanPoint {
  const { x, y } = sheetVector(directionDeg)
  return { xFt: from.xFt + x * lengthFt, yFt: from.yFt + y * lengthFt }
}

/** Unit vector of a direction: x to the right, y up the sheet. */
export function sheetVector(directionDeg: SheetDegrees): { x: number; y: number } {
  const turned = wrapDegrees(directionDeg)
  const quarter = { 0: { x: 0, y: 1 }, 90: { x: 1, y: 0 }, 180: { x: 0, y: -1 }, 270: { x: -1, y: 0 } }
  if (turned === 0 || turned === 90 || turned === 180 || turned === 270) return quarter[turned]
  const angle = (turned * Math.PI) / 180
  return { x: Math.sin(angle), y: Math.cos(angle) }
}

/** The corner between two sides at `at`, 0 to 180 degrees: 90 for a square corner. */
export function cornerAngle(before: PlanPoint, at: PlanPoint, after: PlanPoint): number {
  const between = Math.abs(directionFrom(at, before) - directionFrom(at, after))
  return between > 180 ? 360 - between : between
}

const WORDS: Readonly<Record<string, SheetDegrees>> = {
  up: 0,
  u: 0,
  right: 90,
  r: 90,
  down: 180,
  d: 180,
  left: 270,
  l: 270,
}

/**
 * Reads a direction as typed: `90` (clockwise from the sheet's up), `up`, `right`, `down`, `left`, or a turn from the
 * side before, `+90` to the right and `-90` to the left.
 *
 * @param previousDeg direction of the side before; null for the first side, which has nothing to turn from
 * @returns the direction; null when the text is not one
 */
export function parseTypedDirection(typed: string, previousDeg: SheetDegrees | null): SheetDegrees | null {
  const text = typed
    .trim()
    .toLowerCase()
    .replace(/\s*(°|deg(rees?)?)$/, '')
    .replace('−', '-')
  const word = WORDS[text]
  if (word !== undefined) return word
  if (!/^[+-]?\d{1,3}(\.\d+)?$/.test(text)) return null
  const value = Number(text)
  if (!/^[+-]/.test(text)) return value <= 360 ? wrapDegrees(value) : null
  return previousDeg === null ? null : wrapDegrees(previousDeg + value)
}
