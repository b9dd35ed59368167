import { describe, expect, it } from 'vitest'
import { edgeLabels } from './edge-labels.ts'

const at = (xFt: number, yFt: number) => ({ xFt, yFt })
const view = { scale: 10, originX: 0, originY: 400 }
const rectangle = [at(0, 0), at(40, 0), at(40, 20), at(0, 20)]

describe('dimensions along an outline', () => {
  it('stand outside, whichever way it was drawn', () => {
    for (const corners of [rectangle, rectangle.toReversed()]) {
      const labels = edgeLabels([corners], view)
      expect(labels).toHaveLength(4)
      for (const { at: place } of labels) {
        expect(place.x > 0 && place.x < 400 && place.y > 200 && place.y < 400).toBe(false)
      }
    }
  })

  it('number the edges as the sentences about faults do, with their lengths', () => {
    const texts = edgeLabels([rectangle], view).map(({ text }) => text)
    expect(texts.toSorted()).toEqual(['1: 40′ 0″', '2: 20′ 0″', '3: 40′ 0″', '4: 20′ 0″'])
  })

  it('never lie over each other, and leave out what finds no room', () => {
    const comb = [at(0, 0), ...Array.from({ length: 40 }, (_, i) => at(i, 10 + (i % 2))), at(39, 0)]
    const labels = edgeLabels([comb], { ...view, scale: 6 })
    expect(labels.length).toBeGreaterThan(3)
    expect(labels.length).toBeLessThan(comb.length)
    labels.forEach((a, i) => {
      for (const b of labels.slice(i + 1)) {
        const apartX = Math.abs(a.at.x - b.at.x) >= ((a.text.length + b.text.length) * 7) / 2
        expect(apartX || Math.abs(a.at.y - b.at.y) >= 16, `${a.text} and ${b.text}`).toBe(true)
      }
    })
  })

  it('stand in the courtyard, not on the roof, for a courtyard', () => {
    const courtyard = [at(10, 5), at(30, 5), at(30, 15), at(10, 15)]
    const inside = edgeLabels([rectangle, courtyard], view).filter(({ ring }) => ring === 1)
    expect(inside).toHaveLength(4)
    expect(inside.every(({ at: { x, y } }) => x > 100 && x < 300 && y > 250 && y < 350)).toBe(true)
  })
})
