import type { DimensionShape, PlanDrawing } from '../../../app/roof/plan-drawing.ts'
import type { PlanPoint } from '../../../app/job/places.ts'
import { outerRuns } from '../../../app/roof/plan-sheet/outer-runs.ts'
import { sheetDirection } from '../../../app/roof/plan-frame.ts'
import { edgePoint } from '../edge-point.ts'
import type { ScreenPoint } from '../plan-view.ts'
import { feetAndInchesLabel } from '../typed-length.ts'
import { boxesOverlap, lineMeetsBox, type LabelBox } from './boxes.ts'
import { facetPlaces, type FacetPlace } from './facet-places.ts'

/** The length of a part of the roof's outside, seen from above, and where its words stand, pixels from the plan's origin. */
export interface LengthLabel {
  readonly text: string
  readonly at: ScreenPoint
  readonly box: LabelBox
}

/** All words of the plan that have to keep clear of each other. */
export interface PlanLabels {
  readonly facets: readonly FacetPlace[]
  readonly lengths: readonly LengthLabel[]
}

const PIN_HALF_PX = 13
const DOOR_HALF_PX = 18
const CHARACTER_PX = 7
const HALF_HEIGHT_PX = 8
/** How far outside its edge a length is tried, pixels, the nearest first. */
const OFFSETS_PX = [5, 22] as const
/** How far along its edge, as a share of it. */
const SHARES = [0.5, 0.35, 0.65, 0.2, 0.8] as const
/** An edge shorter than this share of its words would be lost under them. */
const LEAST_SHARE_OF_WORDS = 0.6

/**
 * Where letters and lengths stand at a scale: pins and the door first, which can't give way, then facets from the largest
 * on, then lengths from the longest on. What finds no room is left away, so that no two ever overlap.
 *
 * @param scale pixels per foot
 * @param shows whether lengths stand beside the roof, and where else marks stand that can't give way
 */
export function planLabels(
  drawing: PlanDrawing,
  scale: number,
  shows: { readonly lengths: boolean; readonly marks: readonly PlanPoint[] },
): PlanLabels {
  const pins = [...drawing.pins.map((pin) => pin.markerAt), ...shows.marks]
  const fixed = [
    ...pins.map((at) => squareBox({ x: at.xFt * scale, y: -at.yFt * scale }, PIN_HALF_PX)),
    ...(drawing.doorAt == null
      ? []
      : [squareBox({ x: drawing.doorAt.xFt * scale, y: -drawing.doorAt.yFt * scale }, DOOR_HALF_PX)]),
  ]
  const lines = drawing.edges.map(({ from, to }) => ({
    from: { x: from.xFt * scale, y: -from.yFt * scale },
    to: { x: to.xFt * scale, y: -to.yFt * scale },
  }))
  fixed.push(...frontBoxes(drawing, scale))
  const facets = facetPlaces(drawing.facets, scale, { pins, taken: fixed, lines })
  if (!shows.lengths) return { facets, lengths: [] }
  const taken = [...fixed, ...facets.map(({ box }) => box)]
  const leaders = facets.flatMap(({ at, leadsTo }) => (leadsTo === null ? [] : [{ from: at, to: leadsTo }]))
  const isFree = (box: LabelBox) =>
    !taken.some((other) => boxesOverlap(other, box)) &&
    ![...lines, ...leaders].some(({ from, to }) => lineMeetsBox(from, to, box))
  const longestFirst = outerRuns(drawing).toSorted((a, b) => b.lengthFt - a.lengthFt)
  const lengths = longestFirst.flatMap((run): readonly LengthLabel[] => {
    const label = lengthPlaces(run, scale).find(({ box }) => isFree(box))
    if (label === undefined) return []
    taken.push(label.box)
    return [label]
  })
  return { facets, lengths }
}

/** The word FRONT with its arrow. */
function frontBoxes({ bounds, frontAzimuthDeg, upAzimuthDeg }: PlanDrawing, scale: number): readonly LabelBox[] {
  if (frontAzimuthDeg === null) return []
  const way = sheetDirection(frontAzimuthDeg, upAzimuthDeg)
  const { xFt, yFt } = edgePoint(bounds, way)
  const at = { x: xFt * scale, y: -yFt * scale }
  return Math.abs(way.x) < 0.4
    ? [{ x: at.x + 20 + way.x * 15, y: at.y, halfWidth: 42, halfHeight: 12 }]
    : [{ x: at.x + way.x * 20, y: at.y - way.y * 8, halfWidth: 36, halfHeight: 20 }]
}

function squareBox({ x, y }: ScreenPoint, half: number): LabelBox {
  return { x, y, halfWidth: half, halfHeight: half }
}

function lengthPlaces({ from, to, lengthFt, outward: out }: DimensionShape, scale: number): readonly LengthLabel[] {
  const text = feetAndInchesLabel(lengthFt)
  const halfWidth = (text.length * CHARACTER_PX) / 2
  if (lengthFt * scale < halfWidth * 2 * LEAST_SHARE_OF_WORDS) return []
  // Words are wider than high: beside an upright edge they need more room.
  const clear = Math.abs(out.x) * halfWidth + Math.abs(out.y) * HALF_HEIGHT_PX
  return OFFSETS_PX.flatMap((offset) =>
    SHARES.map((share) => {
      const at = {
        x: (from.xFt + (to.xFt - from.xFt) * share) * scale + out.x * (offset + clear),
        y: -(from.yFt + (to.yFt - from.yFt) * share) * scale - out.y * (offset + clear),
      }
      return { text, at, box: { ...at, halfWidth, halfHeight: HALF_HEIGHT_PX } }
    }),
  )
}
