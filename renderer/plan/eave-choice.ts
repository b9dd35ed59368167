import type { PlanPoint } from '../../app/job/places.ts'
import { azimuthOf } from '../../app/roof/plan-frame.ts'
import { lengthFt, sidesOf, signedAreaSqFt, type Side } from '../../app/roof/polygon.ts'
import { middleOf, nearestOnSide, type PlanLine } from './sheet-geometry.ts'

/** A neighbour's side this close lies along the same line: an inch. */
const ALONG_FT = 1 / 12

/** Unit vector on the sheet that points out of an outline, square to one of its sides. */
export function outwardOf(outline: readonly PlanPoint[], side: PlanLine): { readonly x: number; readonly y: number } {
  const length = lengthFt(side.from, side.to)
  if (length === 0) return { x: 0, y: -1 }
  const handed = signedAreaSqFt(outline) >= 0 ? 1 : -1
  return {
    x: (handed * (side.to.yFt - side.from.yFt)) / length,
    y: (-handed * (side.to.xFt - side.from.xFt)) / length,
  }
}

/** The azimuth that a facet faces when water leaves it square over the chosen side; whole degrees where it is within a hair of one. */
export function downslopeOverSide(outline: readonly PlanPoint[], side: PlanLine, upAzimuthDeg: number): number {
  const azimuth = azimuthOf(outwardOf(outline, side), upAzimuthDeg)
  return Math.round(azimuth * 10) / 10 === 360 ? 0 : Math.round(azimuth * 10) / 10
}

/** The side that is most likely the eave: the longest one that no other facet shares, else the longest. Null without sides. */
export function likelyEave(outline: readonly PlanPoint[], neighbours: readonly PlanLine[]): Side | null {
  const byLength = [...sidesOf(outline)].sort((a, b) => lengthFt(b.from, b.to) - lengthFt(a.from, a.to))
  const isFree = (side: Side) => {
    const middle = middleOf(side.from, side.to)
    return neighbours.every((line) => lengthFt(nearestOnSide(line, middle), middle) > ALONG_FT)
  }
  return byLength.find(isFree) ?? byLength[0] ?? null
}
