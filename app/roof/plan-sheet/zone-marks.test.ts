import { describe, expect, it } from 'vitest'
import { ZONE_LOOKS } from './inks.ts'
import type { SheetPoint } from './marks.ts'
import { hatchLines, zoneMarks } from './zone-marks.ts'

const box = (x: number, y: number, size: number): readonly SheetPoint[] => [
  { xPt: x, yPt: y },
  { xPt: x + size, yPt: y },
  { xPt: x + size, yPt: y + size },
  { xPt: x, yPt: y + size },
]
const length = ([from, to]: readonly [SheetPoint, SheetPoint]) => Math.hypot(to.xPt - from.xPt, to.yPt - from.yPt)
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0)

describe('hatching', () => {
  it.each([0, 45, -45, 30])('at %s degrees covers a figure evenly: lines times their distance are its area', (deg) => {
    const lines = hatchLines([box(3, 7, 200)], deg, 4)
    expect((sum(lines.map(length)) * 4) / 200 ** 2).toBeCloseTo(1, 1)
  })

  it('leaves holes out', () => {
    const [whole, holed] = [hatchLines([box(0, 0, 200)], 45, 4), hatchLines([box(0, 0, 200), box(50, 50, 100)], 45, 4)]
    expect(sum(holed.map(length)) / sum(whole.map(length))).toBeCloseTo(0.75, 2)
  })

  it('runs on from one figure to the next on the same lines', () => {
    const offsets = (lines: ReturnType<typeof hatchLines>) =>
      new Set(lines.map(([from]) => (((from.yPt - from.xPt) / Math.SQRT2 / 4 + 1e-9) % 1).toFixed(3)))
    expect(offsets(hatchLines([box(0, 0, 40)], 45, 4))).toEqual(offsets(hatchLines([box(40, 13, 40)], 45, 4)))
  })
})

describe('zones in a print without colour', () => {
  it('differ by the directions and dashes of their hatching, not by colour alone', () => {
    const looks = Object.values(ZONE_LOOKS).map(({ hatches }) =>
      JSON.stringify(hatches.map(({ angleDeg, pen }) => [angleDeg, pen.dashPt])),
    )
    expect(new Set(looks).size).toBe(4)
  })

  it('are drawn as a ground and lines; the field stays bare', () => {
    const region = [{ outer: box(0, 0, 40).map(({ xPt, yPt }) => ({ xFt: xPt, yFt: yPt })), holes: [] }]
    const toSheet = ({ xFt, yFt }: { xFt: number; yFt: number }) => ({ xPt: xFt, yPt: yFt })
    expect(zoneMarks([{ zone: 'field', region }], toSheet)).toEqual([])
    const marks = zoneMarks([{ zone: 'edge', region }], toSheet)
    expect(marks.filter((mark) => mark.kind === 'path' && mark.closed)).toHaveLength(1)
    expect(marks.length).toBeGreaterThan(10)
  })
})
