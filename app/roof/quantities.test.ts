import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { facetsOf, gable, hip } from '../../tests/builders/whole-roofs.ts'
import { edgeTotals, roofEdges, type RoofEdge } from './edges.ts'
import { pieceCount } from './facet-geometry.ts'
import {
  courseCount,
  coveringWeight,
  edgeQuantities,
  facetQuantities,
  piecesPerSquare,
  ridgePieceCount,
  usualWaste,
  wasteAllowance,
  wholePieces,
} from './quantities.ts'

/** A 16.5 by 13 in tile laid with 3 in headlap and 1 in side lock. */
const tile = { exposureIn: 13.5, coverWidthIn: 12 }

describe('pieces (coverage is 144 / exposed square inches per square foot, general tile-coverage guides)', () => {
  it.each([
    { exposureIn: 13.5, coverWidthIn: 12, perSquare: 88.89 },
    { exposureIn: 13.5, coverWidthIn: 12.25, perSquare: 87.07 },
    { exposureIn: 13.5, coverWidthIn: 11.875, perSquare: 89.82 },
    { exposureIn: 13, coverWidthIn: 12, perSquare: 92.31 },
    { exposureIn: 14, coverWidthIn: 12, perSquare: 85.71 },
    { exposureIn: 15, coverWidthIn: 8.25, perSquare: 116.36 },
  ])('exposure $exposureIn in, cover width $coverWidthIn in: $perSquare per square', ({ perSquare, ...piece }) => {
    expect(piecesPerSquare(piece)).toBeCloseTo(perSquare, 2)
  })

  it('2,600 sq ft of 13.5 by 12 in take 2,312; with 10 % on the area 2,543 (worked by hand: 2311.11 and 2542.22)', () => {
    const measured = { areaSqFt: 2600, pieces: pieceCount(2600, tile) }
    expect(measured.pieces).toBeCloseTo(2311.11, 2)
    expect(wholePieces(measured.pieces)).toBe(2312)
    const allowance = wasteAllowance(measured, 10)
    expect(allowance.areaSqFt).toBeCloseTo(260, 9)
    expect(allowance.pieces).toBeCloseTo(231.11, 2)
    expect(allowance.piecesToOrder).toBe(2543)
  })

  it('26 squares of 10.5 lb tiles at 88.89 a square weigh 24,267 lb, 12.13 short tons (worked by hand)', () => {
    const { pounds, shortTons } = coveringWeight(26, { pieces: 88.89, poundsEach: 10.5 })
    expect(Math.round(pounds)).toBe(24_267)
    expect(shortTons).toBeCloseTo(12.13, 2)
  })
})

describe('counts up to whole pieces', () => {
  it('a slope 18.5 ft long takes 17 courses of 13.5 in (16.44)', () => {
    expect(courseCount(18.5, 13.5)).toBe(17)
  })

  it('29.5 ft of hip take 27 pieces at 13.5 in (26.2) and 24 at 15 in (23.6)', () => {
    expect(ridgePieceCount(29.5, 13.5)).toBe(27)
    expect(ridgePieceCount(29.5, 15)).toBe(24)
  })

  it('a length that is a whole number of courses takes that number, however it was computed', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 2000 }), fc.integer({ min: 30, max: 240 }), (courses, tenths) => {
        const exposureIn = tenths / 10
        expect(courseCount((courses * exposureIn) / 12, exposureIn)).toBe(courses)
      }),
    )
  })

  it('is enough, and one fewer is not', () => {
    const length = fc.integer({ min: 1, max: 100_000 }).map((n) => n / 100)
    fc.assert(
      fc.property(length, fc.constantFrom(5, 13, 13.5, 15), (lengthFt, exposureIn) => {
        const pieces = ridgePieceCount(lengthFt, exposureIn)
        expect((pieces * exposureIn) / 12).toBeGreaterThanOrEqual(lengthFt - 1e-6)
        expect(((pieces - 1) * exposureIn) / 12).toBeLessThan(lengthFt)
      }),
    )
  })
})

