import { describe, expect, it } from 'vitest'
import { feetAndInchesLabel, parseTypedLength } from './typed-length.ts'

describe('a typed length', () => {
  it.each([
    ['24', 24],
    ['24.5', 24.5],
    ['24 ft', 24],
    ["24'", 24],
    ['24′', 24],
    ['24\' 6"', 24.5],
    ['24′6″', 24.5],
    ['24-6', 24.5],
    ['24 6', 24.5],
    ['24 ft 6 in', 24.5],
    ['24\' 6 1/2"', 24 + 6.5 / 12],
    ['24\' 1/2"', 24 + 0.5 / 12],
    ['6 in', 0.5],
    ['30"', 2.5],
    ['1/2 in', 0.5 / 12],
  ])('%s is %d ft', (text, feet) => {
    expect(parseTypedLength(text)).toBeCloseTo(feet, 9)
  })

  // 1 ft = 0.3048 m exactly (NIST SP 811, appendix B.8).
  it.each([
    ['7.4 m', 7.4 / 0.3048],
    ['7,4 m', 7.4 / 0.3048],
    ['80 cm', 0.8 / 0.3048],
    ['304.8 mm', 1],
  ])('%s is metric', (text, feet) => {
    expect(parseTypedLength(text)).toBeCloseTo(feet, 9)
  })

  it.each(['', 'abc', '0', '-4', '24\' 13"', '1,200', '24 6 7', '7.4 x', '99999', '1/0 in'])(
    '%j is refused',
    (text) => {
      expect(parseTypedLength(text)).toBeNull()
    },
  )
})

describe('a length to read', () => {
  it('is rounded to the inch and carries into feet', () => {
    expect(feetAndInchesLabel(24.5)).toBe('24′ 6″')
    expect(feetAndInchesLabel(11.98)).toBe('12′ 0″')
    expect(feetAndInchesLabel(0.25)).toBe('0′ 3″')
  })

  it('reads back as what it says', () => {
    for (const lengthFt of [0.5, 3.25, 17, 42 + 11 / 12]) {
      expect(parseTypedLength(feetAndInchesLabel(lengthFt))).toBeCloseTo(lengthFt, 9)
    }
  })
})
