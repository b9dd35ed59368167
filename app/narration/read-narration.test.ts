import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { narrationIdSchema } from '../job/ids.ts'
import { facetSchema } from '../roof/facet.ts'
import { decisionOf } from './decisions.ts'
import { draftedFinding } from './drafted-finding.ts'
import { readNarration } from './read-narration.ts'

const square = (xFt: number, yFt: number) => [
  { xFt, yFt },
  { xFt: xFt + 20, yFt },
  { xFt: xFt + 20, yFt: yFt + 20 },
  { xFt, yFt: yFt + 20 },
]
const facet = (letter: string, downslopeAzimuthDeg: number, outline: ReturnType<typeof square>) =>
  facetSchema.parse({ id: letter, letter, outline, pitchRise: 4, downslopeAzimuthDeg })
const house = {
  upAzimuthDeg: 0,
  frontAzimuthDeg: 180,
  outlines: [],
  facets: [facet('A', 180, square(0, 0)), facet('C', 0, square(0, 20)), facet('D', 0, square(30, 20))],
}
const against = { house, covering: 'concrete-tile' } as const
const cuesOf = (...texts: readonly string[]) =>
  texts.map((text, at) => ({ startMs: at * 6000, endMs: at * 6000 + 5000, text, speaker: '' }))
const draftsOf = (...texts: readonly string[]) => readNarration(cuesOf(...texts), against).drafts

describe('readNarration', () => {
  it('keeps the words of every field', () => {
    const text = 'On the front, three tiles slipped about an inch and a half.'
    const [draft] = draftsOf(text)
    const words = (ranges: readonly { from: number; to: number }[] | undefined) =>
      ranges?.map(({ from, to }) => text.slice(from, to)).join(' ')
    expect(words(draft?.place?.from)).toBe('On the front')
    expect(words(draft?.component.from)).toBe('tiles')
    expect(words(draft?.condition.from)).toContain('slipped')
    expect(words(draft?.extent?.from)).toBe('three')
    expect(words(draft?.measurements[0]?.from)).toBe('an inch and a half')
    expect(draft?.measurements[0]?.value).toMatchObject({ what: 'slip-in', value: 1.5 })
  })

  it('never hides a guess: two slopes of a side stay a question, and the front without a plan is words', () => {
    const [draft] = draftsOf('One slipped tile on the back.')
    expect(draft?.place?.value.facetIds).toEqual(['C', 'D'])
    expect(draft === undefined ? '' : draftedFinding(draft, narrationIdSchema.parse('n')).facetId).toBeNull()
    const bare = readNarration(cuesOf('One slipped tile on the back.'), { ...against, house: { ...house, facets: [] } })
    expect(bare.drafts[0]?.place?.value).toEqual({ words: 'on the back', facetIds: [] })
  })

  it('leaves cause an opinion in the words of the speaker', () => {
    const [draft] = draftsOf('Two ridge caps are gone, probably from the wind.')
    expect(draft?.opinion?.value).toBe('probably from the wind')
    const finding = draft === undefined ? null : draftedFinding(draft, narrationIdSchema.parse('n'))
    expect(finding?.cause).toMatchObject({ cause: 'not-stated', note: 'As spoken: “probably from the wind”' })
  })

  it('reads a finding over several cues, and several findings in one', () => {
    const cues = [
      { startMs: 0, endMs: 2000, text: 'and here we have three of the', speaker: '' },
      { startMs: 2000, endMs: 4000, text: 'hip caps loose', speaker: '' },
    ]
    expect(readNarration(cues, against).drafts).toMatchObject([{ component: { value: 'hip-tile' }, cues: [0, 1] }])
    expect(draftsOf('One cracked tile and two missing ridge caps.')).toMatchObject([
      { component: { value: 'field-tile' }, extent: { value: { count: 1 } } },
      { component: { value: 'ridge-tile' }, condition: { value: 'missing' }, extent: { value: { count: 2 } } },
    ])
  })

  it.each([
    ['several tiles are loose', { kind: 'several' }],
    ['three or four tiles are loose', { kind: 'about', count: 3 }],
    ['at least five tiles are loose', { kind: 'at-least', count: 5 }],
    ['a dozen or so tiles are loose', { kind: 'about', count: 12 }],
    ['a couple of tiles are loose', { kind: 'about', count: 2 }],
  ])('says how much as it was said: %s', (text, extent) => {
    expect(draftsOf(text)[0]?.extent?.value).toEqual(extent)
  })

  it('takes back and corrects', () => {
    expect(draftsOf('One cracked tile here.', 'Scratch that.')).toEqual([])
    expect(draftsOf('One cracked tile on the front.', 'No, the back, I mean.')[0]?.place?.value.facetIds).toEqual([
      'C',
      'D',
    ])
  })

  it('is total and always the same, whatever is said', () => {
    const word = fc.constantFrom(
      ...'no not a the tile crack ridge left of front door scratch that 1/2 inch , . ? " - two and'.split(' '),
    )
    const said = fc
      .array(fc.oneof(word, fc.string({ maxLength: 8 })), { maxLength: 30 })
      .map((words) => words.join(' '))
    fc.assert(
      fc.property(fc.array(said, { maxLength: 6 }), (texts) => {
        const first = draftsOf(...texts)
        expect(draftsOf(...texts)).toEqual(first)
        for (const draft of first) draftedFinding(draft, narrationIdSchema.parse('n'))
      }),
      { numRuns: 300 },
    )
  })
})

describe('decisions', () => {
  it('hold for the same words at about the same moment', () => {
    const decision = { key: 'k', startMs: 10_000, findingId: null }
    expect(decisionOf({ key: 'k', startMs: 11_500 }, [decision])).toBe(decision)
    expect(decisionOf({ key: 'k', startMs: 20_000 }, [decision])).toBeNull()
    expect(decisionOf({ key: 'other', startMs: 10_000 }, [decision])).toBeNull()
  })
})
