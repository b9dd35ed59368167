import { describe, expect, it } from 'vitest'
import { markOutside } from './markup/mark-points.ts'
import { markEditWords, markupWords, measureNotes } from './markup/words.ts'
import { type Mark, marksSchema, MOST_MARKS, markupSchema, withoutMark } from './markup.ts'

const at = (xPx: number, yPx: number) => ({ xPx, yPx })
const parsed = (marks: readonly object[]) => marksSchema.parse(marks)
const scale = { kind: 'scale', id: 's', from: at(100, 100), to: at(700, 100), lengthIn: 12, of: 'steel rule' }
const measure = { kind: 'measure', id: 'm', from: at(100, 200), to: at(400, 600), scaleId: 's' }
const arrow = { kind: 'arrow', id: 'a', from: at(0, 0), to: at(50, 50) }

const complaints = (marks: readonly object[]) =>
  marksSchema.safeParse(marks).error?.issues.map(({ message }) => message) ?? []

describe('marks over a photo', () => {
  it('are vermilion and of normal width unless something else is said', () => {
    expect(parsed([arrow])).toMatchObject([{ colour: 'vermilion', weight: 'normal' }])
  })

  it('keep measured lines to a scale line of the same photo', () => {
    expect(complaints([scale, measure])).toEqual([])
    expect(complaints([measure])).toEqual(['This measured line has no scale line. Draw the known length first.'])
    expect(complaints([{ ...arrow, id: 's' }, measure])).toHaveLength(1)
  })

  it('refuse a scale line too short to measure by, two marks of one identity, and too many', () => {
    expect(complaints([{ ...scale, to: at(110, 100) }])[0]).toContain('at least 20 pixels')
    expect(complaints([arrow, arrow])).toEqual(['Two marks have the same identity.'])
    const many = Array.from({ length: MOST_MARKS + 1 }, (_, k) => ({ ...arrow, id: `a${k}` }))
    expect(complaints(many)).toHaveLength(1)
  })

  it.each([
    [{ ...arrow, to: at(Infinity, 0) }],
    [{ ...arrow, to: at(-1, 0) }],
    [{ ...arrow, colour: 'red' }],
    [{ ...arrow, id: '<script>' }],
    [{ kind: 'text', id: 't', at: at(0, 0), text: '   ' }],
    [{ kind: 'freehand', id: 'f', points: [at(0, 0)] }],
    [{ ...scale, lengthIn: 0 }],
  ])('refuse %o', (mark) => {
    expect(complaints([mark]).length).toBeGreaterThan(0)
  })

  it('lose measured lines together with their scale line', () => {
    expect(withoutMark(parsed([scale, measure, arrow]), 's').map(({ id }) => id)).toEqual(['a'])
    expect(withoutMark(parsed([scale, measure, arrow]), 'a').map(({ id }) => id)).toEqual(['s', 'm'])
  })

  it('lie on their picture', () => {
    const size = { widthPx: 700, heightPx: 600 }
    expect(markOutside(parsed([scale, measure]), size)).toBeNull()
    expect(markOutside(parsed([scale, measure]), { ...size, widthPx: 699 })?.id).toBe('s')
    expect(markOutside(parsed([arrow]), { widthPx: null, heightPx: null })?.id).toBe('a')
  })
})

describe('marks in words', () => {
  const markup = markupSchema.parse({ photoId: 'p', marks: [scale, measure, arrow, { ...arrow, id: 'b' }] })

  it('are counted by kind', () => {
    expect(markupWords(markup)).toBe('1 scale line, 1 measured line, 2 arrows')
  })

  it('say where a measured length comes from', () => {
    expect(measureNotes(markup)).toEqual(['10.00 in by scale line S1 (12 in, steel rule)'])
  })

  it('name what an edit did', () => {
    const [s, m, a] = parsed([scale, measure, arrow])
    if (s === undefined || m === undefined || a === undefined) return expect.fail('three marks are parsed')
    const words = (before: readonly Mark[], after: readonly Mark[]) => markEditWords(before, after, 'P-012')
    expect(words([], [a])).toBe('Add arrow on photo P-012')
    expect(words([s, m], [])).toBe('Remove 2 marks from photo P-012')
    expect(words([a], parsed([{ ...a, weight: 'bold' }]))).toBe('Change arrow on photo P-012')
    expect(words([s, a], [a, s])).toBe('Reorder marks on photo P-012')
  })
})
