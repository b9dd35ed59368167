import type { PlanPoint } from '../job/places.ts'
import { sheetDirection } from './plan-frame.ts'

/** A place on an image, pixels from its top left corner: x to the right, y down. */
export interface ImagePoint {
  readonly x: number
  readonly y: number
}

/** Pixels to plan feet: x' = a x + c y + e, y' = b x + d y + f (coefficients named as in SVG's matrix). */
export interface Affine {
  readonly a: number
  readonly b: number
  readonly c: number
  readonly d: number
  readonly e: number
  readonly f: number
}

/** An image laid under the plan, or why it can't be. */
export type PlacedImage =
  | {
      readonly kind: 'placed'
      readonly affine: Affine
      readonly feetPerPixel: number
      /** What marking one end of the known line a pixel off does to every length, percent. */
      readonly percentPerPixel: number
    }
  | { readonly kind: 'refused'; readonly sentence: string }

/** What a person says about an image to lay it under the plan. */
export interface ImageSetting {
  /**
   * Two places on the image and the level distance between them. An eave or a ridge is level; the length of a rake or
   * hip, measured along the slope, is not what an image from above shows.
   */
  readonly knownLine: { readonly from: ImagePoint; readonly to: ImagePoint; readonly lengthFt: number }
  /** True azimuth of the image's up direction; 0 for an image with north at the top. */
  readonly imageUpAzimuthDeg: number
  /** Azimuth of the sheet's up direction. */
  readonly upAzimuthDeg: number
  /** One place on the image and where it is on the plan. */
  readonly held: { readonly image: ImagePoint; readonly plan: PlanPoint }
}

/** On a shorter line a pixel is more than a tenth of it. */
const SHORTEST_LINE_PX = 10

/**
 * Lays an image taken straight from above under the plan: scaled evenly by one known length, turned to north as set by
 * hand, moved so that one place fits (similarity transform). Images taken at a slant can't be laid so.
 */
export function placeImage({ knownLine, imageUpAzimuthDeg, upAzimuthDeg, held }: ImageSetting): PlacedImage {
  const { from, to, lengthFt } = knownLine
  const lengthPx = Math.hypot(to.x - from.x, to.y - from.y)
  if (!(lengthFt > 0)) return { kind: 'refused', sentence: 'Enter the length of the marked line, in feet, above zero.' }
  if (!(lengthPx >= SHORTEST_LINE_PX)) {
    return { kind: 'refused', sentence: 'The two marks are too close together. Mark the ends of a longer line.' }
  }
  const feetPerPixel = lengthFt / lengthPx
  const up = sheetDirection(imageUpAzimuthDeg, upAzimuthDeg)
  const right = sheetDirection(imageUpAzimuthDeg + 90, upAzimuthDeg)
  const turned: Affine = {
    a: right.x * feetPerPixel,
    b: right.y * feetPerPixel,
    c: -up.x * feetPerPixel,
    d: -up.y * feetPerPixel,
    e: 0,
    f: 0,
  }
  const at = imageToPlan(held.image, turned)
  const affine = { ...turned, e: held.plan.xFt - at.xFt, f: held.plan.yFt - at.yFt }
  return { kind: 'placed', affine, feetPerPixel, percentPerPixel: 100 / lengthPx }
}

/** Where a place on the image is on the plan, feet. */
export function imageToPlan({ x, y }: ImagePoint, { a, b, c, d, e, f }: Affine): PlanPoint {
  return { xFt: a * x + c * y + e, yFt: b * x + d * y + f }
}

/** Where a place on the plan is on the image, pixels. */
export function planToImage({ xFt, yFt }: PlanPoint, { a, b, c, d, e, f }: Affine): ImagePoint {
  const size = a * d - b * c
  const x = xFt - e
  const y = yFt - f
  return { x: (d * x - c * y) / size, y: (a * y - b * x) / size }
}
