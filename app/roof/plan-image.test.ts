import { describe, expect, it } from 'vitest'
import { aPlanImage } from '../../tests/builders/records.ts'
import { imageToPlan } from './image-scale.ts'
import { layPlanImage, pixelErrorWords, shortLineSentence, slantSentence, type PlanImage } from './plan-image.ts'

/** A line of a length in feet between two places on the image. */
const line = (from: readonly [number, number], to: readonly [number, number], lengthFt: number) => ({
  from: { x: from[0], y: from[1] },
  to: { x: to[0], y: to[1] },
  lengthFt,
})

function laid(image: PlanImage, upAzimuthDeg = 0) {
  const placed = layPlanImage(image, upAzimuthDeg)
  if (placed.kind === 'refused') throw new Error(placed.sentence)
  return placed
}

describe('an image under the plan', () => {
  it('has a guessed size until a length on it is known, and then the true one, about the same held place', () => {
    const guessed = laid(aPlanImage())
    expect(guessed.feetPerPixel * 800).toBeCloseTo(120, 9)
    const image = aPlanImage({ knownLine: line([100, 300], [500, 300], 40) })
    const { affine } = laid(image)
    expect(imageToPlan({ x: 400, y: 300 }, affine)).toEqual({ xFt: 0, yFt: 0 })
    // 400 pixels are 40 ft, so the top left corner is 40 ft left of the middle and 30 ft above it.
    expect(imageToPlan({ x: 0, y: 0 }, affine)).toEqual({ xFt: expect.closeTo(-40, 9), yFt: expect.closeTo(30, 9) })
  })

  it('turns with the way it points: up on an image that points east is right on a sheet with north up', () => {
    const { affine } = laid(aPlanImage({ knownLine: line([0, 0], [100, 0], 10), imageUpAzimuthDeg: 90 }))
    expect(imageToPlan({ x: 400, y: 200 }, affine)).toEqual({ xFt: expect.closeTo(10, 9), yFt: expect.closeTo(0, 9) })
  })

  it('of a few pixels can be laid too', () => {
    expect(layPlanImage(aPlanImage({ widthPx: 3, heightPx: 2 }), 0).kind).toBe('placed')
  })

  it('is refused with two marks on one place', () => {
    expect(layPlanImage(aPlanImage({ knownLine: line([5, 5], [5, 5], 10) }), 0)).toEqual({
      kind: 'refused',
      sentence: 'The two marks are too close together. Mark the ends of a longer line.',
    })
  })
})

describe('how good a scale is', () => {
  it('is said in percent and in inches: one pixel of 400 is a quarter of a percent, 1.5 in of 50 ft', () => {
    expect(pixelErrorWords(line([0, 0], [400, 0], 40))).toBe(
      'A mark one pixel off changes every length by 0.3 %: 1.5 in in 50 ft.',
    )
    expect(shortLineSentence(line([0, 0], [400, 0], 40))).toBeNull()
  })

  it('is warned of when the line is short', () => {
    expect(shortLineSentence(line([0, 0], [30, 40], 25))).toBe(
      'The marked line is only 50 pixels long: a mark one pixel off makes every length 2 % wrong, which is 6 in on this line. Mark a longer line.',
    )
  })
})

describe('a second known length', () => {
  const image = aPlanImage({ knownLine: line([0, 0], [400, 0], 40) })
  it('agrees with a view from straight above, within what marks a pixel off make', () => {
    expect(slantSentence(image, line([0, 0], [0, 300], 30.2))).toBeNull()
  })

  it('tells a view taken at 30 degrees off the plumb line: what runs away from the camera is foreshortened by its cosine', () => {
    // cos 30 degrees is 0.866: 30 ft that run away from the camera fill 260 pixels where 300 were due.
    expect(slantSentence(image, line([0, 0], [0, 300 * Math.cos(Math.PI / 6)], 30))).toContain(
      '15 % shorter on the image',
    )
  })

  it('says nothing before the image is scaled', () => {
    expect(slantSentence(aPlanImage(), line([0, 0], [0, 300], 5))).toBeNull()
  })
})
