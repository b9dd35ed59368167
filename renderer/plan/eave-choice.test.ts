import { describe, expect, it } from 'vitest'
import { sidesOf } from '../../app/roof/polygon.ts'
import { downslopeOverSide, likelyEave } from './eave-choice.ts'
import { nextFacetLetter } from './facet-letter.ts'

const square = [
  { xFt: 0, yFt: 0 },
  { xFt: 20, yFt: 0 },
  { xFt: 20, yFt: 10 },
  { xFt: 0, yFt: 10 },
]

describe('the direction over a chosen eave', () => {
  it('points out of the outline, whichever way it was drawn', () => {
    for (const outline of [square, square.toReversed()]) {
      const bottom = sidesOf(outline).find((side) => side.from.yFt === 0 && side.to.yFt === 0)
      const right = sidesOf(outline).find((side) => side.from.xFt === 20 && side.to.xFt === 20)
      expect(bottom && downslopeOverSide(outline, bottom, 0)).toBe(180)
      expect(right && downslopeOverSide(outline, right, 0)).toBe(90)
    }
  })

  it('turns with the sheet', () => {
    const [bottom] = sidesOf(square)
    expect(bottom && downslopeOverSide(square, bottom, 30)).toBe(210)
    expect(bottom && downslopeOverSide(square, bottom, 180)).toBe(0)
  })
})

describe('the likely eave', () => {
  it('is the longest side', () => {
    expect(likelyEave(square, [])?.index).toBe(0)
  })

  it('is not one that a neighbour shares', () => {
    const ridgeNeighbour = { from: { xFt: -5, yFt: 0 }, to: { xFt: 40, yFt: 0 } }
    expect(likelyEave(square, [ridgeNeighbour])?.index).toBe(2)
  })
})

describe('the next facet letter', () => {
  it('is the first that is free', () => {
    expect(nextFacetLetter([])).toBe('A')
    expect(nextFacetLetter(['A', 'B', 'D'])).toBe('C')
    expect(nextFacetLetter(['a'])).toBe('B')
  })

  it('goes on with two letters', () => {
    const all = Array.from({ length: 26 }, (_, i) => String.fromCharCode(65 + i))
    expect(nextFacetLetter(all)).toBe('AA')
    expect(nextFacetLetter([...all, 'AA', 'AB'])).toBe('AC')
  })
})
