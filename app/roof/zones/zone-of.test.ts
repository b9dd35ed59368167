import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { facetsOf, gable, hip } from '../../../tests/builders/whole-roofs.ts'
import { edgeZones } from './edge-zones.ts'
import { zoneOf, zoneOfPin } from './zone-of.ts'

/** 60 by 40, ridge at 20, edge zones 4 ft wide. */
const gableZones = edgeZones({
  facets: facetsOf(gable(60, 40, 6)),
  upAzimuthDeg: 0,
  meanRoofHeightFt: 15,
  edition: '7-16',
})
const hipZones = edgeZones({ facets: facetsOf(hip(60, 40, 5)), upAzimuthDeg: 0, meanRoofHeightFt: 15, edition: '7-16' })

const p = (xFt: number, yFt: number) => ({ xFt, yFt })

describe('zone of a point', () => {
  it.each([
    { x: 2, y: 2, part: 'eave-rake-corner' },
    { x: 30, y: 3.9, part: 'eave' },
    { x: 30, y: 4.1, part: 'field' },
    { x: 3.9, y: 10, part: 'rake' },
    { x: 30, y: 16.1, part: 'ridge' },
    { x: 30, y: 23.9, part: 'ridge' },
    { x: 59, y: 21, part: 'ridge-rake-corner' },
    { x: 59, y: 39, part: 'eave-rake-corner' },
  ])('gable roof: $x, $y is $part', ({ x, y, part }) => {
    expect(zoneOf(gableZones, p(x, y))?.part).toBe(part)
  })

  it.each([
    { x: 1, y: 3, part: 'eave-corner', facet: 3 },
    { x: 3, y: 1, part: 'eave-corner', facet: 0 },
    // 5 ft along the diagonal from the hip is 5 / sqrt 2 = 3.54 ft away from it.
    { x: 15, y: 10, part: 'hip', facet: 0 },
    { x: 16, y: 10, part: 'field', facet: 0 },
    { x: 30, y: 18, part: 'ridge', facet: 0 },
    { x: 2, y: 20, part: 'eave', facet: 3 },
    { x: 6, y: 20, part: 'field', facet: 3 },
  ])('hip roof: $x, $y is $part', ({ x, y, part, facet }) => {
    const piece = zoneOf(hipZones, p(x, y))
    expect(piece?.part).toBe(part)
    expect(piece?.facetId).toBe(`facet-${facet}`)
  })

  it('on a border it is the part that is watched more closely, and off the roof there is none', () => {
    expect(zoneOf(gableZones, p(4, 4))?.part).toBe('eave-rake-corner')
    expect(zoneOf(gableZones, p(30, 4))?.part).toBe('eave')
    expect(zoneOf(gableZones, p(0, 0))?.zone).toBe('corner')
    expect(zoneOf(gableZones, p(-1, 10))).toBeNull()
  })

  it('every point of the roof has one', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true })
    fc.assert(
      fc.property(share, share, (x, y) => {
        expect(zoneOf(hipZones, p(60 * x, 40 * y))).not.toBeNull()
      }),
    )
  })

  it('there is none where no zones could be drawn', () => {
    const none = edgeZones({ facets: [], upAzimuthDeg: 0, meanRoofHeightFt: 15, edition: '7-16' })
    expect(zoneOf(none, p(1, 1))).toBeNull()
  })
})

describe('zones of a pin', () => {
  const rounded = (shares: ReturnType<typeof zoneOfPin>) =>
    shares.map(({ piece, share }) => [piece.facetId, piece.part, Number(share.toFixed(4))])

  it('a point has one', () => {
    expect(rounded(zoneOfPin(gableZones, { kind: 'point', at: p(30, 10) }))).toEqual([['facet-0', 'field', 1]])
  })

  it('a line from the eave over the ridge: 4 ft of eave, 12 of field, 4 of ridge on one slope, 2 on the other', () => {
    const line = { kind: 'line' as const, points: [p(30, 0), p(30, 12), p(30, 22)] }
    expect(rounded(zoneOfPin(gableZones, line))).toEqual([
      ['facet-0', 'field', Number((12 / 22).toFixed(4))],
      ['facet-0', 'eave', Number((4 / 22).toFixed(4))],
      ['facet-0', 'ridge', Number((4 / 22).toFixed(4))],
      ['facet-1', 'ridge', Number((2 / 22).toFixed(4))],
    ])
  })

  it('a line along the ridge, where two slopes meet, is counted once', () => {
    const line = { kind: 'line' as const, points: [p(10, 20), p(50, 20)] }
    const found = zoneOfPin(gableZones, line)
    expect(found.map(({ piece }) => piece.part)).toEqual(['ridge'])
    expect(found[0]?.share).toBeCloseTo(1, 9)
  })

  it('an area over the corner that hangs off the roof: shares are of the whole area', () => {
    const area = { kind: 'area' as const, points: [p(-2, 0), p(6, 0), p(6, 6), p(-2, 6)] }
    expect(rounded(zoneOfPin(gableZones, area))).toEqual([
      ['facet-0', 'eave-rake-corner', Number((16 / 48).toFixed(4))],
      ['facet-0', 'eave', Number((8 / 48).toFixed(4))],
      ['facet-0', 'rake', Number((8 / 48).toFixed(4))],
      ['facet-0', 'field', Number((4 / 48).toFixed(4))],
    ])
  })

  it('a line or area without extent, or beside the roof, has none', () => {
    expect(zoneOfPin(gableZones, { kind: 'line', points: [p(3, 3), p(3, 3)] })).toEqual([])
    expect(zoneOfPin(gableZones, { kind: 'area', points: [p(3, 3), p(5, 5), p(7, 7)] })).toEqual([])
    expect(zoneOfPin(gableZones, { kind: 'line', points: [p(-9, 3), p(-3, 3)] })).toEqual([])
  })
})
