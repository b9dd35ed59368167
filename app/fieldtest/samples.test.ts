import { describe, expect, it } from 'vitest'
import { aFacet } from '../../tests/builders/records.ts'
import { pieceCount } from '../roof/facet-geometry.ts'
import { facetQuantities } from '../roof/quantities.ts'
import { jobZones } from '../roof/zones/job-zones.ts'
import { tallyByArea, tallyByFacet } from './check-tally.ts'
import { minimumSample, minimumWorking } from './minimum-sample.ts'
import { roofAreas } from './roof-area.ts'
import { squareWorking, tallySquares } from './square-tally.ts'
import { fieldSurveySchema } from './survey.ts'
import { tileCounts } from './tile-counts.ts'

// Florida Test Protocols, 2020 edition, TAS 106 section 4.1: one tile in ten in the field, one in five elsewhere.
describe('the smallest sample', () => {
  it('is one in ten in the field and one in five at edges, corners, ridges and hips, up to whole tiles', () => {
    expect(minimumSample(1043, 'field')).toBe(105)
    expect(minimumSample(212, 'edge')).toBe(43)
    expect([minimumSample(10, 'field'), minimumSample(11, 'field')]).toEqual([1, 2])
    expect([minimumSample(5, 'corner'), minimumSample(6, 'ridge')]).toEqual([1, 2])
    expect(minimumSample(0, 'field')).toBe(0)
  })

  it('is told with what was checked', () => {
    expect(minimumWorking({ tiles: 1043, area: 'field', checked: 90 })).toBe(
      '1043 tiles on the plan / 10 = 105 at least; 90 checked: 15 short.',
    )
  })
})

describe('tiles on the plan', () => {
  const piece = { exposureIn: 13.5, coverWidthIn: 11 }
  const property = { windEdition: '7-16', meanRoofHeightFt: 15, leastWidthFt: null } as const
  const facets = [aFacet()]

  it('come to the facet’s own count over its areas, but for rounding up in each', () => {
    const zones = jobZones({ facets, upAzimuthDeg: 0, property })
    const counts = tileCounts({ facets, zones, piece })
    if (counts.kind !== 'counted') throw new Error(counts.sentence)
    const total = roofAreas.reduce((sum, area) => sum + counts.tiles(null, area), 0)
    const whole = facetQuantities(facets, { upAzimuthDeg: 0, piece }).totals
    expect(total).toBeGreaterThanOrEqual(pieceCount(whole.areaSqFt, piece))
    expect(total).toBeLessThan(pieceCount(whole.areaSqFt, piece) + roofAreas.length)
  })

  it('are not guessed at: a sentence says what is missing', () => {
    const zones = jobZones({ facets: [], upAzimuthDeg: 0, property })
    expect(tileCounts({ facets: [], zones, piece: null })).toMatchObject({
      sentence: expect.stringContaining('exposure'),
    })
    const unknown = jobZones({ facets, upAzimuthDeg: 0, property: { ...property, meanRoofHeightFt: null } })
    expect(tileCounts({ facets, zones: unknown, piece })).toMatchObject({ sentence: expect.stringContaining('height') })
  })
})

const survey = fieldSurveySchema.parse({
  checks: [
    { id: '1', facetId: 'a', area: 'field', checked: 60, loose: 1, tested: 2 },
    { id: '2', facetId: 'b', area: 'field', checked: 40, loose: 2 },
    { id: '3', facetId: 'a', area: 'edge', checked: 10, loose: 3 },
    { id: '4', facetId: 'a', checked: 5, loose: 0 },
  ],
  squares: [
    { id: '1', facetId: 'a', counts: [{ condition: 'crack-to-fastener', count: 2 }] },
    { id: '2', facetId: 'a', counts: [] },
    { id: '3', facetId: 'a', counts: [{ condition: 'crack-to-fastener', count: 4 }] },
    { id: '4', facetId: 'b', counts: [{ condition: 'slipped', count: 1 }] },
  ],
})

describe('tiles checked by hand', () => {
  it('are added up by area, those without an area apart, and never over the whole roof', () => {
    expect(tallyByArea(survey.checks).map(({ area, loose, checked }) => [area, loose, checked])).toEqual([
      ['field', 3, 100],
      ['edge', 3, 10],
      [null, 0, 5],
    ])
    expect(tallyByArea(survey.checks)[0]?.share).toMatchObject({ verdict: 'at-limit' })
  })

  it('are added up by facet and area', () => {
    expect(tallyByFacet(survey.checks).map(({ facetId, area, checked }) => [facetId, area, checked])).toEqual([
      ['a', 'field', 60],
      ['a', 'edge', 10],
      ['a', null, 5],
      ['b', 'field', 40],
    ])
  })
})

describe('test squares', () => {
  const tallies = tallySquares(survey.squares)

  it('have a mean and a range for each facet and condition; a square without it counts none', () => {
    expect(tallies[0]).toMatchObject({
      facetId: 'a',
      condition: 'crack-to-fastener',
      counts: [2, 0, 4],
      mean: 2,
      least: 0,
      most: 4,
    })
    expect(tallies.map(squareWorking)).toEqual([
      '(2 + 0 + 4) / 3 = 2 in 100 sq ft, from 0 to 4',
      '1 in 100 sq ft, one square',
    ])
  })

  it('say nothing of facets without a square', () => {
    expect(new Set(tallies.map(({ facetId }) => facetId))).toEqual(new Set(['a', 'b']))
    expect(tallies.filter(({ facetId, condition }) => facetId === 'b' && condition === 'crack-to-fastener')).toEqual([])
  })
})
