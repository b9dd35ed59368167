import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { imageToPlan, placeImage, planToImage, type Affine, type ImageSetting } from './image-scale.ts'
import { lengthFt } from './polygon.ts'

const p = (x: number, y: number) => ({ x, y })

function affineOf(setting: ImageSetting): Affine {
  const placed = placeImage(setting)
  if (placed.kind === 'refused') throw new Error(placed.sentence)
  return placed.affine
}

const northUp: ImageSetting = {
  knownLine: { from: p(100, 200), to: p(300, 200), lengthFt: 40 },
  imageUpAzimuthDeg: 0,
  upAzimuthDeg: 0,
  held: { image: p(100, 200), plan: { xFt: 0, yFt: 0 } },
}

describe('an image under the plan', () => {
  it('with north up on both: 200 px for 40 ft are 0.2 ft a pixel, and down on the image is down the sheet', () => {
    const placed = placeImage(northUp)
    expect(placed).toMatchObject({ kind: 'placed', feetPerPixel: 0.2, percentPerPixel: 0.5 })
    const across = imageToPlan(p(300, 200), affineOf(northUp))
    const above = imageToPlan(p(100, 100), affineOf(northUp))
    expect([across.xFt, above.yFt]).toEqual([40, 20])
    expect(across.yFt).toBeCloseTo(0, 9)
    expect(above.xFt).toBeCloseTo(0, 9)
  })

  it('an image with east up is turned a quarter: its right is south', () => {
    const affine = affineOf({ ...northUp, imageUpAzimuthDeg: 90 })
    const { xFt, yFt } = imageToPlan(p(200, 200), affine)
    expect(xFt).toBeCloseTo(0, 9)
    expect(yFt).toBeCloseTo(-20, 9)
  })

  it('scaled by 2, turned by 30 degrees and moved by 10, -5 (definition of the similarity transform, computed)', () => {
    const affine = affineOf({
      knownLine: { from: p(0, 0), to: p(0, 100), lengthFt: 200 },
      imageUpAzimuthDeg: 330,
      upAzimuthDeg: 0,
      held: { image: p(0, 0), plan: { xFt: 10, yFt: -5 } },
    })
    const expected = [
      [p(0, 0), 10, -5],
      [p(10, 0), 27.320508, 5],
      [p(10, -6), 21.320508, 15.392305],
      [p(0, -6), 4, 5.392305],
    ] as const
    for (const [pixel, xFt, yFt] of expected) {
      expect(imageToPlan(pixel, affine).xFt).toBeCloseTo(xFt, 6)
      expect(imageToPlan(pixel, affine).yFt).toBeCloseTo(yFt, 6)
    }
  })

  it('keeps the known length, holds the held place, and can be read back', () => {
    const pixel = fc.record({ x: fc.integer({ min: 0, max: 4000 }), y: fc.integer({ min: 0, max: 4000 }) })
    const azimuth = fc.integer({ min: 0, max: 359 })
    const setting = fc.record({
      knownLine: fc.record({ from: pixel, to: pixel, lengthFt: fc.integer({ min: 1, max: 300 }) }),
      imageUpAzimuthDeg: azimuth,
      upAzimuthDeg: azimuth,
      held: fc.record({
        image: pixel,
        plan: fc.record({ xFt: fc.integer({ min: -99, max: 99 }), yFt: fc.constant(7) }),
      }),
    })
    fc.assert(
      fc.property(setting, pixel, (given, any) => {
        const { from, to } = given.knownLine
        fc.pre(Math.hypot(to.x - from.x, to.y - from.y) >= 10)
        const affine = affineOf(given)
        expect(lengthFt(imageToPlan(from, affine), imageToPlan(to, affine))).toBeCloseTo(given.knownLine.lengthFt, 6)
        expect(imageToPlan(given.held.image, affine).xFt).toBeCloseTo(given.held.plan.xFt, 6)
        const back = planToImage(imageToPlan(any, affine), affine)
        expect(back.x).toBeCloseTo(any.x, 4)
        expect(back.y).toBeCloseTo(any.y, 4)
      }),
    )
  })

  it('is refused without a length or with marks too close together, with what to do', () => {
    const close = { ...northUp, knownLine: { from: p(5, 5), to: p(9, 9), lengthFt: 40 } }
    expect(placeImage(close)).toEqual({
      kind: 'refused',
      sentence: 'The two marks are too close together. Mark the ends of a longer line.',
    })
    for (const length of [0, -4, NaN]) {
      expect(placeImage({ ...northUp, knownLine: { ...northUp.knownLine, lengthFt: length } })).toEqual({
        kind: 'refused',
        sentence: 'Enter the length of the marked line, in feet, above zero.',
      })
    }
  })
})
