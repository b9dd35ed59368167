import { describe, expect, it } from 'vitest'
import { ellHip, facetsOf, gable, hip } from '../../../tests/builders/whole-roofs.ts'
import { drawPlan } from '../draw-plan.ts'
import { shortLength } from '../length-text.ts'
import type { PlanDrawing } from '../plan-drawing.ts'
import { dimensionMarks } from './dimension-marks.ts'
import { isInside } from './label-places.ts'
import type { SheetPoint } from './marks.ts'
import { outerRuns } from './outer-runs.ts'
import { overlaps, type SoftBox } from './pin-places.ts'

function drawingOf(faces: Parameters<typeof facetsOf>[0]): PlanDrawing {
  return drawPlan({
    facets: facetsOf(faces),
    findings: [],
    photos: [],
    frame: { upAzimuthDeg: 0, anchor: null },
    frontAzimuthDeg: null,
  })
}

const lengthsOf = (drawing: PlanDrawing) =>
  outerRuns(drawing)
    .map(({ lengthFt }) => Number(lengthFt.toFixed(6)))
    .toSorted((a, b) => b - a)

describe('the outer runs of a roof', () => {
  it('are the sides of its outline: an L of hips has six', () => {
    expect(lengthsOf(drawingOf(ellHip(5)))).toEqual([44, 40, 24, 24, 20, 16])
  })

  it('take the two rakes of a gable end together, because they lie in one line on the plan', () => {
    expect(lengthsOf(drawingOf(gable(60, 40, 6)))).toEqual([60, 60, 40, 40])
  })

  it('point away from the roof', () => {
    const bottom = outerRuns(drawingOf(hip(60, 40, 5))).find(({ from, to }) => from.yFt === 0 && to.yFt === 0)
    expect(bottom?.outward.x).toBeCloseTo(0, 12)
    expect(bottom?.outward.y).toBeCloseTo(-1, 12)
  })
})

describe('lengths on a sheet', () => {
  const drawing = drawingOf(ellHip(5))
  const toSheet = ({ xFt, yFt }: { xFt: number; yFt: number }): SheetPoint => ({
    xPt: 60 + 6 * xFt,
    yPt: 340 - 6 * yFt,
  })
  const area = { widthPt: 400, heightPt: 400 }
  const drawn = (taken: readonly SoftBox[] = [], runs = outerRuns(drawing)) =>
    dimensionMarks(runs, { toSheet, facets: drawing.facets, area, taken })
  const texts = (marks: ReturnType<typeof drawn>['marks']) =>
    marks.map((mark) => (mark.kind === 'text' ? mark.text : ''))

  it('stand in feet and inches beside all edges, the longest first', () => {
    expect(texts(drawn().marks)).toEqual(['44′ 0″', '40′ 0″', '24′ 0″', '24′ 0″', '20′ 0″', '16′ 0″'])
  })

  it('cover neither the roof nor each other, and stay on the sheet', () => {
    const { boxes } = drawn()
    boxes.forEach((box, i) => {
      expect(boxes.some((other, j) => j !== i && overlaps(box, other))).toBe(false)
      for (const x of [-1, 0, 1]) {
        for (const y of [-1, 0, 1]) {
          const corner = { xPt: box.at.xPt + x * box.halfWidthPt, yPt: box.at.yPt + y * box.halfHeightPt }
          expect(drawing.facets.some(({ outline }) => isInside(corner, outline.map(toSheet)))).toBe(false)
          expect(corner.xPt >= 0 && corner.xPt <= 400 && corner.yPt >= 0 && corner.yPt <= 400).toBe(true)
        }
      }
    })
  })

  it('move along their edge where their place is taken, and are left away where all of it is', () => {
    const [first] = drawn().boxes
    if (first === undefined) throw new Error('There is a first length.')
    const moved = drawn([first]).boxes[0]
    expect(moved).toBeDefined()
    expect(moved).not.toEqual(first)
    const everywhere = { at: { xPt: 200, yPt: 200 }, halfWidthPt: 400, halfHeightPt: 400 }
    expect(drawn([everywhere])).toEqual({ marks: [], boxes: [] })
  })

  it('are to the nearest inch', () => {
    expect([14.5, 11.99, 0.25].map(shortLength)).toEqual(['14′ 6″', '12′ 0″', '0′ 3″'])
  })
})
