import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { z } from 'zod'
import { aFacet, aFinding } from '../../../tests/builders/records.ts'
import { assessmentSchema } from '../assessment.ts'
import { repairOf } from './repair.ts'

const corner = (xFt: number, yFt: number) => ({ xFt, yFt })
/** 20 by 10 ft without a pitch: 200 sq ft; tiles of 12 by 12 in make it 200 tiles. */
const facet = aFacet({
  pitchRise: 0,
  downslopeAzimuthDeg: 180,
  outline: [corner(0, 0), corner(20, 0), corner(20, 10), corner(0, 10)],
})
const piece = { exposureIn: 12, coverWidthIn: 12 }
const damage = (given: Partial<Parameters<typeof aFinding>[0]>) =>
  aFinding({ kind: 'damage', component: 'field-tile', condition: 'diagonal-crack', facetId: facet.id, ...given })

const repair = (findings: readonly ReturnType<typeof aFinding>[], stated: z.input<typeof assessmentSchema> = {}) =>
  repairOf({ facets: [facet], findings, piece, upAzimuthDeg: 0, assessment: assessmentSchema.parse(stated) })

const allowance = { breakage: { fromPercent: 10, toPercent: 25 } }
const stock = (pieces: number) => ({ stock: [{ id: 's', pieces }] })

describe('a repair on the course grid', () => {
  it('counts tiles to replace, tiles lifted for them and those that may break on the way', () => {
    const three = damage({ number: 1, extent: { kind: 'exactly', count: 3 } })
    const [one] = repair([three], allowance).facets
    // By hand: two in a course and one under the left of them need 3 lifted; apart 3 x 2 = 6. 10 % of 3 is a part of 1
    // tile, 25 % of 6 a part of 2.
    expect(one).toMatchObject({
      replace: 3,
      reset: 0,
      lifted: { least: 3, most: 6 },
      broken: { least: 1, most: 2 },
      needed: { least: 4, most: 5 },
    })
  })

  it('knows the lifted tiles exactly where every tile has a pin of its own', () => {
    const pins = [corner(5.5, 3.5), corner(6.5, 3.5)].map((at, i) =>
      damage({ number: i + 1, extent: { kind: 'exactly', count: 1 }, pin: { kind: 'point', at } }),
    )
    expect(repair(pins).facets[0]).toMatchObject({ pinned: 2, lifted: { least: 3, most: 3 } })
  })

  it('takes two pins on one tile, and a pin beside the facet, as tiles without a place', () => {
    const pinned = (number: number, at: ReturnType<typeof corner>) =>
      damage({ number, extent: { kind: 'exactly', count: 1 }, pin: { kind: 'point', at } })
    const twice = repair([pinned(1, corner(5.5, 3.5)), pinned(2, corner(5.6, 3.4))])
    expect(twice.facets[0]).toMatchObject({ replace: 2, pinned: 1, lifted: { most: 4 } })
    expect(repair([pinned(1, corner(50, 3))]).facets[0]).toMatchObject({ pinned: 0, lifted: { least: 2, most: 2 } })
  })

  it('says when more tiles are counted than the facet has', () => {
    const many = damage({ number: 1, extent: { kind: 'exactly', count: 201 } })
    expect(repair([many]).lacks).toContain(
      `More tiles are counted on facet ${facet.letter} than it has: correct the counts.`,
    )
  })

  it('sets slipped tiles again without counting them as new ones, but for those that break', () => {
    const slipped = damage({ number: 1, condition: 'slipped', extent: { kind: 'exactly', count: 4 } })
    expect(repair([slipped], allowance).facets[0]).toMatchObject({
      replace: 0,
      reset: 4,
      needed: { least: 1, most: 3 },
    })
  })

  it.each([
    [5, 'enough'],
    [4, 'depends'],
    [3, 'short'],
  ])('holds %i matching tiles against 4 to 5: %s', (pieces, verdict) => {
    const three = damage({ number: 1, extent: { kind: 'exactly', count: 3 } })
    expect(repair([three], { ...allowance, ...stock(pieces) }).verdict).toBe(verdict)
  })

  it('cannot be judged while a count, the allowance or the stock is missing, and says which', () => {
    const several = damage({ number: 7, extent: { kind: 'several' } })
    const { verdict, lacks } = repair([several])
    expect(verdict).toBe('not-known')
    expect(lacks).toEqual([
      'No exact count: F-7.',
      'No allowance for breaking is chosen.',
      'No matching tile has been counted.',
    ])
  })

  it('is short already when what is counted takes more than there is, whatever is not counted yet', () => {
    const findings = [
      damage({ number: 1, extent: { kind: 'exactly', count: 9 } }),
      damage({ number: 2, extent: { kind: 'several' } }),
    ]
    expect(repair(findings, { ...allowance, ...stock(2) }).verdict).toBe('short')
  })

  it('follows a person who leaves a finding’s tiles as they are', () => {
    const crack = damage({ number: 1, extent: { kind: 'exactly', count: 2 } })
    const treatments = [{ findingId: crack.id, treatment: 'leave' as const }]
    expect(repair([crack], { treatments })).toMatchObject({ facets: [], verdict: 'nothing-to-do' })
  })

  it('never lifts or breaks more tiles than the facet has', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 190 }), fc.integer({ min: 0, max: 100 }), (count, percent) => {
        const many = damage({ number: 1, extent: { kind: 'exactly', count } })
        const [one] = repair([many], { breakage: { fromPercent: percent, toPercent: percent } }).facets
        expect((one?.lifted.most ?? 0) + count).toBeLessThanOrEqual(200)
        expect(one?.needed?.most ?? 0).toBeLessThanOrEqual(200)
        expect(one?.needed?.least ?? 0).toBeGreaterThanOrEqual(count)
      }),
    )
  })
})
