import { describe, expect, it } from 'vitest'
import { corners, outlineOf, ringOf } from '../../../tests/builders/outlines.ts'
import { buildRoof } from './build-roof.ts'
import { roofFaultSentence } from './roof-faults.ts'
import type { RoofOutline } from './roof-outline.ts'

const sentences = (outline: RoofOutline) => {
  const result = buildRoof(outline)
  return result.ok ? [] : result.faults.map(roofFaultSentence)
}
const square = corners('0,0 40,0 40,40 0,40')

describe('an outline without a roof says where and what to do', () => {
  it('too few corners', () => {
    expect(sentences(outlineOf('0,0 40,0', 6))).toEqual([
      'The outline needs at least three corners. Add corners before closing it.',
    ])
    expect(sentences({ outer: ringOf(square, 6), courtyards: [ringOf([], 6)] })).toEqual([
      'Courtyard 1 needs at least three corners. Add corners before closing it.',
    ])
  })

  it('edges without a kind', () => {
    const outer = { corners: square, edges: ringOf(square, 6).edges.slice(1) }
    expect(sentences({ outer, courtyards: [] })).toEqual([
      'The outline has 4 corners but 3 edges. Say of every edge whether it is an eave or a gable.',
    ])
  })

  it('a corner without a place', () => {
    expect(sentences(outlineOf('0,0 40,NaN 40,40', 6))).toEqual([
      'Corner 2 of the outline has no place. Enter its position in feet.',
    ])
  })

  it('two corners at one place', () => {
    expect(sentences(outlineOf('0,0 40,0 40,0.005 40,40 0,40', 6))).toEqual([
      'Edge 2 is shorter than an eighth of an inch: it starts at corner 2, 40.0 ft across, 0.0 ft up, and the next corner is at the same place. Remove one of the two.',
    ])
  })

  it('edges that cross, touch or fold back', () => {
    expect(sentences(outlineOf('0,0 40,40 40,0 0,40', 6))).toEqual([
      'Edge 1 meets edge 3 at 20.0 ft across, 20.0 ft up. Move one of their corners.',
    ])
    expect(sentences(outlineOf('0,0 40,0 40,20 20,0 0,20', 6)).join()).toContain('meets edge')
    expect(sentences(outlineOf('0,0 40,0 40,20 40,60 40,20 0,20', 6)).join()).toContain('meets edge')
  })

  it('a courtyard that crosses the outline, lies outside it or in another courtyard', () => {
    const withCourtyards = (...texts: string[]) => ({
      outer: ringOf(square, 6),
      courtyards: texts.map((text) => ringOf(corners(text), 6)),
    })
    expect(sentences(withCourtyards('30,10 50,10 50,20 30,20'))[0]).toBe(
      'Edge 2 meets edge 1 of courtyard 1 at 40.0 ft across, 10.0 ft up. Move one of their corners.',
    )
    expect(sentences(withCourtyards('50,10 60,10 60,20'))).toEqual([
      'Courtyard 1 does not lie in the roof, at 50.0 ft across, 10.0 ft up. Move it inside the outline and clear of other courtyards.',
    ])
    expect(sentences(withCourtyards('10,10 30,10 30,30 10,30', '15,15 20,15 20,20'))[0]).toContain('Courtyard 2')
  })

  it('a pitch that is none', () => {
    expect(sentences(outlineOf('0,0 40,0 40,40 0,40', [6, -1, 40, 6]))).toEqual([
      'Edge 2 has a pitch of -1:12. Enter a pitch above 0 and up to 36, or make the edge a gable.',
      'Edge 3 has a pitch of 40:12. Enter a pitch above 0 and up to 36, or make the edge a gable.',
    ])
    const flat = {
      outer: { corners: square, edges: square.map(() => ({ kind: 'eave', pitchRise: 0 }) as const) },
      courtyards: [],
    }
    expect(sentences(flat)).toHaveLength(4)
  })

  it('gables alone, and an outline in the wrong unit', () => {
    expect(sentences(outlineOf('0,0 40,0 40,40 0,40', 0))).toEqual([
      'Every edge is a gable, so no slope rises from any. Make at least one edge an eave.',
    ])
    expect(sentences(outlineOf('0,0 0.4,0 0.4,0.4 0,0.4', 6))).toEqual([
      'The outline covers less than half a square foot. Draw it in feet, or remove it.',
    ])
  })
})
