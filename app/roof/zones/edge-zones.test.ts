import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  at,
  DOWN,
  ellHip,
  facetsOf,
  gable,
  gableWing,
  hip,
  LEFT,
  RIGHT,
  UP,
  type Face,
} from '../../../tests/builders/whole-roofs.ts'
import { facetGeometry } from '../facet-geometry.ts'
import { edgeZones, zonePieces, zoneTotals, type EdgeZones } from './edge-zones.ts'
import type { WindEdition, ZonePart } from './edition.ts'

/** Edge zones are 4 ft wide on a building 40 ft across and 15 ft high. */
const HEIGHT_FT = 15
const ROOT2 = Math.SQRT2

function zonesOf(faces: readonly Face[], edition: WindEdition = '7-16'): EdgeZones {
  return edgeZones({ facets: facetsOf(faces), upAzimuthDeg: 0, meanRoofHeightFt: HEIGHT_FT, edition })
}

function planAreas(zones: EdgeZones) {
  const totals = zoneTotals(zones)
  return {
    field: totals.field.planAreaSqFt,
    edge: totals.edge.planAreaSqFt,
    corner: totals.corner.planAreaSqFt,
    ridge: totals.ridge.planAreaSqFt,
  }
}

/** Parts of a roof with their zone numbers; null where the number isn't built in. */
function numbersOf(zones: EdgeZones): Partial<Record<ZonePart, string | null>> {
  return Object.fromEntries(
    zonePieces(zones).map(({ part, number }) => [part, number.kind === 'given' ? number.number : null]),
  )
}

function turned(faces: readonly Face[], deg: number): Face[] {
  const [c, s] = [Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)]
  return faces.map(({ corners, pitch, down }) => ({
    pitch,
    down: (down + deg) % 360,
    corners: corners.map(([x, y]) => [c * x + s * y + 11, c * y - s * x - 7] as const),
  }))
}

/** A hip roof with a gable at its right end: 60 by 40. */
const halfHip: Face[] = [
  { corners: at('0,0 60,0 60,20 20,20'), pitch: 5, down: DOWN },
  { corners: at('20,20 60,20 60,40 0,40'), pitch: 5, down: UP },
  { corners: at('0,40 0,0 20,20'), pitch: 5, down: LEFT },
]

describe('zones of a gable roof 60 by 40, 4 ft wide (areas by hand)', () => {
  it('corners are eight squares of 4 ft; edges what is left of eaves and rakes; the ridge 8 ft wide between the rakes', () => {
    expect(planAreas(zonesOf(gable(60, 40, 6)))).toEqual({
      field: 52 * 12 * 2,
      edge: 2 * (60 - 8) * 4 + 4 * (20 - 8) * 4,
      corner: 8 * 16,
      ridge: (60 - 8) * 8,
    })
  })

  it('sloped areas are plan areas times 1.118, the handbook factor of 6:12', () => {
    const { corner } = zoneTotals(zonesOf(gable(60, 40, 6)))
    expect(corner.areaSqFt).toBeCloseTo(128 * 1.118, 1)
  })
})

describe('zones of a hip roof 60 by 40, 4 ft wide (areas by hand)', () => {
  it('corners are four squares, edges the rest of a ring 4 ft wide, ridge and hips 4 ft to each side', () => {
    const hipEnd = (32 - 8 * ROOT2) ** 2 / 4
    const longSlope = 12 * (60 - 8 * ROOT2) - (16 ** 2 - 4 ** 2)
    const { field, edge, corner, ridge } = planAreas(zonesOf(hip(60, 40, 5)))
    expect(corner).toBeCloseTo(4 * 16, 6)
    expect(edge).toBeCloseTo(60 * 40 - 52 * 32 - 4 * 16, 6)
    expect(field).toBeCloseTo(2 * hipEnd + 2 * longSlope, 3)
    expect(ridge).toBeCloseTo(60 * 40 - corner - edge - field, 6)
  })

  it('a corner square is shared evenly by the two slopes that meet on the hip', () => {
    const corners = zonePieces(zonesOf(hip(60, 40, 5))).filter(({ part }) => part === 'eave-corner')
    expect(corners.map(({ planAreaSqFt }) => Number(planAreaSqFt.toFixed(4)))).toEqual([16, 16, 16, 16])
    expect(corners.map(({ region }) => region.length)).toEqual([2, 2, 2, 2])
  })
})

