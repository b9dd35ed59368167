import { describe, expect, it } from 'vitest'
import { coveringClassSchema } from '../../app/job/sheet.ts'
import { facetSchema } from '../../app/roof/facet.ts'
import { tagChoices, tagSteps, typedTagKey } from './tag-keys.ts'

const facets = ['A', 'B', 'AA'].map((letter) =>
  facetSchema.parse({
    id: `f${letter}`,
    letter,
    outline: [
      { xFt: 0, yFt: 0 },
      { xFt: 9, yFt: 0 },
      { xFt: 9, yFt: 9 },
    ],
    pitchRise: 4,
    downslopeAzimuthDeg: 0,
  }),
)

describe('the keys of a step', () => {
  const cases = coveringClassSchema.options.flatMap((covering) =>
    (['component', 'condition', 'role'] as const).map((step) => [step, covering] as const),
  )

  it.each(cases)('each %s on %s has its own keys, and none begins with another', (step, covering) => {
    const keys = tagChoices(step, { facets, covering }).flatMap((choice) => (choice.keys === null ? [] : [choice.keys]))
    expect(keys.length).toBeGreaterThan(5)
    expect(new Set(keys).size).toBe(keys.length)
    for (const key of keys) expect(keys.filter((other) => other !== key && other.startsWith(key))).toEqual([])
  })

  it('enter the steps by different keys', () => {
    expect(new Set(tagSteps.map(({ key }) => key)).size).toBe(tagSteps.length)
  })
})

describe('typing a tag', () => {
  const roof = { facets, covering: 'concrete-tile' as const }

  it('takes a key of one letter at once', () => {
    const outcome = typedTagKey('', 'o', tagChoices('role', roof))
    expect(outcome).toMatchObject({ kind: 'chosen', choice: { patch: { role: 'overview' } } })
  })

  it('waits for the second letter of a longer key', () => {
    const choices = tagChoices('component', roof)
    const longer = choices.find((choice) => choice.keys?.length === 2)
    const [first = '', second = ''] = longer?.keys ?? ''
    expect(typedTagKey('', first, choices)).toEqual({ kind: 'more', typed: first })
    expect(typedTagKey(first, second, choices)).toEqual({ kind: 'chosen', choice: longer })
  })

  it('reads every letter as small, as with the shift key held', () => {
    expect(typedTagKey('', 'B', tagChoices('facet', roof))).toMatchObject({ kind: 'chosen', choice: { label: 'B' } })
  })

  it('takes the shorter of two facets by Enter, the longer by its letters', () => {
    const choices = tagChoices('facet', roof)
    expect(typedTagKey('', 'a', choices)).toEqual({ kind: 'more', typed: 'a' })
    expect(typedTagKey('a', 'Enter', choices)).toMatchObject({ kind: 'chosen', choice: { label: 'A' } })
    expect(typedTagKey('a', 'a', choices)).toMatchObject({ kind: 'chosen', choice: { label: 'AA' } })
  })

  it('takes a tag back', () => {
    expect(typedTagKey('', '-', tagChoices('role', roof))).toMatchObject({
      kind: 'chosen',
      choice: { patch: { role: null } },
    })
  })

  it('refuses letters that lead nowhere, and goes back by a letter', () => {
    const choices = tagChoices('role', roof)
    expect(typedTagKey('', 'q', choices)).toEqual({ kind: 'nothing' })
    expect(typedTagKey('', 'Enter', choices)).toEqual({ kind: 'nothing' })
    expect(typedTagKey('f', 'Backspace', tagChoices('component', roof))).toEqual({ kind: 'more', typed: '' })
  })
})
