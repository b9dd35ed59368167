import { describe, expect, it } from 'vitest'
import { coveringClassSchema } from '../../job/sheet.ts'
import { wordingFlags } from '../../packet/wording-guard.ts'
import { causes } from './causes.ts'
import { componentChoices, conditionChoices } from './choices.ts'
import { componentLabel, components } from './components.ts'
import { conditions } from './conditions.ts'
import { componentKeySchema, conditionKeySchema, type ConditionKey } from './keys.ts'
import * as labels from './labels.ts'
import { measures } from './measures.ts'
import { explanatoryNotes } from './notes.ts'
import { publishedViews } from './published-views.ts'

/** Pairs of keys where typing one would already pick the other. */
function clashes(choices: readonly { readonly key: string; readonly tagKey: string | null }[]): readonly string[] {
  return choices.flatMap((a) =>
    choices.flatMap((b) =>
      a.key !== b.key && a.tagKey !== null && b.tagKey?.startsWith(a.tagKey) === true ? [`${a.key} / ${b.key}`] : [],
    ),
  )
}

/** All strings anywhere inside a value. */
function stringsIn(value: unknown): readonly string[] {
  if (typeof value === 'string') return [value]
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(stringsIn) : []
}

describe('tagging by key', () => {
  it.each(coveringClassSchema.options)('no key begins with another on a roof of %s', (covering) => {
    expect(clashes(componentChoices(covering))).toEqual([])
    expect(clashes(conditionChoices(covering))).toEqual([])
  })

  it('every part and condition of a known covering has one or two letters', () => {
    for (const covering of ['concrete-tile', 'clay-tile', 'asphalt-shingle', 'metal-panel'] as const) {
      for (const { tagKey } of [...componentChoices(covering), ...conditionChoices(covering)]) {
        expect(tagKey).toMatch(/^[a-z]{1,2}$/)
      }
    }
  })

  it('offers only what the covering can have', () => {
    const onMetal = componentChoices('metal-panel').map(({ key }) => key)
    expect(onMetal).toContain('seam')
    expect(onMetal).toContain('gutter')
    expect(onMetal).not.toContain('field-tile')
  })

  it('offers everything where the covering is not stated', () => {
    expect(componentChoices('not-stated')).toHaveLength(componentKeySchema.options.length)
    expect(conditionChoices('other')).toHaveLength(conditionKeySchema.options.length)
  })
})

describe('the catalog of conditions', () => {
  const keys = conditionKeySchema.options

  it.each(keys)('%s is found on parts that its coverings have', (key) => {
    const { components: on, coverings } = conditions[key]
    if (on === 'any') return expect(coverings).toHaveLength(3)
    expect(on.length).toBeGreaterThan(0)
    const strangers = on.filter((part) => !components[part].coverings.some((covering) => coverings.includes(covering)))
    expect(strangers).toEqual([])
  })

  it.each(keys)('%s asks for a photo and has graded words, none twice', (key) => {
    const { photoRoles, degrees } = conditions[key]
    expect(photoRoles.length).toBeGreaterThan(0)
    expect(degrees.length).toBeGreaterThan(1)
    expect(new Set(degrees).size).toBe(degrees.length)
  })

  it('names another explanation for every condition that is often read as wind', () => {
    const oneSided = keys.filter(
      (key: ConditionKey) =>
        conditions[key].oftenReadAsWind.length > 0 && conditions[key].otherExplanations.length === 0,
    )
    expect(oneSided).toEqual([])
  })

  it('asks for lift and test photo where a tile lifts by hand', () => {
    expect(conditions['lifts-by-hand'].measures).toContain('lift-in')
    expect(conditions['lifts-by-hand'].photoRoles).toContain('test')
  })
})

describe('the catalog’s words', () => {
  it('stay inside a contractor’s part', () => {
    const all = [components, conditions, causes, labels, measures, explanatoryNotes, publishedViews].flatMap(stringsIn)
    expect(all.length).toBeGreaterThan(500)
    expect(all.flatMap((text) => wordingFlags(text).map(({ matched }) => `${matched} in: ${text}`))).toEqual([])
  })

  it('give every opinion as an opinion', () => {
    for (const { opinion } of Object.values(causes)) {
      expect(opinion).toMatch(/^(Consistent with|Cause not determined|No opinion|Another cause)/)
    }
  })

  it('carry a source, or say that there is none, with every explanatory note and published view', () => {
    for (const { sources } of Object.values(explanatoryNotes)) expect(sources.length).toBeGreaterThan(0)
    for (const { source } of Object.values(publishedViews)) expect(source).not.toBe('')
  })

  it('keep a part’s word that is not in the catalog', () => {
    expect(componentLabel('ridge-tile')).toBe('Ridge tile')
    expect(componentLabel('satellite dish')).toBe('satellite dish')
  })
})
