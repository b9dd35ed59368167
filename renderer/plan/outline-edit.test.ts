import { describe, expect, it } from 'vitest'
import type { PlanPoint } from '../../app/job/places.ts'
import { facetSchema, type Facet } from '../../app/roof/facet.ts'
import { movedOutline, moveSharedCorner, withCornerInserted, withoutCorner } from './outline-edit.ts'

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

describe('corners of an outline', () => {
  it('are inserted after the corner that the side starts at, the last side included', () => {
    expect(withCornerInserted([at(0, 0), at(4, 0), at(4, 4)], 0, at(2, 0))).toEqual([
      at(0, 0),
      at(2, 0),
      at(4, 0),
      at(4, 4),
    ])
    expect(withCornerInserted([at(0, 0), at(4, 0), at(4, 4)], 2, at(2, 2))).toEqual([
      at(0, 0),
      at(4, 0),
      at(4, 4),
      at(2, 2),
    ])
  })

  it('are removed one at a time', () => {
    expect(withoutCorner([at(0, 0), at(4, 0), at(4, 4), at(0, 4)], 1)).toEqual([at(0, 0), at(4, 4), at(0, 4)])
  })

  it('keep their shape when the facet moves', () => {
    expect(movedOutline([at(0, 0), at(4, 0), at(4, 4)], at(0.1, 0.2))).toEqual([
      at(0.1, 0.2),
      at(4.1, 0.2),
      at(4.1, 4.2),
    ])
  })
})
