import { describe, expect, it } from 'vitest'
import { labelPlace, outlineDistance, tagPlace } from './label-places.ts'
import { overlaps } from './pin-places.ts'

const square = [
  { xPt: 0, yPt: 0 },
  { xPt: 100, yPt: 0 },
  { xPt: 100, yPt: 100 },
  { xPt: 0, yPt: 100 },
]
const centre = { xPt: 50, yPt: 50 }
const half = { widthPt: 7, heightPt: 7 }
const pinAt = (xPt: number, yPt: number) => ({ at: { xPt, yPt }, halfWidthPt: 7, halfHeightPt: 6.6 })

describe('the label of a facet', () => {
  it('stands at the centre where no pin does', () => {
    expect(labelPlace(centre, { half, outline: square, pins: [pinAt(20, 20)] })).toEqual(centre)
  })

  it('makes way for pins, whole inside the outline', () => {
    const pins = [pinAt(50, 50), pinAt(66, 50), pinAt(50, 66)]
    const at = labelPlace(centre, { half, outline: square, pins })
    const box = { at, halfWidthPt: 7, halfHeightPt: 7 }
    expect(pins.filter((pin) => overlaps(pin, box))).toEqual([])
    expect(outlineDistance(at, square)).toBeGreaterThan(7)
    expect(Math.min(at.xPt, at.yPt, 100 - at.xPt, 100 - at.yPt)).toBeGreaterThan(7)
  })

  it('stays in an outline that bends in, though the place across the bend is nearer', () => {
    const corner = [
      { xPt: 0, yPt: 0 },
      { xPt: 100, yPt: 0 },
      { xPt: 100, yPt: 30 },
      { xPt: 30, yPt: 30 },
      { xPt: 30, yPt: 100 },
      { xPt: 0, yPt: 100 },
    ]
    const at = labelPlace({ xPt: 15, yPt: 15 }, { half, outline: corner, pins: [pinAt(15, 15)] })
    expect(at.xPt < 30 || at.yPt < 30).toBe(true)
    expect(outlineDistance(at, corner)).toBeGreaterThan(7)
  })

  it('stays at the centre where pins leave no room', () => {
    const pins = Array.from({ length: 100 }, (_, i) => pinAt((i % 10) * 11, Math.floor(i / 10) * 11))
    expect(labelPlace(centre, { half, outline: square, pins })).toEqual(centre)
  })
})

describe('the tag of an edge', () => {
  const [from, to] = [
    { xPt: 0, yPt: 0 },
    { xPt: 100, yPt: 0 },
  ]

  it('stands in the middle, or on the edge beside a pin that does', () => {
    expect(tagPlace(from, to, []).at).toEqual({ xPt: 50, yPt: 0 })
    const tag = tagPlace(from, to, [pinAt(50, 0)])
    expect(tag.at.yPt).toBe(0)
    expect(overlaps(tag, pinAt(50, 0))).toBe(false)
  })
})
