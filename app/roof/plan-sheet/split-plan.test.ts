import { describe, expect, it } from 'vitest'
import { facetsOf, gable } from '../../../tests/builders/whole-roofs.ts'
import { aFinding } from '../../../tests/builders/records.ts'
import { drawPlan } from '../draw-plan.ts'
import type { PlanDrawing } from '../plan-drawing.ts'
import { lengthFt, signedAreaSqFt } from '../polygon.ts'
import { planSheet } from './plan-sheet.ts'
import { planOnSheets } from './split-plan.ts'

const room = { widthPt: 436, heightPt: 388, scales: 'us' } as const
const p = (xFt: number, yFt: number) => ({ xFt, yFt })

function drawingOf(lengthFt: number, widthFt: number): PlanDrawing {
  return drawPlan({
    facets: facetsOf(gable(lengthFt, widthFt, 6)),
    findings: [
      aFinding({ number: 1, pin: { kind: 'point', at: p(10, 5) } }),
      aFinding({ number: 2, pin: { kind: 'line', points: [p(20, widthFt / 2), p(lengthFt - 20, widthFt / 2)] } }),
    ],
    photos: [],
    frame: { upAzimuthDeg: 0, anchor: null },
    frontAzimuthDeg: 180,
  })
}

function several(
  drawing: PlanDrawing,
  at: typeof room | { widthPt: number; heightPt: number; scales: 'metric' } = room,
) {
  const divided = planOnSheets(drawing, at)
  if (divided.kind !== 'several') throw new Error('The plan fits one sheet.')
  return divided
}

describe('a plan that fits one sheet at 1 in = 20 ft', () => {
  it('stays on one: 120 ft are 6 in = 432 pt', () => {
    expect(planOnSheets(drawingOf(120, 60), room).kind).toBe('one')
  })
})

describe('a plan that is too large for one sheet', () => {
  const drawing = drawingOf(300, 60)
  const { sheets, key } = several(drawing)

  it('goes over as few sheets as it takes, at the largest named scale that takes no more', () => {
    // 300 ft at 1 in = 20 ft are 1,080 pt: three sheets of 436 pt. At 1/16 in to the foot they are 1,350 pt: four.
    expect(sheets).toHaveLength(3)
    expect(new Set(sheets.map(({ window }) => window?.scale.name))).toEqual(new Set(['1 in = 20 ft']))
  })

  it('loses nothing: parts of facets and edges add up to the whole', () => {
    const area = (drawn: PlanDrawing) =>
      drawn.facets.reduce((sum, { outline }) => sum + Math.abs(signedAreaSqFt(outline)), 0)
    const length = (drawn: PlanDrawing) => drawn.edges.reduce((sum, { from, to }) => sum + lengthFt(from, to), 0)
    expect(sheets.reduce((sum, sheet) => sum + area(sheet), 0)).toBeCloseTo(300 * 60, 6)
    expect(sheets.reduce((sum, sheet) => sum + length(sheet), 0)).toBeCloseTo(length(drawing), 4)
  })

  it('has each pin on one sheet, and what a line covers on all that it runs over', () => {
    expect(sheets.flatMap(({ pins }) => pins.map(({ label }) => label)).sort()).toEqual(['1', '2'])
    expect(sheets.map(({ window }) => window?.extents.length)).toEqual([1, 0, 1])
  })

  it('goes on at match lines to the sheet beside it', () => {
    expect(sheets.map(({ window }) => window?.matches)).toEqual([
      [{ side: 'right', sheet: 2 }],
      [
        { side: 'left', sheet: 1 },
        { side: 'right', sheet: 3 },
      ],
      [{ side: 'left', sheet: 2 }],
    ])
    const words = sheets.map((sheet) =>
      planSheet(sheet, { widthPt: 504, heightPt: 534, scales: 'us' }).marks.flatMap((mark) =>
        mark.kind === 'text' ? [mark.text] : [],
      ),
    )
    expect(words[1]).toEqual(expect.arrayContaining(['Sheet 2 of 3', 'sheet', '1', '3', 'Scale 1 in = 20 ft']))
  })

  it('keeps the whole length of an edge on the one sheet that its middle is on', () => {
    const lengths = sheets.map(({ dimensions }) => (dimensions ?? []).map((one) => Math.round(one.lengthFt)))
    expect(lengths).toEqual([[60], [300, 300], [60]])
    const texts = planSheet(sheets[1] ?? key, { widthPt: 504, heightPt: 534, scales: 'us' }).marks.flatMap((mark) =>
      mark.kind === 'text' ? [mark.text] : [],
    )
    expect(texts.filter((text) => text === '300′ 0″ in all')).toHaveLength(2)
  })

  it('has a key plan with the part of each sheet and no pins', () => {
    expect(key.sheets?.map(({ sheet }) => sheet)).toEqual([1, 2, 3])
    expect(key.pins).toEqual([])
  })

  it('draws all sheets to their scale: a sheet’s third of the eave, 100 ft, is 5 in long', () => {
    for (const sheet of sheets) {
      const { marks } = planSheet(sheet, { widthPt: 504, heightPt: 534, scales: 'us' })
      const lengths = marks.flatMap((mark) => {
        const [from, to] = mark.kind === 'path' && !mark.closed ? mark.points : []
        return from === undefined || to === undefined ? [] : [Math.hypot(to.xPt - from.xPt, to.yPt - from.yPt)]
      })
      expect(lengths.filter((length) => Math.abs(length - 360) < 0.01).length).toBeGreaterThanOrEqual(2)
    }
  })

  it('goes to a ratio on A4', () => {
    const metric = several(drawing, { widthPt: 419, heightPt: 428, scales: 'metric' })
    // 300 ft at 1 : 250 are 1,036.8 pt: three sheets of 419 pt. At 1 : 200 they are 1,296: four.
    expect(metric.sheets.map(({ window }) => window?.scale.name)).toEqual(['1 : 250', '1 : 250', '1 : 250'])
  })
})

describe('a roof larger than a dozen sheets hold', () => {
  it('gets a smaller scale rather than more sheets', () => {
    const { sheets } = several(drawingOf(2400, 900))
    expect(sheets.length).toBeLessThanOrEqual(12)
    expect(sheets[0]?.window?.scale.name).not.toBe('1 in = 20 ft')
  })
})
