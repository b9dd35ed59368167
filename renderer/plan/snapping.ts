import type { PlanPoint } from '../../app/job/places.ts'
import { lengthFt } from '../../app/roof/polygon.ts'
import { directionFrom, pointTowards, sheetVector, type SheetDegrees } from './sheet-direction.ts'
import { nearestOnSide, tidyPoint, type PlanLine } from './sheet-geometry.ts'

const DIRECTION_STEP_DEG = 45
/** A side this close to a multiple of 45 degrees is meant to be one. */
const DIRECTION_REACH_DEG = 4

/** What a drawn point holds on to. */
export interface SnapTargets {
  readonly corners: readonly PlanPoint[]
  readonly sides: readonly PlanLine[]
  /** Points that a held side may end level with. */
  readonly levels: readonly PlanPoint[]
}

export interface SnapSettings {
  /** How near the pointer must be to hold on, feet (a fixed distance on the screen). */
  readonly reachFt: number
  /** Lengths and free points are rounded to this, feet; null keeps them as they are. */
  readonly stepFt: number | null
}

/** Where a drawn point goes, and what it held on to. `corner` is the very same point as the corner it met. */
export interface Snap {
  readonly at: PlanPoint
  readonly to: 'corner' | 'side' | 'direction' | 'aligned' | 'free'
}

/**
 * Moves the pointer's place to what was most likely meant: an existing corner first, then a side that runs at a multiple
 * of 45 degrees (stopping at a side it meets, level with a corner, or at a whole step), then an existing side, else free.
 *
 * @param from the corner that the new side starts at; null for the first corner
 */
export function snapPoint(
  pointer: PlanPoint,
  from: PlanPoint | null,
  given: { readonly targets: SnapTargets; readonly settings: SnapSettings },
): Snap {
  const { targets, settings } = given
  const corner = nearestCorner(pointer, targets.corners, settings.reachFt)
  if (corner !== null) return { at: corner, to: 'corner' }
  const directed = from === null ? null : alongDirection(pointer, from, given)
  if (directed !== null) return directed
  const side = nearestSidePoint(pointer, targets.sides, settings.reachFt)
  if (side !== null) return { at: tidyPoint(side), to: 'side' }
  return { at: tidyPoint(from === null ? onGrid(pointer, settings.stepFt) : pointer), to: 'free' }
}

/** The corner nearest to a point within reach, as it is stored; null when none is near. */
export function nearestCorner(point: PlanPoint, corners: readonly PlanPoint[], reachFt: number): PlanPoint | null {
  let best: PlanPoint | null = null
  let bestFt = reachFt
  for (const corner of corners) {
    const away = lengthFt(corner, point)
    if (away > bestFt) continue
    best = corner
    bestFt = away
  }
  return best
}

function nearestSidePoint(point: PlanPoint, sides: readonly PlanLine[], reachFt: number): PlanPoint | null {
  return nearestCorner(
    point,
    sides.map((side) => nearestOnSide(side, point)),
    reachFt,
  )
}

function alongDirection(
  pointer: PlanPoint,
  from: PlanPoint,
  { targets, settings }: { readonly targets: SnapTargets; readonly settings: SnapSettings },
): Snap | null {
  const direction = snappedDirection(pointer, from, settings.reachFt)
  if (direction === null) return null
  const ray = sheetVector(direction)
  const reached = (pointer.xFt - from.xFt) * ray.x + (pointer.yFt - from.yFt) * ray.y
  const isNear = (along: number) => along > 0 && Math.abs(along - reached) <= settings.reachFt
  const nearestTo = (candidates: readonly number[]) =>
    candidates.filter(isNear).sort((a, b) => Math.abs(a - reached) - Math.abs(b - reached))[0]

  const met = nearestTo(targets.sides.flatMap((side) => whereRayMeets(from, ray, side)))
  if (met !== undefined) return { at: tidyPoint(pointTowards(from, direction, met)), to: 'side' }
  const level = nearestTo(targets.levels.map((c) => (c.xFt - from.xFt) * ray.x + (c.yFt - from.yFt) * ray.y))
  if (level !== undefined) return { at: tidyPoint(pointTowards(from, direction, level)), to: 'aligned' }
  const { stepFt } = settings
  const length = stepFt === null ? reached : Math.max(stepFt, Math.round(reached / stepFt) * stepFt)
  return { at: tidyPoint(pointTowards(from, direction, length)), to: 'direction' }
}

function snappedDirection(pointer: PlanPoint, from: PlanPoint, reachFt: number): SheetDegrees | null {
  const away = lengthFt(from, pointer)
  if (away === 0) return null
  const direction = directionFrom(from, pointer)
  const nearest = Math.round(direction / DIRECTION_STEP_DEG) * DIRECTION_STEP_DEG
  const offDeg = Math.abs(direction - nearest)
  const offFt = away * Math.sin((offDeg * Math.PI) / 180)
  return offDeg <= DIRECTION_REACH_DEG || offFt <= reachFt ? nearest % 360 : null
}

/** Distances from `from` along a unit ray at which it meets a side; a side along the ray is met nowhere in particular. */
function whereRayMeets(from: PlanPoint, ray: { x: number; y: number }, side: PlanLine): number[] {
  const sideX = side.to.xFt - side.from.xFt
  const sideY = side.to.yFt - side.from.yFt
  const turn = ray.x * sideY - ray.y * sideX
  if (Math.abs(turn) < 1e-9) return []
  const toSideX = side.from.xFt - from.xFt
  const toSideY = side.from.yFt - from.yFt
  const alongSide = (toSideX * ray.y - toSideY * ray.x) / turn
  if (alongSide < 0 || alongSide > 1) return []
  return [(toSideX * sideY - toSideY * sideX) / turn]
}

function onGrid(point: PlanPoint, stepFt: number | null): PlanPoint {
  if (stepFt === null) return point
  return { xFt: Math.round(point.xFt / stepFt) * stepFt, yFt: Math.round(point.yFt / stepFt) * stepFt }
}
