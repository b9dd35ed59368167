import { describe, expect, it } from 'vitest'
import { aFacet } from '../../tests/builders/records.ts'
import { shippedWorkShares } from '../rules/shipped-work-shares.ts'
import { assessmentSchema, type EarlierWork } from './assessment.ts'
import { roofSections } from './roof-sections.ts'
import { windowStart, workShares } from './work-share.ts'

const [rule = expect.fail('A rule is shipped.')] = shippedWorkShares
const corner = (xFt: number, yFt: number) => ({ xFt, yFt })
const slope = (letter: string, [fromFt, facesDeg]: readonly [number, number], pitchRise = 5) =>
  aFacet({
    letter,
    pitchRise,
    downslopeAzimuthDeg: facesDeg,
    outline: [corner(0, fromFt), corner(60, fromFt), corner(60, fromFt + 15), corner(0, fromFt + 15)],
  })
// Two slopes of 900 sq ft each, as flat so that areas are whole: a section of 1,800 sq ft, whose 25 % are 450.0 sq ft.
const facets = [slope('A', [0, 180], 0), slope('B', [15, 0], 0)]
const [a, b] = facets.map(({ id }) => id)

/** The one section's share with so much planned on facet A and nothing on B. */
function shareOf(areaSqFt: number, more: { earlier?: readonly Partial<EarlierWork>[]; permitDate?: string } = {}) {
  const stated = assessmentSchema.parse({
    planned: [
      { facetId: a, extent: { kind: 'area', areaSqFt } },
      { facetId: b, extent: { kind: 'none' } },
    ],
    earlier: (more.earlier ?? []).map((work, at) => ({ id: `w${at}`, facetId: b, ...work })),
    sections: [{ id: 's', name: 'Main roof', facetIds: [a, b], permitDate: more.permitDate ?? null }],
  })
  const [share] = workShares({
    rule,
    sections: roofSections(facets, stated.sections, 0),
    facets,
    planned: stated.planned,
    earlier: stated.earlier,
    workDate: '2026-04-01',
    repairSqFt: () => null,
  })
  return share ?? expect.fail('There is one section.')
}

describe('the share of work on a section of 1,800 sq ft', () => {
  // Florida Building Code, Existing Building 706.1.1 as quoted: "not more than 25 percent"; F.S. 553.844(5): "25 percent or more".
  it.each([
    [449.82, 24.99, 'below', 'share-too-small'],
    [450, 25, 'at', 'may-hold'],
    [450.18, 25.01, 'above', 'may-hold'],
  ])('with %f sq ft of work is %f %%: %s the bound, exception %s', (sqFt, percent, ...stands) => {
    const [verdict, exception] = stands
    const share = shareOf(sqFt, { permitDate: '2010-06-01' })
    expect(share).toMatchObject({ percent: { least: expect.closeTo(percent, 9), most: expect.closeTo(percent, 9) } })
    expect(share).toMatchObject({ verdict, exception })
  })

  it('asks for the permit that the exception hangs on, and finds one of before the 2007 code too old', () => {
    expect(shareOf(500).exception).toBe('permit-not-known')
    expect(shareOf(500, { permitDate: '2009-02-28' }).exception).toBe('permit-too-old')
    expect(shareOf(500, { permitDate: '2009-03-01' }).exception).toBe('may-hold')
  })

  it('adds earlier work of the twelve months before, and no other', () => {
    const earlier = [
      { date: '2025-04-01', areaSqFt: 100, permit: 'too early' },
      { date: '2025-04-02', areaSqFt: 60, permit: 'first day' },
      { date: '2026-04-01', areaSqFt: 40, permit: 'same day' },
      { date: '2026-04-02', areaSqFt: 90, permit: 'after' },
    ]
    const share = shareOf(350, { earlier })
    expect(share.earlier.map(({ permit }) => permit)).toEqual(['first day', 'same day'])
    expect(share).toMatchObject({ earlierSqFt: 100, verdict: 'at' })
  })

  it('is not known while earlier work lacks its area, unless it is above already', () => {
    const earlier = [{ date: '2025-12-01', areaSqFt: null, permit: 'B-7' }]
    expect(shareOf(100, { earlier })).toMatchObject({
      verdict: 'not-known',
      lacks: ['Earlier work under B-7 has no area.'],
    })
    expect(shareOf(600, { earlier }).verdict).toBe('above')
  })

  it('does not take more work than the facet has for a share above the bound', () => {
    expect(shareOf(901)).toMatchObject({ verdict: 'not-known', percent: { least: 0, most: 0 } })
  })

  // 25 % of 1,800 sq ft are 450.
  it.each([
    [400, 449, 'below'],
    [400, 450, 'below'],
    [400, 460, 'not-known'],
    [450, 460, 'not-known'],
    [451, 500, 'above'],
  ])('is judged by both ends where tiles come to %f to %f sq ft: %s', (least, most, verdict) => {
    const { planned, sections: grouped } = assessmentSchema.parse({
      sections: [{ id: 's', name: 'Main roof', facetIds: [a, b] }],
      planned: [
        { facetId: a, extent: { kind: 'tiles' } },
        { facetId: b, extent: { kind: 'none' } },
      ],
    })
    const sections = roofSections(facets, grouped, 0)
    const repairSqFt = () => ({ least, most })
    const [share] = workShares({ rule, sections, facets, planned, earlier: [], workDate: null, repairSqFt })
    expect(share).toMatchObject({ verdict, plannedSqFt: { least, most } })
  })
})

describe('the months of a rule', () => {
  it.each([
    ['2026-04-01', '2025-04-02'],
    ['2024-02-29', '2023-03-01'],
    ['2025-02-28', '2024-02-29'],
    ['2025-03-01', '2024-03-02'],
  ])('that end on %s begin on %s', (last, first) => {
    expect(windowStart(last, 12)).toBe(first)
  })
})

describe('roof sections', () => {
  const roof = [slope('A', [0, 180]), slope('B', [15, 0])]
  const namesOf = (...[of, grouped]: [Parameters<typeof roofSections>[0], Parameters<typeof roofSections>[1]]) =>
    roofSections(of, grouped, 0).map(({ name }) => name)

  it('hold together over ridges and hips', () => {
    // 900 sq ft in plan each, at 5:12 a factor of 13/12 (5, 12 and 13 are a right triangle).
    expect(roofSections(roof, [], 0)).toMatchObject([
      { name: 'Facets A, B', by: 'plan', areaSqFt: expect.closeTo(1950, 6) },
    ])
  })

  it('are parted where roofs stand apart, and as a person groups them', () => {
    expect(namesOf([...roof, slope('C', [100, 180])], [])).toEqual(['Facets A, B', 'Facet C'])
    const { sections } = assessmentSchema.parse({ sections: [{ id: 's', name: 'Rear', facetIds: [roof[1]?.id] }] })
    expect(namesOf(roof, sections)).toEqual(['Rear', 'Facet A'])
  })
})
