import { describe, expect, it } from 'vitest'
import { fittedView, pannedView, roundLengthFt, toPlan, toScreen, zoomedView } from './plan-view.ts'

const size = { width: 800, height: 600 }
const view = fittedView({ minXFt: -20, minYFt: -10, maxXFt: 60, maxYFt: 30 }, size)

describe('the view of the plan', () => {
  it('puts the middle of what is drawn in the middle of the screen', () => {
    const middle = toScreen(view, { xFt: 20, yFt: 10 })
    expect(middle.x).toBeCloseTo(400, 9)
    expect(middle.y).toBeCloseTo(300, 9)
  })

  it('fits everything', () => {
    const corner = toScreen(view, { xFt: -20, yFt: 30 })
    expect(corner.x).toBeGreaterThan(0)
    expect(corner.y).toBeGreaterThan(0)
  })

  it('has up the sheet as up the screen', () => {
    expect(toScreen(view, { xFt: 0, yFt: 5 }).y).toBeLessThan(toScreen(view, { xFt: 0, yFt: 0 }).y)
  })

  it('leads back from the screen to the plan', () => {
    const point = toPlan(view, toScreen(view, { xFt: 12.5, yFt: -3 }))
    expect(point.xFt).toBeCloseTo(12.5, 9)
    expect(point.yFt).toBeCloseTo(-3, 9)
  })

  it('zooms about the pointer and stops at its limits', () => {
    const pointer = { x: 130, y: 470 }
    const before = toPlan(view, pointer)
    const after = toPlan(zoomedView(view, 1.7, pointer), pointer)
    expect(after.xFt).toBeCloseTo(before.xFt, 9)
    expect(after.yFt).toBeCloseTo(before.yFt, 9)
    expect(zoomedView(view, 1e9, pointer).scale).toBe(400)
    expect(zoomedView(view, 1e-9, pointer).scale).toBe(0.2)
  })

  it('pans by what the hand moved', () => {
    const moved = toScreen(pannedView(view, { x: 7, y: -4 }), { xFt: 0, yFt: 0 })
    const before = toScreen(view, { xFt: 0, yFt: 0 })
    expect(moved.x - before.x).toBeCloseTo(7, 9)
    expect(moved.y - before.y).toBeCloseTo(-4, 9)
  })

  it('finds a round length for the scale bar', () => {
    expect(roundLengthFt({ ...view, scale: 10 }, 120)).toBe(10)
    expect(roundLengthFt({ ...view, scale: 4 }, 120)).toBe(20)
    expect(roundLengthFt({ ...view, scale: 100 }, 120)).toBe(1)
    expect(roundLengthFt({ ...view, scale: 220 }, 120)).toBeCloseTo(0.5, 9)
  })
})
