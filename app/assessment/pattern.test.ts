import { describe, expect, it } from 'vitest'
import { aFacet, aFinding } from '../../tests/builders/records.ts'
import { jobZones } from '../roof/zones/job-zones.ts'
import { zoneTotals } from '../roof/zones/edge-zones.ts'
import { facetsLookedAt, sidePattern, zonePattern } from './pattern.ts'
import { patternSentence, testWorking } from './pattern-words.ts'
import { windSide, windSideLabels } from './wind-side.ts'

const rectangle = (bottomFt: number) => [
  { xFt: 0, yFt: bottomFt },
  { xFt: 40, yFt: bottomFt },
  { xFt: 40, yFt: bottomFt + 15 },
  { xFt: 0, yFt: bottomFt + 15 },
]
/** A gable roof of two equal slopes, south and north. */
const south = aFacet({ letter: 'S', outline: rectangle(0), downslopeAzimuthDeg: 180 })
const north = aFacet({ letter: 'N', outline: rectangle(15), downslopeAzimuthDeg: 0 })
const facets = [south, north]
const wind = { kind: 'known', by: 'person', fromDeg: 180, sentence: 'Wind from the south.' } as const
const many = (count: number, given: Parameters<typeof aFinding>[0]) =>
  Array.from({ length: count }, () => aFinding(given))
const zones = jobZones({
  facets,
  upAzimuthDeg: 0,
  property: { windEdition: '7-16', meanRoofHeightFt: 15, leastWidthFt: null },
})
const atEave = { kind: 'point', at: { xFt: 20, yFt: 0.5 } } as const

describe('the side of a facet', () => {
  it('is windward up to 45 degrees off the wind and leeward from 135', () => {
    const sideAt = (downslopeAzimuthDeg: number) => windSide({ pitchRise: 5, downslopeAzimuthDeg }, 350)
    expect([350, 35, 36, 305, 124, 125, 170, 215, 216].map(sideAt)).toEqual([
      'windward',
      'windward',
      'side',
      'windward',
      'side',
      'leeward',
      'leeward',
      'leeward',
      'side',
    ])
    expect(windSide({ pitchRise: 0, downslopeAzimuthDeg: 350 }, 350)).toBeNull()
  })
})

describe('findings by side of the wind', () => {
  it('are expected by the area that was looked at', () => {
    const half = [south, { ...north, inspected: { percent: 50, note: '' } }]
    const findings = [...many(6, { facetId: south.id }), ...many(3, { facetId: north.id })]
    const pattern = sidePattern({ facets: half, findings }, wind)
    expect(
      pattern.kind === 'compared' && pattern.groups.map(({ findings: found, expected }) => [found, expected]),
    ).toEqual([
      [6, 6],
      [0, 0],
      [3, 3],
    ])
    expect(pattern.kind === 'compared' && patternSentence(pattern, windSideLabels)).toMatch(/can't be told from chance/)
  })

  // Ten of ten on one of two equal halves: 2 x (1/2)^10 = 0.00195, the two-sided sign test.
  it('are called uneven no stronger than the exact test says', () => {
    const pattern = sidePattern({ facets, findings: many(10, { facetId: south.id }) }, wind)
    expect(pattern.kind === 'compared' && pattern.test?.p).toBeCloseTo(2 / 1024, 10)
    const words = pattern.kind === 'compared' ? patternSentence(pattern, windSideLabels) : ''
    expect(words).toContain('windward (10 observed, 5.0 expected)')
    expect(words).toContain('in about 1 of 512 cases')
    expect(pattern.kind === 'compared' && testWorking(pattern.test)).toBe(
      'Exact multinomial test over 11 outcomes: p = 0.0020.',
    )
  })

  it('are too few to say below five', () => {
    const pattern = sidePattern({ facets, findings: many(4, { facetId: south.id }) }, wind)
    expect(pattern.kind === 'compared' && patternSentence(pattern, windSideLabels)).toMatch(/too few to say/)
  })

  it('are not compared while nobody says how much was looked at', () => {
    const unknown = [south, { ...north, inspected: { percent: null, note: '' } }]
    expect(sidePattern({ facets: unknown, findings: many(9, { facetId: south.id }) }, wind)).toEqual({
      kind: 'refused',
      sentences: [expect.stringContaining('State how much was looked at of facet N')],
    })
  })

  it('are not compared when one lies on a facet that is stated as not looked at', () => {
    const closed = [south, { ...north, inspected: { percent: 0, note: '' } }]
    const pattern = sidePattern({ facets: closed, findings: many(1, { facetId: north.id }) }, wind)
    expect(pattern).toEqual({
      kind: 'refused',
      sentences: [expect.stringMatching(/^Facet N is stated as not looked at, but F-\d+ lies on it/)],
    })
  })
})

describe('findings by zone', () => {
  it('are held against the area of each zone, half of it where half was looked at', () => {
    const half = facets.map((facet) => ({ ...facet, inspected: { percent: 50, note: '' } }))
    const pattern = zonePattern(
      { facets: half, findings: many(8, { facetId: south.id, pin: atEave, extent: { kind: 'exactly', count: 2 } }) },
      zones,
    )
    if (pattern.kind !== 'compared' || zones.kind !== 'drawn') throw new Error('not compared')
    const totals = zoneTotals(zones)
    for (const group of pattern.groups) expect(group.lookedAtSqFt).toBeCloseTo(totals[group.key].areaSqFt / 2, 6)
    expect(pattern.groups.find(({ key }) => key === 'edge')).toMatchObject({ findings: 8, tiles: 16 })
    expect(pattern.groups.reduce((sum, { expected }) => sum + expected, 0)).toBeCloseTo(8, 9)
  })

  it('leave findings without a pin out and name them', () => {
    const lost = aFinding({ facetId: south.id })
    const pattern = zonePattern({ facets, findings: [lost, aFinding({ facetId: south.id, pin: atEave })] }, zones)
    expect(pattern).toMatchObject({ kind: 'compared', findings: 1, apart: [lost] })
  })

  it('ask for what zones need', () => {
    const lacking = jobZones({
      facets,
      upAzimuthDeg: 0,
      property: { windEdition: null, meanRoofHeightFt: 15, leastWidthFt: null },
    })
    expect(zonePattern({ facets, findings: [] }, lacking)).toEqual({
      kind: 'refused',
      sentences: [expect.stringContaining('edition of the wind standard')],
    })
  })
})

describe('facets', () => {
  it('without findings are told apart from those that nobody looked at', () => {
    const closed = aFacet({ letter: 'C', inspected: { percent: 0 } })
    const silent = aFacet({ letter: 'D', inspected: {} })
    const found = facetsLookedAt({ facets: [...facets, closed, silent], findings: [aFinding({ facetId: south.id })] })
    expect(found).toEqual({ withoutFindings: [north], notLookedAt: [closed], notStated: [silent] })
  })
})
