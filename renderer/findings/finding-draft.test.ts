import { describe, expect, it } from 'vitest'
import { type Extent, type Finding, findingSchema } from '../../app/evidence/finding.ts'
import { type Photo, photoTagsSchema } from '../../app/evidence/photo.ts'
import { testPhoto } from '../state/test-photo.ts'
import {
  blankDraft,
  draftFromPhotos,
  draftOfFinding,
  type FindingDraft,
  findingOfDraft,
  sameDraft,
} from './finding-draft.ts'

function tagged(id: string, tags: object): Photo {
  return { ...testPhoto(id, {}), tags: photoTagsSchema.parse(tags) }
}

function finding(more: object = {}): Finding {
  return findingSchema.parse({
    id: 'f1',
    number: 12,
    kind: 'damage',
    component: 'field-tile',
    condition: 'slipped',
    ...more,
  })
}

const faultsOf = (draft: FindingDraft) => {
  const result = findingOfDraft(draft)
  return 'faults' in result ? result.faults.map(({ field }) => field) : []
}

describe('a form', () => {
  const extents: readonly Extent[] = [
    { kind: 'exactly', count: 3 },
    { kind: 'at-least', count: 5 },
    { kind: 'about', count: 40 },
    { kind: 'several' },
    { kind: 'examples' },
    { kind: 'whole-facet' },
    { kind: 'length', lengthFt: 14.5 },
    { kind: 'area', areaSqFt: 84 },
    { kind: 'not-stated' },
  ]

  it.each(extents)('gives back the record it was made from, with extent $kind', (extent) => {
    const before = finding({
      extent,
      observation: 'Three tiles off the line.',
      measurements: [{ what: 'slip-in', value: 1.5, by: 'instrument', instrument: 'steel rule' }],
      cause: { cause: 'wind', indicatorsSeen: ['fresh strip'], otherExplanations: [{ explanation: 'walked on' }] },
      pin: {
        kind: 'line',
        points: [
          { xFt: 0, yFt: 0 },
          { xFt: 4, yFt: 0 },
        ],
      },
      photos: [{ photoId: 'p1', role: 'close' }],
      noteKeys: ['foot-traffic'],
    })
    const { id: _id, number: _number, ...saved } = before
    expect(findingOfDraft(draftOfFinding(before))).toEqual({ finding: saved })
  })

  it('can start blank, and then asks for component and condition', () => {
    expect(faultsOf(blankDraft())).toEqual(['component', 'condition'])
  })

  it('asks for the amount of an extent that has one', () => {
    const draft = { ...draftOfFinding(finding()), extent: { kind: 'about' as const, amount: null } }
    expect(faultsOf(draft)).toEqual(['extent'])
  })

  it('asks for the value of a measured row', () => {
    const row = { what: 'lift-in' as const, value: null, forceLbf: null, by: 'hand' as const, instrument: '', note: '' }
    expect(faultsOf({ ...draftOfFinding(finding()), measurements: [row] })).toEqual(['measurements'])
  })

  it('drops explanations without words', () => {
    const draft = draftOfFinding(finding())
    const cause = { ...draft.cause, otherExplanations: [{ explanation: ' ', whyLessLikely: 'none' }] }
    const result = findingOfDraft({ ...draft, cause })
    expect('finding' in result && result.finding.cause.otherExplanations).toEqual([])
  })

  it('names what the record refuses', () => {
    const draft = { ...draftOfFinding(finding()), degree: 'x'.repeat(121) }
    expect(faultsOf(draft)).toEqual(['other'])
  })

  it('is the same as another with the same words', () => {
    expect(sameDraft(draftOfFinding(finding()), draftOfFinding(finding()))).toBe(true)
    expect(sameDraft(draftOfFinding(finding()), draftOfFinding(finding({ urgent: true })))).toBe(false)
  })
})

describe('a form from photos', () => {
  it('takes what the photos agree on; silent ones do not disagree', () => {
    const draft = draftFromPhotos([
      tagged('a', { facetId: 'fa', component: 'ridge-tile', condition: 'cap-loose', role: 'overview' }),
      tagged('b', { facetId: 'fa', component: 'ridge-tile' }),
    ])
    expect(draft).toMatchObject({ kind: 'damage', facetId: 'fa', component: 'ridge-tile', condition: 'cap-loose' })
    expect(draft.photos).toEqual([
      { photoId: 'a', role: 'overview' },
      { photoId: 'b', role: 'other' },
    ])
  })

  it('leaves open what they differ in', () => {
    const draft = draftFromPhotos([tagged('a', { facetId: 'fa' }), tagged('b', { facetId: 'fb' })])
    expect(draft.facetId).toBeNull()
  })

  it('does not call sound things damage, and never gives a cause', () => {
    const draft = draftFromPhotos([tagged('a', { condition: 'sound' })])
    expect(draft.kind).toBe('sound')
    expect(draft.cause.cause).toBe('not-stated')
  })
})