describe('zones of other outlines', () => {
  it('an inner corner has no corner zone: the edge follows it, 4 ft wide', () => {
    const { corner, edge } = planAreas(zonesOf(ellHip(5)))
    expect(corner).toBeCloseTo(5 * 16, 6)
    // The L of 1280 sq ft, 168 ft round: a ring 4 ft wide loses a square at each of 5 outer corners and gains one at the inner.
    expect(edge + corner).toBeCloseTo(168 * 4 - 5 * 16 + 16, 6)
  })

  it('valleys and the rest of the main roof beside a gable wing have none of their own', () => {
    const parts = new Set(zonePieces(zonesOf(gableWing(6))).map(({ part }) => part))
    expect(parts).toEqual(
      new Set<ZonePart>(['eave-rake-corner', 'ridge-rake-corner', 'eave', 'rake', 'ridge', 'field']),
    )
  })

  it('a bay with corners of 135 degrees has corners where the two strips cross; wider corners count as straight', () => {
    const slope = (corners: string): Face[] => [{ corners: at(corners), pitch: 5, down: DOWN }]
    const octagonSide = zonePieces(zonesOf(slope('0,0 30,0 40,10 40,40 0,40')))
    const nearlyStraight = zonePieces(zonesOf(slope('0,0 30,0 40,4 40,40 0,40')))
    const eaveCorner = (pieces: typeof octagonSide) =>
      pieces.filter(({ part }) => part === 'eave-corner').reduce((sum, { planAreaSqFt }) => sum + planAreaSqFt, 0)
    // A parallelogram of height 4 and side 4 / sin 135.
    expect(eaveCorner(octagonSide)).toBeCloseTo((4 * 4) / Math.SQRT1_2, 4)
    expect(eaveCorner(nearlyStraight)).toBe(0)
  })
})

describe('zones of every roof', () => {
  const roof = fc.oneof(
    fc.tuple(fc.integer({ min: 25, max: 90 }), fc.integer({ min: 16, max: 60 })).map(([l, w]) => gable(l, w, 6)),
    fc
      .tuple(fc.integer({ min: 0, max: 50 }), fc.integer({ min: 16, max: 60 }))
      .map(([more, w]) => hip(w + 1 + more, w, 4)),
    fc.constantFrom(ellHip(5), gableWing(8), halfHip),
  )
  const heights = fc.integer({ min: 8, max: 40 })

  it('together cover each facet exactly once, whichever way the house is turned', () => {
    fc.assert(
      fc.property(roof, fc.integer({ min: 0, max: 3599 }), heights, (faces, tenths, meanRoofHeightFt) => {
        const facets = facetsOf(turned(faces, tenths / 10))
        const zones = edgeZones({ facets, upAzimuthDeg: 0, meanRoofHeightFt, edition: '7-10' })
        for (const facet of facets) {
          const own = zonePieces(zones).filter(({ facetId }) => facetId === facet.id)
          expect(own.reduce((sum, piece) => sum + piece.planAreaSqFt, 0)).toBeCloseTo(
            facetGeometry(facet).planAreaSqFt,
            2,
          )
          expect(own.reduce((sum, piece) => sum + piece.areaSqFt, 0)).toBeCloseTo(facetGeometry(facet).areaSqFt, 2)
        }
      }),
      { numRuns: 25 },
    )
  })

  it('have the same areas whichever way the house is turned', () => {
    fc.assert(
      fc.property(roof, fc.integer({ min: 1, max: 3599 }), (faces, tenths) => {
        const straight = planAreas(zonesOf(faces))
        const skew = planAreas(zonesOf(turned(faces, tenths / 10)))
        for (const zone of ['field', 'edge', 'corner', 'ridge'] as const)
          expect(skew[zone]).toBeCloseTo(straight[zone], 1)
      }),
      { numRuns: 12 },
    )
  })

  it('are alike on the two sides of a symmetric roof', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 16, max: 60 }), heights, (more, w, height) => {
        const facets = facetsOf(hip(w + 1 + more, w, 5))
        const zones = edgeZones({ facets, upAzimuthDeg: 0, meanRoofHeightFt: height, edition: '7-16' })
        const areasOf = (index: number) =>
          zonePieces(zones)
            .filter(({ facetId }) => facetId === facets[index]?.id)
            .map(({ part, planAreaSqFt }) => [part, Number(planAreaSqFt.toFixed(2))])
        expect(areasOf(0)).toEqual(areasOf(2))
        expect(areasOf(1)).toEqual(areasOf(3))
      }),
      { numRuns: 15 },
    )
  })
})

