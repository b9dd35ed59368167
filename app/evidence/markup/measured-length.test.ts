import { describe, expect, it } from 'vitest'
import type { MeasureMark, ScaleMark } from '../markup.ts'
import { lengthWords, measuredLength } from './measured-length.ts'

const look = { colour: 'vermilion', weight: 'normal' } as const
const line = (to: { xPx: number; yPx: number }) => ({ from: { xPx: 100, yPx: 100 }, to })
const scale = (lengthPx: number, lengthIn: number): ScaleMark => ({
  kind: 'scale',
  id: 's',
  ...look,
  ...line({ xPx: 100 + lengthPx, yPx: 100 }),
  lengthIn,
  of: '',
})
const measure = (dx: number, dy: number): MeasureMark => ({
  kind: 'measure',
  id: 'm',
  ...look,
  ...line({ xPx: 100 + dx, yPx: 100 + dy }),
  scaleId: 's',
})

describe('a length measured in a picture', () => {
  it('is the known length times the ratio of the lines: the 3-4-5 triangle at 50 px an inch', () => {
    // 300 and 400 px across and down are 500 px, at 600 px for 12 in.
    expect(measuredLength(measure(300, 400), scale(600, 12)).lengthIn).toBeCloseTo(10, 12)
  })

  it('does not depend on the size at which the picture is drawn (similar triangles, Euclid VI.4)', () => {
    const small = measuredLength(measure(123, 77), scale(321, 12)).lengthIn
    const large = measuredLength(measure(123 * 3, 77 * 3), scale(321 * 3, 12)).lengthIn
    expect(large).toBeCloseTo(small, 12)
  })

  it('is printed only as finely as both ends can be placed', () => {
    // Eight pixels between both ends: 0.08 in at 1,200 px for 12 in, so tenths; 1.92 in at 600 px for 12 ft, so twos.
    expect(lengthWords(measuredLength(measure(343, 0), scale(1200, 12)))).toBe('3.4 in')
    expect(lengthWords(measuredLength(measure(343, 0), scale(600, 12)))).toBe('6.75 in')
    expect(lengthWords(measuredLength(measure(171, 0), scale(600, 144)))).toBe('42 in')
    expect(lengthWords(measuredLength(measure(171, 0), scale(9000, 12)))).toBe('0.2 in')
  })
})
