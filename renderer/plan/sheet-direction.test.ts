import { describe, expect, it } from 'vitest'
import { cornerAngle, parseTypedDirection, pointTowards, directionFrom } from './sheet-direction.ts'

const origin = { xFt: 0, yFt: 0 }

describe('a direction on the sheet', () => {
  it('runs clockwise from up', () => {
    expect(directionFrom(origin, { xFt: 0, yFt: 5 })).toBe(0)
    expect(directionFrom(origin, { xFt: 5, yFt: 0 })).toBe(90)
    expect(directionFrom(origin, { xFt: 0, yFt: -5 })).toBe(180)
    expect(directionFrom(origin, { xFt: -5, yFt: 0 })).toBe(270)
    expect(directionFrom(origin, { xFt: -3, yFt: 3 })).toBeCloseTo(315, 9)
  })

  it('leads to points without rounding noise on the quarter turns', () => {
    expect(pointTowards({ xFt: 2, yFt: 3 }, 180, 7)).toEqual({ xFt: 2, yFt: -4 })
    expect(pointTowards({ xFt: 2, yFt: 3 }, 360, 7)).toEqual({ xFt: 2, yFt: 10 })
  })

  it('is the way back from where it leads', () => {
    for (const deg of [12, 77.5, 200, 359]) {
      expect(directionFrom(origin, pointTowards(origin, deg, 31))).toBeCloseTo(deg, 9)
    }
  })
})

describe('the angle at a corner', () => {
  it('is 90 for a square corner whichever way it turns, and 180 for a straight run', () => {
    expect(cornerAngle({ xFt: 0, yFt: 4 }, origin, { xFt: 4, yFt: 0 })).toBeCloseTo(90, 9)
    expect(cornerAngle({ xFt: -4, yFt: 0 }, origin, { xFt: 0, yFt: 4 })).toBeCloseTo(90, 9)
    expect(cornerAngle({ xFt: -4, yFt: 0 }, origin, { xFt: 4, yFt: 0 })).toBeCloseTo(180, 9)
  })
})

describe('a typed direction', () => {
  it('takes degrees, words and turns', () => {
    expect(parseTypedDirection('90', null)).toBe(90)
    expect(parseTypedDirection('45.5°', null)).toBe(45.5)
    expect(parseTypedDirection('360', null)).toBe(0)
    expect(parseTypedDirection('Left', null)).toBe(270)
    expect(parseTypedDirection('+90', 315)).toBe(45)
    expect(parseTypedDirection('-90 deg', 45)).toBe(315)
  })

  it('refuses a turn with nothing to turn from, and anything else', () => {
    expect(parseTypedDirection('+90', null)).toBeNull()
    expect(parseTypedDirection('400', null)).toBeNull()
    expect(parseTypedDirection('north-ish', 0)).toBeNull()
    expect(parseTypedDirection('', 0)).toBeNull()
  })
})
