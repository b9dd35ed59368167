import { describe, expect, it } from 'vitest'
import { facetIdSchema } from '../../../app/job/ids.ts'
import { planFrameSchema } from '../../../app/job/places.ts'
import { facetSchema } from '../../../app/roof/facet.ts'
import { houseOutlineSchema } from '../../../app/roof/house-outline.ts'
import { roofDrawer } from './drawn-roof.ts'

const frame = planFrameSchema.parse({})
const corner = (xFt: number, yFt: number) => ({ xFt, yFt })
const porch = facetSchema.parse({
  id: facetIdSchema.parse('porch'),
  letter: 'P',
  outline: [corner(60, 0), corner(70, 0), corner(70, 10), corner(60, 10)],
  pitchRise: 3,
  downslopeAzimuthDeg: 180,
})
const around = { facets: [porch], outlines: [], frame }

/** A hipped house as wide as said; 30 ft deep. */
const house = (widthFt: number, depthFt = 30) =>
  houseOutlineSchema.parse({
    id: 'main',
    name: 'Main roof',
    outer: {
      corners: [corner(0, 0), corner(widthFt, 0), corner(widthFt, depthFt), corner(0, depthFt)],
      edges: [1, 2, 3, 4].map((edge) => ({ id: `e${edge}`, kind: 'eave', pitchRise: 5 })),
    },
    courtyards: [],
  })

describe('a roof that is drawn again and again', () => {
  it('has the four slopes of a hip, with the facets of the rest of the house', () => {
    const roof = roofDrawer()(house(40), around)
    expect(roof.ok && roof.shapes.facets.map(({ letter }) => letter)).toEqual(['P', '', '', '', ''])
    // Ridge of a hip roof at one pitch: the length less the depth.
    const ridges = roof.ok ? roof.shapes.edges.filter(({ kind }) => kind === 'ridge') : []
    expect(ridges.map(({ from, to }) => Math.hypot(to.xFt - from.xFt, to.yFt - from.yFt))).toEqual([
      expect.closeTo(10, 9),
    ])
  })

  it('looks only at the facets that changed', () => {
    const draw = roofDrawer()
    const before = draw(house(40), around)
    const after = draw(house(44), around)
    const shapeOf = (roof: typeof before, at: number) => (roof.ok ? roof.shapes.facets[at] : undefined)
    expect(shapeOf(after, 0)).toBe(shapeOf(before, 0))
    expect(shapeOf(after, 1)).not.toEqual(shapeOf(before, 1))
  })

  it('answers with the sentence where there is no roof', () => {
    expect(roofDrawer()(house(40, 0), around)).toMatchObject({ ok: false, sentence: expect.stringContaining('Edge') })
  })
})
