import { describe, expect, it } from 'vitest'
import { findingSchema } from '../../app/evidence/finding.ts'
import { jobSnapshotSchema } from '../../app/contract/jobs.ts'
import { photoIdSchema } from '../../app/job/ids.ts'
import { emptyJobSheet } from '../../app/job/sheet.ts'
import { blankDraft, type FindingDraft } from './finding-draft.ts'
import { EVERY_FINDING, filteredFindings } from './finding-filter.ts'
import { findingLacks } from './finding-lacks.ts'
import { indicatorLines, withIndicator } from './indicators.ts'

const job = jobSnapshotSchema.parse({
  job: { id: 'j', number: '1', createdAtMs: 0, sheet: emptyJobSheet(), frame: {} },
  outlines: [],
  markups: [],
  facets: [],
  photos: [],
  videos: [],
  cameras: [],
  findings: [],
  readings: [],
  planImages: [],
  narrations: [],
  draftDecisions: [],
  survey: {},
  weather: { stations: [], sources: [], choices: {} },
  attachments: [],
  packets: [],
  history: { undo: null, redo: null },
  log: { entries: 0, headHash: '' },
})

const lifting: FindingDraft = { ...blankDraft(), component: 'field-tile', condition: 'lifts-by-hand' }

describe('what a finding lacks', () => {
  it('is what the catalog asks of its condition', () => {
    const { roles, measures } = findingLacks(lifting, null, job)
    expect(roles).toEqual(['mid', 'close', 'test'])
    expect(measures).toEqual(['lift-in'])
  })

  it('is told in the words of the packet, without a number that does not exist yet', () => {
    const { sentences } = findingLacks(lifting, null, job)
    expect(sentences).toContain('is on no facet.')
    expect(sentences).toContain('has no photo.')
    expect(sentences.join(' ')).not.toMatch(/F-\d/)
  })

  it('shrinks as it is filled in; a close-up with a scale is a close-up too', () => {
    const row = { what: 'lift-in' as const, value: 1, forceLbf: 8, by: 'instrument' as const, instrument: '', note: '' }
    const photos = [{ photoId: photoIdSchema.parse('p'), role: 'scale' as const }]
    const { roles, measures } = findingLacks({ ...lifting, measurements: [row], photos }, null, job)
    expect(roles).toEqual(['mid', 'test'])
    expect(measures).toEqual([])
  })

  it('is not told while component or condition are open', () => {
    expect(findingLacks(blankDraft(), null, job)).toEqual({ sentences: [], roles: [], measures: [] })
  })
})

describe('indicators', () => {
  const none = { indicatorsSeen: [], indicatorsLookedForNotSeen: [] }

  it('stand in one list at most', () => {
    const seen = withIndicator(none, 'fresh strip', 'seen')
    expect(seen.indicatorsSeen).toEqual(['fresh strip'])
    const notSeen = withIndicator(seen, 'fresh strip', 'not-seen')
    expect(notSeen).toEqual({ indicatorsSeen: [], indicatorsLookedForNotSeen: ['fresh strip'] })
    expect(withIndicator(notSeen, 'fresh strip', 'open')).toEqual(none)
  })

  it('are the offered ones and those a person added, once each', () => {
    const marked = { indicatorsSeen: ['own words'], indicatorsLookedForNotSeen: ['offered'] }
    expect(indicatorLines(marked, ['offered', 'another'])).toEqual([
      { text: 'offered', state: 'not-seen' },
      { text: 'another', state: 'open' },
      { text: 'own words', state: 'seen' },
    ])
  })
})

describe('filtering findings', () => {
  const findings = [
    findingSchema.parse({
      id: 'a',
      number: 1,
      kind: 'damage',
      component: 'ridge-tile',
      condition: 'cap-loose',
      facetId: 'fa',
    }),
    findingSchema.parse({
      id: 'b',
      number: 12,
      kind: 'sound',
      component: 'pipe-penetration',
      condition: 'sound',
      placeWords: 'above the kitchen',
    }),
  ]
  const shown = (filter: object, lacks: readonly (readonly [string, number])[] = []) =>
    filteredFindings(findings, { ...EVERY_FINDING, ...filter }, new Map(lacks)).map(({ id }) => id)

  it('goes by kind, facet, words and what is lacking', () => {
    expect(shown({})).toEqual(['a', 'b'])
    expect(shown({ kind: 'sound' })).toEqual(['b'])
    expect(shown({ facet: 'fa' })).toEqual(['a'])
    expect(shown({ words: 'KITCHEN pipe' })).toEqual(['b'])
    expect(shown({ words: 'f-12' })).toEqual(['b'])
    expect(shown({ onlyLacking: true }, [['a', 2]])).toEqual(['a'])
  })
})