describe('zone numbers of the editions', () => {
  it('ASCE 7-10, gable: 1 inside, 2 along eaves, rakes and ridge, 3 at corners', () => {
    expect(numbersOf(zonesOf(gable(60, 40, 6), '7-10'))).toEqual({
      'eave-rake-corner': '3',
      'ridge-rake-corner': '3',
      eave: '2',
      rake: '2',
      ridge: '2',
      field: '1',
    })
  })

  it('ASCE 7-10, hip of up to 25 degrees: zone 3 counts as zone 2; steeper corners are not guessed', () => {
    const gentle = { 'eave-corner': '2', eave: '2', ridge: '2', hip: '2', field: '1' }
    expect(numbersOf(zonesOf(hip(60, 40, 5), '7-10'))).toEqual(gentle)
    expect(numbersOf(zonesOf(hip(60, 40, 6), '7-10'))).toEqual({ ...gentle, 'eave-corner': null })
  })

  it('ASCE 7-16: eave, rake and ridge have their own numbers on a gable roof, hips count with the ridge on a hip roof', () => {
    expect(numbersOf(zonesOf(gable(60, 40, 6)))).toEqual({
      'eave-rake-corner': '3e',
      'ridge-rake-corner': '3r',
      eave: '2e',
      rake: '2n',
      ridge: '2r',
      field: '1',
    })
    expect(numbersOf(zonesOf(hip(60, 40, 5)))).toEqual({
      'eave-corner': '3',
      eave: '2e',
      ridge: '2r',
      hip: '2r',
      field: '1',
    })
  })

  it('ASCE 7-22 and roofs that are neither all gables nor all hips: drawn in plain words, with a sentence for a number', () => {
    for (const zones of [zonesOf(gable(60, 40, 6), '7-22'), zonesOf(halfHip, '7-16')]) {
      expect(zonePieces(zones).length).toBeGreaterThan(0)
      expect(new Set(Object.values(numbersOf(zones)))).toEqual(new Set([null]))
    }
    expect(zonePieces(zonesOf(gable(60, 40, 6), '7-22'))[0]?.number).toEqual({
      kind: 'not-built-in',
      sentence:
        'The ASCE 7-22 zone number for gable and hip roofs is not built in. It has three zones drawn by slope. Take it from the printed edition.',
    })
  })

  it('a single slope has no figure: its high edge is an edge without a number', () => {
    const shed: Face[] = [{ corners: at('0,0 40,0 40,30 0,30'), pitch: 4, down: DOWN }]
    expect(numbersOf(zonesOf(shed))).toEqual({
      'eave-rake-corner': null,
      'other-corner': null,
      eave: null,
      rake: null,
      'top-edge': null,
      field: null,
    })
  })
})

describe('what is refused', () => {
  it('facets of up to 7 degrees and above 45 degrees, each with its reason; the others are drawn', () => {
    const faces: Face[] = [
      ...gable(60, 40, 6),
      { corners: at('70,0 90,0 90,20 70,20'), pitch: 1, down: RIGHT },
      { corners: at('100,0 120,0 120,20 100,20'), pitch: 13, down: RIGHT },
      { corners: at('130,0 150,0 150,20 130,20'), pitch: 12, down: RIGHT },
    ]
    const zones = zonesOf(faces)
    expect(zones.kind === 'drawn' && zones.facets.map(({ kind }) => kind)).toEqual([
      'drawn',
      'drawn',
      'refused',
      'refused',
      'drawn',
    ])
    const refused =
      zones.kind === 'drawn' ? zones.facets.flatMap((f) => (f.kind === 'refused' ? [f.sentence] : [])) : []
    expect(refused).toEqual([
      'Facet F2 has a slope of 4.8 degrees. The ASCE 7-16 rule for slopes of up to 7 degrees is not built in. Take its zones from the printed edition.',
      'Facet F3 has a slope of 47.3 degrees. The ASCE 7-16 rule for slopes above 45 degrees is not built in. Take its zones from the printed edition.',
    ])
  })

  it('a roof that is not drawn, a height that is not known', () => {
    expect(zonesOf([]).kind).toBe('refused')
    const facets = facetsOf(gable(60, 40, 6))
    for (const meanRoofHeightFt of [0, -3, NaN]) {
      expect(edgeZones({ facets, upAzimuthDeg: 0, meanRoofHeightFt, edition: '7-16' })).toEqual({
        kind: 'refused',
        sentence: 'Enter the mean roof height, in feet above the ground.',
      })
    }
    expect(
      edgeZones({ facets, upAzimuthDeg: 0, meanRoofHeightFt: 12, leastDimensionFt: 0, edition: '7-16' }).kind,
    ).toBe('refused')
  })
})

it('a least dimension that was measured between walls is used instead of the outline', () => {
  const facets = facetsOf(gable(60, 40, 6))
  const given = { facets, upAzimuthDeg: 0, meanRoofHeightFt: 15, edition: '7-16' } as const
  const drawn = edgeZones(given)
  const measured = edgeZones({ ...given, leastDimensionFt: 36 })
  expect(drawn.kind === 'drawn' && drawn.width.widthFt).toBe(4)
  expect(measured.kind === 'drawn' && measured.width.widthFt).toBeCloseTo(3.6, 9)
})
