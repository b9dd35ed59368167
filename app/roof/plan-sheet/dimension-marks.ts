import type { DimensionShape, FacetShape } from '../plan-drawing.ts'
import { shortLength } from '../length-text.ts'
import { QUIET_INK } from './inks.ts'
import { isInside } from './label-places.ts'
import { centredText, type PlanMark, type SheetPoint } from './marks.ts'
import { overlaps, type SoftBox } from './pin-places.ts'
import type { ToSheet } from './plan-sheet.ts'

const TEXT_PT = 8
const HALF_HEIGHT_PT = 4.6
const OFF_EDGE_PT = [4, 8, 13] as const
/** Where along its run a length may stand, from the middle outwards. */
const SHARES = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8] as const

interface Around {
  readonly toSheet: ToSheet
  readonly facets: readonly FacetShape[]
  readonly area: { readonly widthPt: number; readonly heightPt: number }
  /** What lengths keep clear of. */
  readonly taken: readonly SoftBox[]
}

interface DrawnDimensions {
  readonly marks: readonly PlanMark[]
  readonly boxes: readonly SoftBox[]
}

/**
 * Lengths of outer edges, off the roof beside their edges, the longest first. None covers the roof, another length or
 * what is taken; a length that finds no such place is left away.
 */
export function dimensionMarks(dimensions: readonly DimensionShape[], around: Around): DrawnDimensions {
  const outlines = around.facets.map(({ outline }) => outline.map(around.toSheet))
  const boxes: SoftBox[] = []
  const marks: PlanMark[] = []
  for (const dimension of dimensions.toSorted((a, b) => b.lengthFt - a.lengthFt)) {
    const text = `${shortLength(dimension.lengthFt)}${dimension.goesOn === true ? ' in all' : ''}`
    const box = placesFor(dimension, text, around.toSheet).find((place) =>
      isFree(place, { ...around, outlines, taken: [...around.taken, ...boxes] }),
    )
    if (box === undefined) continue
    boxes.push(box)
    marks.push(centredText(text, box.at, { sizePt: TEXT_PT, colour: QUIET_INK, strong: false, onWhite: false }))
  }
  return { marks, boxes }
}

function placesFor({ from, to, outward }: DimensionShape, text: string, toSheet: ToSheet): readonly SoftBox[] {
  const [a, b] = [toSheet(from), toSheet(to)]
  // Text is not measured here: figures and marks are about half their size wide.
  const halfWidthPt = ([...text].length * TEXT_PT * 0.42) / 2 + 1
  const reachPt = Math.abs(outward.x) * halfWidthPt + Math.abs(outward.y) * HALF_HEIGHT_PT
  return OFF_EDGE_PT.flatMap((offPt) =>
    SHARES.map((share) => ({
      at: {
        xPt: a.xPt + share * (b.xPt - a.xPt) + outward.x * (offPt + reachPt),
        yPt: a.yPt + share * (b.yPt - a.yPt) - outward.y * (offPt + reachPt),
      },
      halfWidthPt,
      halfHeightPt: HALF_HEIGHT_PT,
    })),
  )
}

interface Ground extends Around {
  readonly outlines: readonly (readonly SheetPoint[])[]
}

function isFree(box: SoftBox, { area, taken, outlines }: Ground): boolean {
  const { at, halfWidthPt, halfHeightPt } = box
  const onSheet =
    at.xPt - halfWidthPt >= 0 &&
    at.xPt + halfWidthPt <= area.widthPt &&
    at.yPt - halfHeightPt >= 0 &&
    at.yPt + halfHeightPt <= area.heightPt
  return onSheet && !taken.some((other) => overlaps(other, box)) && !outlines.some((ring) => touches(ring, box))
}

/** True when a figure covers some of a box: a point of the box lies in it, or a corner of it in the box. */
function touches(ring: readonly SheetPoint[], { at, halfWidthPt, halfHeightPt }: SoftBox): boolean {
  const steps = [-1, -0.5, 0, 0.5, 1]
  return (
    steps.some((x) =>
      [-1, 0, 1].some((y) => isInside({ xPt: at.xPt + x * halfWidthPt, yPt: at.yPt + y * halfHeightPt }, ring)),
    ) || ring.some((p) => Math.abs(p.xPt - at.xPt) < halfWidthPt && Math.abs(p.yPt - at.yPt) < halfHeightPt)
  )
}
