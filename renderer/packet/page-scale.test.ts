import { describe, expect, it } from 'vitest'
import { nextZoom, pageScale, zoomWords } from './page-scale.ts'

/** US Letter: 8.5 by 11 inches of 72 points (ISO 32000-1, section 8.3.2.3: a default unit is 1/72 inch). */
const letter = { widthPt: 612, heightPt: 792 }
const room = { widthPx: 918, heightPx: 594 }

describe('pageScale', () => {
  it('fits the width, or the whole page', () => {
    expect(pageScale('width', room, letter)).toBe(1.5)
    expect(pageScale('page', room, letter)).toBe(0.75)
  })

  it('shows 100 % at 96 pixels to the inch', () => {
    expect(pageScale(1, room, letter) * letter.widthPt).toBeCloseTo(8.5 * 96)
    expect(zoomWords(pageScale(1, room, letter))).toBe('100 %')
  })
})

describe('nextZoom', () => {
  it('goes in and out by the same step, and stops at its ends', () => {
    const scale = pageScale(1, room, letter)
    expect(nextZoom(scale, 'in')).toBe(1.25)
    expect(nextZoom(pageScale(1.25, room, letter), 'out')).toBe(1)
    expect(nextZoom(pageScale(4, room, letter), 'in')).toBe(4)
    expect(nextZoom(pageScale(0.25, room, letter), 'out')).toBe(0.25)
  })
})
