import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Band, type BreakBefore, type Page, paginate } from './paginate.ts'

/** US Letter is 612 by 792 pt (8.5 by 11 in at 72 pt to the inch); with an inch at top and bottom, 648 pt are left. */
const PAGE_PT = 792 - 2 * 72

interface Named extends Band {
  readonly name: string
  readonly repeat: Named | null
}

function band(name: string, heightPt: number, more: Partial<Named> = {}): Named {
  return { name, heightPt, stretchPt: 0, gapBeforePt: 0, breakBefore: 'free', repeat: null, ...more }
}

const names = (pages: readonly Page<Named>[]) =>
  pages.map((page) => page.placed.map((placed) => placed.band.name).join(' '))
const tops = (page: Page<Named> | undefined) => page?.placed.map((placed) => placed.yPt)

describe('putting bands on pages', () => {
  it('fills a page and goes on to the next', () => {
    const pages = paginate([band('a', 300), band('b', 300), band('c', 300)], PAGE_PT)
    expect(names(pages)).toEqual(['a b', 'c'])
    expect(tops(pages[0])).toEqual([0, 300])
    expect(tops(pages[1])).toEqual([0])
  })

  it('counts gaps between bands, and drops them at the top of a page', () => {
    const gap = { gapBeforePt: 24 }
    expect(names(paginate([band('a', 312, gap), band('b', 312, gap)], PAGE_PT))).toEqual(['a b'])
    const pages = paginate([band('a', 312, gap), band('b', 312.1, gap)], PAGE_PT)
    expect(names(pages)).toEqual(['a', 'b'])
    expect(tops(pages[1])).toEqual([0])
  })

  it('does not strand a heading: what must stay with it pulls it to the next page', () => {
    const pages = paginate(
      [
        band('text', 600),
        band('heading', 24),
        band('line', 14, { breakBefore: 'never' }),
        band('line 2', 14, { breakBefore: 'never' }),
      ],
      PAGE_PT,
    )
    expect(names(pages)).toEqual(['text', 'heading line line 2'])
  })

  it('keeps two lines of a paragraph at either end of a page', () => {
    const ends: readonly BreakBefore[] = ['free', 'never', 'free', 'free', 'never']
    const lines = ends.map((breakBefore, i) => band(`line ${i + 1}`, 14, { breakBefore }))
    // Room for one line only: none of them stays.
    expect(names(paginate([band('above', PAGE_PT - 14), ...lines], PAGE_PT))[0]).toBe('above')
    // Room for four of five: the fourth goes along, so that the last is not alone.
    expect(names(paginate([band('above', PAGE_PT - 56), ...lines], PAGE_PT))).toEqual([
      'above line 1 line 2 line 3',
      'line 4 line 5',
    ])
  })

  it('moves a group to the next page rather than break it', () => {
    const group = [
      band('g1', 200),
      band('g2', 200, { breakBefore: 'unwelcome' }),
      band('g3', 200, { breakBefore: 'unwelcome' }),
    ]
    expect(names(paginate([band('a', 300), ...group], PAGE_PT))).toEqual(['a', 'g1 g2 g3'])
  })

  it('breaks a group where nothing else is possible', () => {
    const group = [band('g1', 400), band('g2', 400, { breakBefore: 'unwelcome' })]
    expect(names(paginate(group, PAGE_PT))).toEqual(['g1', 'g2'])
  })

  it('breaks before what must stay only when it cannot stay', () => {
    const pages = paginate([band('heading', 24), band('tall', 640, { breakBefore: 'never' })], PAGE_PT)
    expect(names(pages)).toEqual(['heading', 'tall'])
  })

  it('draws the head of a table again on each page, and counts its height', () => {
    const head = band('head', 20, { gapBeforePt: 9 })
    const rows = Array.from({ length: 70 }, (_, i) =>
      band(`r${i + 1}`, 20, { repeat: head, breakBefore: i === 0 ? 'never' : 'free' }),
    )
    const pages = paginate([head, ...rows], PAGE_PT)
    // 648 pt hold 32 bands of 20 pt: the head and 31 rows.
    expect(pages.map((page) => page.placed.length)).toEqual([32, 32, 9])
    expect(pages.map((page) => page.placed[0]?.band.name)).toEqual(['head', 'head', 'head'])
    expect(pages.map((page) => page.placed[0]?.repeated)).toEqual([false, true, true])
    expect(tops(pages[1])?.slice(0, 3)).toEqual([0, 20, 40])
  })

  it('begins a page where one is asked for, but not before the first', () => {
    const pages = paginate([band('a', 10, { breakBefore: 'page' }), band('b', 10, { breakBefore: 'page' })], PAGE_PT)
    expect(names(pages)).toEqual(['a', 'b'])
  })

  it('shares what is left of a page among the bands that may grow', () => {
    const pages = paginate(
      [band('heading', 48), band('x', 250, { stretchPt: 100 }), band('y', 250, { stretchPt: 100 })],
      PAGE_PT,
    )
    expect(pages[0]?.placed.map((placed) => placed.heightPt)).toEqual([48, 300, 300])
    expect(tops(pages[0])).toEqual([0, 48, 348])
  })

  it('lets a band grow no further than it may', () => {
    const pages = paginate([band('x', 250, { stretchPt: 100 })], PAGE_PT)
    expect(pages[0]?.placed[0]?.heightPt).toBe(350)
  })

  it('lets a band higher than a page stand alone', () => {
    expect(names(paginate([band('a', 10), band('tall', 900), band('b', 10)], PAGE_PT))).toEqual(['a', 'tall', 'b'])
  })

  it('loses nothing, keeps the order and never overfills a page, whatever the bands', () => {
    const anyBand = fc.record({
      heightPt: fc.double({ min: 1, max: PAGE_PT, noNaN: true }),
      gapBeforePt: fc.double({ min: 0, max: 30, noNaN: true }),
      breakBefore: fc.constantFrom<BreakBefore>('page', 'free', 'unwelcome', 'never'),
      stretchPt: fc.constantFrom(0, 0, 50),
    })
    fc.assert(
      fc.property(fc.array(anyBand, { maxLength: 60 }), (made) => {
        const bands = made.map((one, i) => band(String(i), one.heightPt, one))
        const pages = paginate(bands, PAGE_PT)
        expect(pages.flatMap((page) => page.placed.map((placed) => placed.band.name))).toEqual(
          bands.map((one) => one.name),
        )
        for (const page of pages) {
          const last = page.placed.at(-1)
          expect((last?.yPt ?? 0) + (last?.heightPt ?? 0)).toBeLessThanOrEqual(PAGE_PT + 0.01)
        }
      }),
    )
  })
})
