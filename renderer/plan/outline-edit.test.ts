import { describe, expect, it } from 'vitest'
import type { PlanPoint } from '../../app/job/places.ts'
import { facetSchema, type Facet } from '../../app/roof/facet.ts'
import { insertSharedCorner, moveFacetOutline, moveSharedCorner, withoutCorner } from './outline-edit.ts'

const at = (xFt: number, yFt: number): PlanPoint => ({ xFt, yFt })

function facet(letter: string, outline: PlanPoint[]): Facet {
  return facetSchema.parse({ id: `facet-${letter}`, letter, outline, pitchRise: 5, downslopeAzimuthDeg: 180 })
}

const front = facet('A', [at(0, 0), at(40, 0), at(30, 10), at(10, 10)])
const back = facet('B', [at(40, 20), at(0, 20), at(10, 10), at(30, 10)])
const apart = facet('C', [at(100, 0), at(110, 0), at(110, 9)])

describe('moving a corner', () => {
  it('takes the neighbours corners at the same place along', () => {
    const changed = moveSharedCorner([front, back, apart], { facet: front, index: 2, detached: false }, at(32, 11))
    expect(changed.map((c) => c.facet.letter)).toEqual(['A', 'B'])
    expect(changed[0]?.outline).toEqual([at(0, 0), at(40, 0), at(32, 11), at(10, 10)])
    expect(changed[1]?.outline).toEqual([at(40, 20), at(0, 20), at(10, 10), at(32, 11)])
  })

  it('moves one facet only when detached', () => {
    const changed = moveSharedCorner([front, back], { facet: front, index: 2, detached: true }, at(32, 11))
    expect(changed.map((c) => c.facet.letter)).toEqual(['A'])
  })

  it('changes nothing for a corner that is not there', () => {
    expect(moveSharedCorner([front, back], { facet: front, index: 9, detached: false }, at(1, 1))).toEqual([])
  })
})

describe('inserting a corner', () => {
  it('puts it after the corner that the side starts at, the last side included', () => {
    const [first] = insertSharedCorner([apart], { facet: apart, index: 0, detached: false }, at(105, 0))
    expect(first?.outline).toEqual([at(100, 0), at(105, 0), at(110, 0), at(110, 9)])
    const [last] = insertSharedCorner([apart], { facet: apart, index: 2, detached: false }, at(105, 5))
    expect(last?.outline).toEqual([at(100, 0), at(110, 0), at(110, 9), at(105, 5)])
  })

  it('gives the neighbour that shares the side the same corner', () => {
    const changed = insertSharedCorner([front, back, apart], { facet: front, index: 2, detached: false }, at(20, 10))
    expect(changed.map((c) => c.outline)).toEqual([
      [at(0, 0), at(40, 0), at(30, 10), at(20, 10), at(10, 10)],
      [at(40, 20), at(0, 20), at(10, 10), at(20, 10), at(30, 10)],
    ])
  })

  it('leaves the neighbour alone when detached', () => {
    expect(insertSharedCorner([front, back], { facet: front, index: 2, detached: true }, at(20, 10))).toHaveLength(1)
  })
})

describe('removing a corner', () => {
  it('leaves the others in order', () => {
    expect(withoutCorner([at(0, 0), at(4, 0), at(4, 4), at(0, 4)], 1)).toEqual([at(0, 0), at(4, 4), at(0, 4)])
  })
})

describe('moving a facet', () => {
  const triangle = [at(0, 0), at(4, 0), at(4, 4)]

  it('keeps its shape', () => {
    expect(moveFacetOutline(triangle, at(0.1, 0.2), { corners: [], reachFt: 0.5 })).toEqual([
      at(0.1, 0.2),
      at(4.1, 0.2),
      at(4.1, 4.2),
    ])
  })

  it('joins a corner that comes near another facet, exactly', () => {
    const corner = at(12.3456, 7.6543)
    const moved = moveFacetOutline(triangle, at(8.2, 7.5), { corners: [corner], reachFt: 0.5 })
    expect(moved[1]).toEqual(corner)
    expect(moved[0]?.xFt).toBeCloseTo(8.3456, 3)
  })
})
