import type { PlanPoint } from '../../../app/job/places.ts'
import { lengthFt, sidesOf, signedAreaSqFt } from '../../../app/roof/polygon.ts'
import { toScreen, type PlanView, type ScreenPoint } from '../plan-view.ts'
import { feetAndInchesLabel } from '../typed-length.ts'

/** A dimension beside an edge: the edge's number as people count it, and its true length. */
export interface EdgeLabel {
  readonly ring: number
  readonly edge: number
  readonly text: string
  /** Middle of the words, pixels. */
  readonly at: ScreenPoint
}

interface Box {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

interface ScreenEdge {
  readonly ring: number
  readonly edge: number
  readonly from: ScreenPoint
  readonly to: ScreenPoint
  readonly lengthFt: number
  /** Unit vector on the screen that leaves the roof. */
  readonly out: ScreenPoint
}

/** Half the height of the words, pixels; a character is about this wide. */
const HALF_HEIGHT_PX = 8
const CHARACTER_PX = 7
/** How far from its edge a label is tried, pixels, the nearest first; below zero is inside the roof. */
const OFFSETS_PX = [4, 22, -4] as const
/** How far along its edge, as a share of it. */
const SHARES = [0.5, 0.3, 0.7] as const

/**
 * Where the dimensions of an outline's edges stand: outside the roof beside their edges, clear of all edges and of each
 * other. The longest edges choose first; an edge that finds no room gets none.
 *
 * @param rings corners of the outside and of the courtyards, in either winding
 */
export function edgeLabels(rings: readonly (readonly PlanPoint[])[], view: PlanView): readonly EdgeLabel[] {
  const edges = rings.flatMap((corners, ring) => screenEdges(corners, ring, view))
  const taken: Box[] = []
  return edges
    .toSorted((a, b) => b.lengthFt - a.lengthFt)
    .flatMap((edge) => {
      const text = `${edge.edge}: ${feetAndInchesLabel(edge.lengthFt)}`
      const halfWidth = (text.length * CHARACTER_PX) / 2
      for (const at of placesFor(edge, halfWidth)) {
        const box = boxAt(at, halfWidth)
        if (taken.some((other) => boxesMeet(box, other)) || edges.some((other) => crossesBox(other, box))) continue
        taken.push(box)
        return [{ ring: edge.ring, edge: edge.edge, text, at }]
      }
      return []
    })
}

function screenEdges(corners: readonly PlanPoint[], ring: number, view: PlanView): readonly ScreenEdge[] {
  // The roof lies left of a counter-clockwise outside and right of a counter-clockwise courtyard.
  const outward = (signedAreaSqFt(corners) >= 0 ? 1 : -1) * (ring === 0 ? 1 : -1)
  return sidesOf(corners).flatMap((side): readonly ScreenEdge[] => {
    const from = toScreen(view, side.from)
    const to = toScreen(view, side.to)
    const px = Math.hypot(to.x - from.x, to.y - from.y)
    if (px === 0) return []
    const out = { x: (-(to.y - from.y) / px) * outward, y: ((to.x - from.x) / px) * outward }
    return [{ ring, edge: side.index + 1, from, to, lengthFt: lengthFt(side.from, side.to), out }]
  })
}

function placesFor({ from, to, out }: ScreenEdge, halfWidth: number): readonly ScreenPoint[] {
  return OFFSETS_PX.flatMap((offset) =>
    SHARES.map((share) => {
      // Words are wider than high: beside an upright edge they need more room.
      const clear = Math.abs(out.x) * halfWidth + Math.abs(out.y) * HALF_HEIGHT_PX
      const away = offset + Math.sign(offset) * clear
      return {
        x: from.x + (to.x - from.x) * share + out.x * away,
        y: from.y + (to.y - from.y) * share + out.y * away,
      }
    }),
  )
}

function boxAt({ x, y }: ScreenPoint, halfWidth: number): Box {
  return { left: x - halfWidth, right: x + halfWidth, top: y - HALF_HEIGHT_PX, bottom: y + HALF_HEIGHT_PX }
}

function boxesMeet(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom
}

/** True when a line runs through a box: what is left of it after cutting it at the box's four sides. */
function crossesBox({ from, to }: ScreenEdge, box: Box): boolean {
  let first = 0
  let last = 1
  const cuts: readonly (readonly [number, number])[] = [
    [to.x - from.x, box.left - from.x],
    [from.x - to.x, from.x - box.right],
    [to.y - from.y, box.top - from.y],
    [from.y - to.y, from.y - box.bottom],
  ]
  for (const [run, gap] of cuts) {
    if (run === 0 && gap > 0) return false
    if (run > 0) first = Math.max(first, gap / run)
    if (run < 0) last = Math.min(last, gap / run)
  }
  return first < last
}