describe('facet table of a hip roof 60 by 40, 5:12 (geometry, worked by hand)', () => {
  const { rows, totals } = facetQuantities(facetsOf(hip(60, 40, 5)), { upAzimuthDeg: 0, piece: tile })

  it('has the area, squares and slope length of each facet', () => {
    expect(rows.map(({ letter, areaSqFt }) => [letter, Number(areaSqFt.toFixed(3))])).toEqual([
      ['F0', 866.667],
      ['F1', 433.333],
      ['F2', 866.667],
      ['F3', 433.333],
    ])
    // 20 ft of run at 5:12 is 21.667 ft up the slope: 19.26 courses of 13.5 in.
    for (const row of rows) expect(row.slopeLengthFt).toBeCloseTo(21.6667, 3)
    expect(rows.map(({ courses }) => courses)).toEqual([20, 20, 20, 20])
  })

  it('adds up before anything is rounded', () => {
    expect(totals.areaSqFt).toBeCloseTo(2600, 9)
    expect(totals.squares).toBeCloseTo(26, 9)
    expect(totals.pieces).toBeCloseTo(2311.11, 2)
    const roundedRows = rows.map(({ pieces }) => wholePieces(pieces ?? 0)).reduce((sum, n) => sum + n, 0)
    expect(roundedRows).toBe(771 + 386 + 771 + 386)
    expect(wholePieces(totals.pieces ?? 0)).toBe(2312)
  })

  it('leaves pieces and courses open where the tile is not known', () => {
    const unknown = facetQuantities(facetsOf(hip(60, 40, 5)), { upAzimuthDeg: 0, piece: null })
    expect(unknown.totals.pieces).toBeNull()
    expect(unknown.rows.map(({ courses, pieces }) => [courses, pieces])[0]).toEqual([null, null])
    expect(wasteAllowance(unknown.totals, 10).piecesToOrder).toBeNull()
  })
})

describe('edge table', () => {
  it('gable 40 by 30, 6:12: ridge 40, eaves 80 in two, rakes 67.08 in four (geometry, worked by hand)', () => {
    const table = edgeQuantities(roofEdges(facetsOf(gable(40, 30, 6)), 0))
    expect(table.map(({ kind, count, trueLengthFt }) => [kind, count, Number(trueLengthFt.toFixed(2))])).toEqual([
      ['ridge', 1, 40],
      ['eave', 2, 80],
      ['rake', 4, 67.08],
    ])
    expect(table[2]?.planLengthFt).toBeCloseTo(60, 9)
  })

  it('says how many edges of a kind a person stated', () => {
    const edges = roofEdges(facetsOf(hip(60, 40, 5)), 0).map((edge, index): RoofEdge =>
      index === 0 ? { ...edge, foundKind: edge.kind, kind: 'valley' } : edge,
    )
    expect(edgeQuantities(edges).find(({ kind }) => kind === 'valley')?.statedByHand).toBe(1)
    expect(edgeQuantities(edges).find(({ kind }) => kind === 'eave')?.statedByHand).toBe(0)
  })

  it('agrees with the totals by kind', () => {
    const edges = roofEdges(facetsOf(hip(60, 40, 5)), 0)
    const totals = edgeTotals(edges)
    for (const { kind, trueLengthFt } of edgeQuantities(edges)) expect(trueLengthFt).toBeCloseTo(totals[kind], 9)
  })
})

describe('waste', () => {
  it('never changes what was measured', () => {
    const measured = Object.freeze({ areaSqFt: 2600, pieces: 2311.11 })
    expect(wasteAllowance(measured, 0)).toEqual({ percent: 0, areaSqFt: 0, pieces: 0, piecesToOrder: 2312 })
    expect(measured).toEqual({ areaSqFt: 2600, pieces: 2311.11 })
  })

  it('usual ranges say that nobody is on record for them', () => {
    for (const { fromPercent, toPercent, status } of usualWaste) {
      expect(fromPercent).toBeLessThan(toPercent)
      expect(status).toBe('common practice, no source')
    }
  })
})
