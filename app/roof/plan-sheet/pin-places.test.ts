import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type PinToPlace, placePins } from './pin-places.ts'

const sheet = { widthPt: 500, heightPt: 560, soft: [] }
const pin = (xPt: number, yPt: number): PinToPlace => ({ target: { xPt, yPt }, halfWidthPt: 7, halfHeightPt: 6.6 })

function overlapping(pins: readonly PinToPlace[], places: ReturnType<typeof placePins>): number {
  let count = 0
  places.forEach((a, i) =>
    places.slice(i + 1).forEach((b) => {
      if (Math.abs(a.xPt - b.xPt) < 14 && Math.abs(a.yPt - b.yPt) < 13.2) count += 1
    }),
  )
  return pins.length === places.length ? count : Number.NaN
}

describe('places of pin markers', () => {
  it('are their own points where there is room', () => {
    const pins = [pin(100, 100), pin(200, 100), pin(100, 200)]
    expect(placePins(pins, sheet)).toEqual(pins.map((one) => one.target))
  })

  it('move apart in a crowd, every one of them', () => {
    const pins = Array.from({ length: 9 }, (_, i) => pin(250 + (i % 3) * 4, 250 + Math.floor(i / 3) * 4))
    const places = placePins(pins, sheet)
    expect(overlapping(pins, places)).toBe(0)
    expect(places.filter((place, i) => place.xPt === pins[i]?.target.xPt && place.yPt === pins[i]?.target.yPt)).toEqual(
      [],
    )
  })

  it('are apart and on the sheet for two pins on one point in its corner', () => {
    const pins = [pin(0, 0), pin(0, 0)]
    const places = placePins(pins, sheet)
    expect(overlapping(pins, places)).toBe(0)
    expect(places.every((place) => place.xPt >= 7 && place.yPt >= 6.6)).toBe(true)
  })

  it('never overlap for up to sixty pins anywhere, and are the same each time', () => {
    const anyPin = fc
      .record({ x: fc.integer({ min: 40, max: 460 }), y: fc.integer({ min: 40, max: 520 }) })
      .map(({ x, y }) => pin(x, y))
    fc.assert(
      fc.property(fc.array(anyPin, { maxLength: 60 }), (pins) => {
        const places = placePins(pins, sheet)
        expect(overlapping(pins, places)).toBe(0)
        expect(placePins(pins, sheet)).toEqual(places)
      }),
      { numRuns: 40 },
    )
  })
})
