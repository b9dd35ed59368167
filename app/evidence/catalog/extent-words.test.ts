import { describe, expect, it } from 'vitest'
import { extentWords } from './extent-words.ts'
import { measurementWords } from './measures.ts'

const tile = { one: 'field tile', many: 'field tiles' }

describe('an extent in words', () => {
  it.each([
    [{ kind: 'exactly', count: 3 }, 'exactly 3 field tiles'],
    [{ kind: 'exactly', count: 1 }, 'exactly 1 field tile'],
    [{ kind: 'at-least', count: 3 }, 'at least 3 field tiles'],
    [{ kind: 'about', count: 12 }, 'about 12 field tiles'],
    [{ kind: 'about', count: 1200 }, 'about 1,200 field tiles'],
    [{ kind: 'several' }, 'several field tiles, not counted'],
    [{ kind: 'examples' }, 'examples of a wider condition'],
    [{ kind: 'whole-facet' }, 'whole facet'],
    [{ kind: 'length', lengthFt: 14.5 }, '14.5 ft'],
    [{ kind: 'area', areaSqFt: 1240 }, '1,240 sq ft'],
    [{ kind: 'not-stated' }, 'not stated'],
  ] as const)('%o', (extent, words) => {
    expect(extentWords(extent, tile)).toBe(words)
  })

  it('never turns a word into a number or a hedge into a count', () => {
    expect(extentWords({ kind: 'several' }, tile)).not.toMatch(/\d/)
    expect(extentWords({ kind: 'about', count: 5 }, tile)).not.toMatch(/exactly/)
  })
})

describe('a measurement in words', () => {
  const lift = { what: 'lift-in', value: 1.25, forceLbf: null, by: 'hand', instrument: '', note: '' } as const

  it('says so when a lift has no force', () => {
    expect(measurementWords(lift)).toBe('Lift of the nose 1.25 in, force not recorded, by hand')
  })

  it('names force, instrument and note', () => {
    const told = { ...lift, forceLbf: 12, by: 'instrument', instrument: 'spring gauge', note: 'at mid nose' } as const
    expect(measurementWords(told)).toBe('Lift of the nose 1.25 in at 12 lbf, with spring gauge; at mid nose')
  })

  it('sets the unit that belongs to what was measured', () => {
    const words = (what: 'moisture-percent' | 'fasteners-per-tile' | 'area-sqft') =>
      measurementWords({ ...lift, what, value: 2, by: 'eye' })
    expect(words('moisture-percent')).toContain('2%')
    expect(words('fasteners-per-tile')).toBe('Fasteners per piece 2, by eye')
    expect(words('area-sqft')).toContain('2 sq ft')
  })
})
