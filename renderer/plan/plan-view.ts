import type { PlanPoint } from '../../app/job/places.ts'
import type { PlanBounds } from '../../app/roof/plan-drawing.ts'

/** A place on the screen, pixels from the top left of the drawing area. */
export interface ScreenPoint {
  readonly x: number
  readonly y: number
}

export interface ScreenSize {
  readonly width: number
  readonly height: number
}

/** What part of the plan is on the screen and how large: screen = offset + plan x scale, y turned over. */
export interface PlanView {
  /** Pixels per foot. */
  readonly scale: number
  /** Where the plan's origin is on the screen. */
  readonly originX: number
  readonly originY: number
}

const LEAST_SCALE = 0.2
const MOST_SCALE = 400
/** A fitted plan is never blown up beyond this: a lone shed should not fill a monitor. */
const MOST_FITTED_SCALE = 30

export function toScreen(view: PlanView, point: PlanPoint): ScreenPoint {
  return { x: view.originX + point.xFt * view.scale, y: view.originY - point.yFt * view.scale }
}

export function toPlan(view: PlanView, point: ScreenPoint): PlanPoint {
  return { xFt: (point.x - view.originX) / view.scale, yFt: (view.originY - point.y) / view.scale }
}

/** The view that shows all of `bounds`; `footPx` is kept free at the foot of the screen for the scale bar and the legend. */
export function fittedView(bounds: PlanBounds, size: ScreenSize, footPx = 0): PlanView {
  const widthFt = Math.max(1, bounds.maxXFt - bounds.minXFt)
  const heightFt = Math.max(1, bounds.maxYFt - bounds.minYFt)
  const height = Math.max(1, size.height - footPx)
  const fitting = Math.min(size.width / widthFt, height / heightFt) * 0.96
  const scale = Math.min(MOST_FITTED_SCALE, Math.max(LEAST_SCALE, fitting))
  const middleX = (bounds.minXFt + bounds.maxXFt) / 2
  const middleY = (bounds.minYFt + bounds.maxYFt) / 2
  return { scale, originX: size.width / 2 - middleX * scale, originY: height / 2 + middleY * scale }
}

/** The view made larger or smaller by a factor, with the plan under `at` staying where it is. */
export function zoomedView(view: PlanView, factor: number, at: ScreenPoint): PlanView {
  const scale = Math.min(MOST_SCALE, Math.max(LEAST_SCALE, view.scale * factor))
  const share = scale / view.scale
  return {
    scale,
    originX: at.x - (at.x - view.originX) * share,
    originY: at.y - (at.y - view.originY) * share,
  }
}

/** The view moved by a distance on the screen. */
export function pannedView(view: PlanView, by: ScreenPoint): PlanView {
  return { ...view, originX: view.originX + by.x, originY: view.originY + by.y }
}

/** A round length, feet, that is drawn between half of `mostPx` and all of it where one exists: 1, 2 or 5 times a power of ten. */
export function roundLengthFt(view: PlanView, mostPx: number): number {
  const mostFt = mostPx / view.scale
  const power = 10 ** Math.floor(Math.log10(mostFt))
  const step = [5, 2, 1].find((digit) => digit * power <= mostFt) ?? 1
  return step * power
}
