import { describe, expect, it } from 'vitest'
import { edgeIdSchema, outlineIdSchema } from '../../../app/job/ids.ts'
import type { HouseOutline } from '../../../app/roof/house-outline.ts'
import {
  commonPitch,
  eavesRing,
  edgeAt,
  largestOutline,
  movedBy,
  withCornerAdded,
  withCornerMoved,
  withCornerRemoved,
  withCourtyard,
  withEdgeLength,
  withEdgePitch,
  withEdgeToggled,
  withoutCourtyard,
} from './outline-draft.ts'

const at = (xFt: number, yFt: number) => ({ xFt, yFt })

function ids(prefix: string) {
  let next = 0
  return () => edgeIdSchema.parse(`${prefix}${(next += 1)}`)
}

function house(corners = [at(0, 0), at(40, 0), at(40, 20), at(0, 20)]): HouseOutline {
  return {
    id: outlineIdSchema.parse('main'),
    name: 'Main roof',
    outer: eavesRing(corners, 5, ids('e')),
    courtyards: [],
    eaveHeightFt: 9,
  }
}

const edgeIds = (outline: HouseOutline, ring = 0) =>
  (ring === 0 ? outline.outer : outline.courtyards[ring - 1])?.edges.map(({ id }) => id)

describe('edges', () => {
  it('keep their identity when one becomes a gable and an eave again, at the pitch the others have', () => {
    const gable = withEdgeToggled(house(), { ring: 0, index: 1 }, 3)
    expect(edgeAt(gable, { ring: 0, index: 1 })).toEqual({ id: 'e2', kind: 'gable' })
    expect(edgeIds(gable)).toEqual(['e1', 'e2', 'e3', 'e4'])
    const eave = withEdgeToggled(gable, { ring: 0, index: 1 }, 3)
    expect(edgeAt(eave, { ring: 0, index: 1 })).toEqual({ id: 'e2', kind: 'eave', pitchRise: 5 })
  })

  it('take the offered pitch where no eave is left to take one from', () => {
    const gables = [0, 1, 2, 3].reduce((o, index) => withEdgePitch(o, { ring: 0, index }, null), house())
    expect(commonPitch(gables)).toBeNull()
    expect(edgeAt(withEdgeToggled(gables, { ring: 0, index: 0 }, 3), { ring: 0, index: 0 })).toMatchObject({
      pitchRise: 3,
    })
  })
})

describe('corners', () => {
  it('added on an edge split it in two: the first part keeps the identity, the second is new and of the same kind', () => {
    const gable = withEdgePitch(house(), { ring: 0, index: 1 }, null)
    const split = withCornerAdded(gable, { ring: 0, index: 1 }, { at: at(40, 8), newId: ids('new') })
    expect(split.outer.corners).toEqual([at(0, 0), at(40, 0), at(40, 8), at(40, 20), at(0, 20)])
    expect(edgeIds(split)).toEqual(['e1', 'e2', 'new1', 'e3', 'e4'])
    expect(split.outer.edges[2]).toEqual({ id: 'new1', kind: 'gable' })
  })

  it('added on the last edge stand after the last corner', () => {
    const split = withCornerAdded(house(), { ring: 0, index: 3 }, { at: at(0, 10), newId: ids('new') })
    expect(split.outer.corners.at(-1)).toEqual(at(0, 10))
    expect(edgeIds(split)).toEqual(['e1', 'e2', 'e3', 'e4', 'new1'])
  })

  it('removed leave the longer of their two edges, also over the seam of the ring', () => {
    expect(edgeIds(withCornerRemoved(house(), { ring: 0, index: 1 }))).toEqual(['e1', 'e3', 'e4'])
    expect(edgeIds(withCornerRemoved(house(), { ring: 0, index: 2 }))).toEqual(['e1', 'e3', 'e4'])
    const seam = withCornerRemoved(house(), { ring: 0, index: 0 })
    expect(seam.outer.corners).toEqual([at(40, 0), at(40, 20), at(0, 20)])
    expect(edgeIds(seam)).toEqual(['e2', 'e3', 'e1'])
  })

  it('of a triangle stay', () => {
    const triangle = house([at(0, 0), at(10, 0), at(5, 8)])
    expect(withCornerRemoved(triangle, { ring: 0, index: 0 })).toEqual(triangle)
  })

  it('moved leave every edge as it is', () => {
    const moved = withCornerMoved(house(), { ring: 0, index: 2 }, at(44, 25))
    expect(moved.outer.corners[2]).toEqual(at(44, 25))
    expect(edgeIds(moved)).toEqual(edgeIds(house()))
  })
})

describe('a typed edge length', () => {
  it('moves the next edge parallel to itself', () => {
    const longer = withEdgeLength(house(), { ring: 0, index: 0 }, 46)
    expect(longer.outer.corners).toEqual([at(0, 0), at(46, 0), at(46, 20), at(0, 20)])
  })

  it('works over the seam of the ring', () => {
    const longer = withEdgeLength(house(), { ring: 0, index: 3 }, 25)
    expect(longer.outer.corners).toEqual([at(0, -5), at(40, -5), at(40, 20), at(0, 20)])
  })

  it('keeps the direction of a slanting edge after the moved one', () => {
    // The right side leans at 45 degrees; the bottom grows by 10, so the top follows the slanting line's own shift.
    const leaning = house([at(0, 0), at(40, 0), at(50, 10), at(0, 10)])
    const longer = withEdgeLength(leaning, { ring: 0, index: 0 }, 45)
    expect(longer.outer.corners).toEqual([at(0, 0), at(45, 0), at(55, 10), at(0, 10)])
  })
})

describe('of several outlines', () => {
  it('the largest is the main roof, whichever way it was drawn and however they are listed', () => {
    const garage = { ...house([at(0, 0), at(10, 0), at(10, 10), at(0, 10)]), name: 'Garage' }
    const main = house([at(0, 20), at(40, 20), at(40, 0), at(0, 0)])
    expect(largestOutline([garage, main])).toBe(main)
    expect(largestOutline([])).toBeUndefined()
  })
})

describe('an outline', () => {
  it('moves with its courtyards and lets go of one', () => {
    const ring = eavesRing([at(10, 5), at(20, 5), at(20, 12)], 5, ids('c'))
    const moved = movedBy(withCourtyard(house(), ring), at(100, -1))
    expect(moved.outer.corners[0]).toEqual(at(100, -1))
    expect(moved.courtyards[0]?.corners[0]).toEqual(at(110, 4))
    expect(edgeIds(moved, 1)).toEqual(['c1', 'c2', 'c3'])
    expect(withoutCourtyard(moved, 1).courtyards).toEqual([])
  })
})
