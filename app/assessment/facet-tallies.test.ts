import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { aFacet, aFinding } from '../../tests/builders/records.ts'
import type { Extent } from '../evidence/finding.ts'
import { facetTallies } from './facet-tallies.ts'
import { affectedWords, apartWords, inspectedWords, tallyWorking } from './tally-words.ts'

/** 14400 / (13.75 x 11) = 95.2 tiles in a square, within the 80 to 130 of general tile-coverage guides. */
const piece = { exposureIn: 13.75, coverWidthIn: 11 }
/** 24 ft by 20 ft at 5:12: 480 sq ft x 13/12 = 520 sq ft (the 5-12-13 triangle), 495.07 tiles. */
const facet = aFacet({
  letter: 'A',
  outline: [
    { xFt: 0, yFt: 0 },
    { xFt: 24, yFt: 0 },
    { xFt: 24, yFt: 20 },
    { xFt: 0, yFt: 20 },
  ],
  inspected: { percent: 50, note: 'Wet above the porch.' },
})
const on = (extent: Extent) => aFinding({ facetId: facet.id, extent })

describe('tallies by facet', () => {
  it('give the share of tiles by area, of the whole facet and of the part looked at', () => {
    const findings = [on({ kind: 'exactly', count: 7 }), on({ kind: 'exactly', count: 5 }), on({ kind: 'several' })]
    const [tally] = facetTallies({ facets: [facet], findings, piece })
    expect(tally?.affected).toEqual({ kind: 'share', affected: 12, uncounted: 1, tiles: 496, lookedAt: 248 })
    expect(tally && affectedWords(tally.affected)).toBe('12 of 496 = 2.4 %, and 1 finding not counted')
    expect(tally && tallyWorking(tally, piece).at(-1)).toBe(
      'Facet A: the part looked at has about 248 tiles by area; 12 of 248 = 4.8 % of those.',
    )
  })

  it('never make a number of what was not counted', () => {
    const several = on({ kind: 'several' })
    const [tally] = facetTallies({ facets: [facet], findings: [several, on({ kind: 'about', count: 40 })], piece })
    expect(tally?.affected).toEqual({ kind: 'none-counted', uncounted: 2 })
    expect(tally?.rows[0]?.counted).toBeNull()
    expect(tally?.rows[0] && apartWords(tally.rows[0])).toContain(
      `several field tiles, not counted (F-${several.number})`,
    )
  })

  it('leave the share out while the sheet lacks the size of a tile', () => {
    const [tally] = facetTallies({ facets: [facet], findings: [on({ kind: 'exactly', count: 3 })], piece: null })
    expect(tally?.affected).toEqual({ kind: 'unknown-tiles', affected: 3, uncounted: 0 })
  })

  it('point out counts that do not fit on the part looked at', () => {
    const [tally] = facetTallies({ facets: [facet], findings: [on({ kind: 'exactly', count: 300 })], piece })
    expect(tally && tallyWorking(tally, piece).at(-1)).toMatch(
      /don't fit on the part stated as looked at, about 248 tiles/,
    )
  })

  it('list every facet, also without findings, and findings without a facet last', () => {
    const b = aFacet({ letter: 'B' })
    const lost = aFinding({ extent: { kind: 'exactly', count: 1 } })
    const letters = facetTallies({ facets: [b, facet], findings: [lost], piece }).map(
      (one) => one.facet?.letter ?? null,
    )
    expect(letters).toEqual(['A', 'B', null])
  })

  it('keep wear and earlier repair out of the tiles affected', () => {
    const findings = [aFinding({ kind: 'wear', facetId: facet.id, extent: { kind: 'exactly', count: 9 } })]
    const [tally] = facetTallies({ facets: [facet], findings, piece })
    expect(tally?.rows.map(({ kind }) => kind)).toEqual(['wear'])
    expect(tally?.affected).toEqual({ kind: 'none-counted', uncounted: 0 })
  })

  it('add up to what was counted, however it is spread over facets', () => {
    const facets = [facet, aFacet(), aFacet()]
    const spread = fc.array(fc.record({ at: fc.nat(3), count: fc.integer({ min: 1, max: 50 }) }), { maxLength: 30 })
    fc.assert(
      fc.property(spread, (lines) => {
        const findings = lines.map(({ at, count }) =>
          aFinding({ facetId: facets[at]?.id ?? null, extent: { kind: 'exactly', count } }),
        )
        const sums = facetTallies({ facets, findings, piece }).flatMap(({ rows }) =>
          rows.map((row) => row.counted?.count ?? 0),
        )
        expect(sums.reduce((a, b) => a + b, 0)).toBe(lines.reduce((a, { count }) => a + count, 0))
      }),
      { numRuns: 50 },
    )
  })

  it('say in words how much was looked at', () => {
    const words = [null, 0, 100].map((percent) => inspectedWords({ inspected: { percent, note: '' } }))
    expect([...words, inspectedWords(facet)]).toEqual([
      'not stated',
      'not looked at',
      'all',
      '50 %, Wet above the porch.',
    ])
  })
})
