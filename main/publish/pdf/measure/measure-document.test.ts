import { describe, expect, it, vi } from 'vitest'
import type { Block, PacketDocument, PhotoCard, TableBlock } from '../../../../app/packet/document.ts'
import { photoIdSchema } from '../../../../app/job/ids.ts'
import { stormWalkDocument } from '../fixtures/storm-walk-document.ts'
import { paginate } from '../paginate/paginate.ts'
import { paperOf } from '../paper.ts'
import { typesetter } from '../text/typeset.ts'
import { measureDocument } from './measure-document.ts'
import type { Strip } from './strip.ts'
import type { TextBox } from './strip-content.ts'

vi.setConfig({ testTimeout: 30_000 })

const paper = paperOf('letter')

function documentOf(blocks: readonly Block[]): PacketDocument {
  return { ...stormWalkDocument(), sections: [{ key: 's', title: 'Section', start: 'new-page', blocks }] }
}

function pagesOf(blocks: readonly Block[]) {
  const strips = measureDocument(documentOf(blocks), { paper, typesetter: typesetter(), pictureSizes: new Map() })
  return paginate(strips, paper.contentHeightPt)
}

const textOf = (box: TextBox) => box.lines.map((line) => line.pieces.map((piece) => piece.text).join('')).join(' ')

function card(n: number, caption: string): PhotoCard {
  return {
    photoId: photoIdSchema.parse(`photo-${n}`),
    anchor: `photo-${n}`,
    alt: 'x',
    title: [{ text: caption }],
    lines: [[{ text: 'Facet A' }], [{ text: '10:42' }]],
    inset: null,
  }
}

function table(rows: readonly string[]): TableBlock {
  return {
    kind: 'table',
    summary: 'x',
    columns: [
      { title: 'No.', align: 'start', weight: 1 },
      { title: 'What', align: 'start', weight: 3 },
    ],
    rows: rows.map((text, i) => ({ cells: [[{ text: String(i + 1) }], [{ text }]] })),
  }
}

const cardsOn = (strips: readonly { readonly band: Strip }[]) =>
  strips.reduce((sum, { band }) => sum + (band.content.kind === 'photo-row' ? band.content.cards.length : 0), 0)

describe('photo cards', () => {
  const heading: Block = { kind: 'heading', level: 1, text: 'Photos', inOutline: true }

  it.each([2, 4, 6] as const)('stand %i on a page, on the page that begins with the heading too', (perPage) => {
    const cards = Array.from({ length: 24 }, (_, i) => card(i, 'Tile lifted at the nose.'))
    const pages = pagesOf([heading, { kind: 'photo-cards', perPage, cards }])
    expect(pages.map((page) => cardsOn(page.placed))).toEqual(Array.from({ length: 24 / perPage }, () => perPage))
  })

  it('give a long caption the room it needs, whole', () => {
    const caption = 'lifted tile '.repeat(60).trim()
    const [page] = pagesOf([{ kind: 'photo-cards', perPage: 6, cards: [card(1, caption)] }])
    const row = page?.placed[0]?.band.content
    expect(row?.kind === 'photo-row' && row.cards[0] !== undefined ? textOf(row.cards[0].title) : '').toBe(caption)
  })

  it('cut a caption only when it would not fit on a page, and say so with an ellipsis', () => {
    const caption = 'lifted tile '.repeat(600)
    const pages = pagesOf([{ kind: 'photo-cards', perPage: 4, cards: [card(1, caption)] }])
    const placed = pages[0]?.placed[0]
    const row = placed?.band.content
    const shown = row?.kind === 'photo-row' && row.cards[0] !== undefined ? textOf(row.cards[0].title) : ''
    expect(shown.endsWith('…')).toBe(true)
    expect(shown.length).toBeGreaterThan(1000)
    expect(placed?.heightPt).toBeLessThanOrEqual(paper.contentHeightPt)
  })
})

describe('tables', () => {
  it('repeat their head on each page and split no row', () => {
    const pages = pagesOf([
      table(Array.from({ length: 80 }, (_, i) => `row ${i} ${'that takes more than one line of its cell '.repeat(3)}`)),
    ])
    expect(pages.length).toBeGreaterThan(2)
    for (const page of pages) {
      const first = page.placed[0]?.band.content
      expect(first?.kind === 'table-row' && first.role).toBe('head')
    }
    const rows = pages
      .flatMap((page) => page.placed)
      .filter(({ band }) => band.content.kind === 'table-row' && band.content.role === 'body')
    expect(rows).toHaveLength(80)
  })

  it('split a row only when it is higher than a page', () => {
    const pages = pagesOf([table(['word '.repeat(3000)])])
    expect(pages.length).toBeGreaterThan(1)
    for (const page of pages) {
      const last = page.placed.at(-1)
      expect((last?.yPt ?? 0) + (last?.heightPt ?? 0)).toBeLessThanOrEqual(paper.contentHeightPt + 0.01)
    }
  })

  it('never leave a row that leads others at the foot of a page, wherever the page ends', () => {
    for (let before = 20; before < 60; before += 1) {
      const plainRows = table(Array.from({ length: before }, (_, i) => `row ${i}`))
      const led = { ...plainRows.rows[0], cells: [[{ text: 'leads' }]], leads: true as const }
      const pages = pagesOf([{ ...plainRows, rows: [...plainRows.rows, led, ...plainRows.rows] }])
      const last = pages.map((page) => page.placed.at(-1)?.band.content)
      const shown = last.map((content) => (content?.kind === 'table-row' ? content.cells.map(textOf).join('') : ''))
      expect(shown).not.toContain('leads')
    }
  })

  it('give a column the width of its widest word, from those with room to spare', () => {
    const hash = '0123456789abcdef'.repeat(3)
    const [page] = pagesOf([
      {
        ...table([]),
        columns: [
          { title: 'Note', align: 'start', weight: 9 },
          { title: 'Hash', align: 'start', weight: 1 },
        ],
        rows: [{ cells: [[{ text: 'short' }], [{ text: hash }]] }],
      },
    ])
    const row = page?.placed[1]?.band.content
    expect(row?.kind === 'table-row' ? row.cells[1]?.lines.length : 0).toBe(1)
  })
})

describe('running text', () => {
  it('keeps two lines of a paragraph on either page, wherever the page ends', () => {
    const paragraph: Block = {
      kind: 'paragraph',
      style: 'body',
      text: [{ text: 'a sentence about tiles that is long enough. '.repeat(14) }],
    }
    for (let above = 30; above <= 47; above += 1) {
      const filler = Array.from({ length: above }, (): Block => ({
        kind: 'paragraph',
        style: 'body',
        text: [{ text: 'x' }],
      }))
      const pages = pagesOf([...filler, paragraph])
      const id = pages.at(-1)?.placed.at(-1)?.band.structure.at(-1)?.id
      const lines = pages.map((page) => page.placed.filter(({ band }) => band.structure.at(-1)?.id === id).length)
      expect(lines).not.toContain(1)
    }
  })

  it('never leaves a heading at the foot of a page', () => {
    for (let above = 25; above <= 40; above += 1) {
      const filler = Array.from({ length: above }, (): Block => ({
        kind: 'paragraph',
        style: 'body',
        text: [{ text: 'x' }],
      }))
      const pages = pagesOf([
        ...filler,
        { kind: 'heading', level: 2, text: 'Heading', inOutline: true },
        table(['one', 'two']),
      ])
      for (const page of pages) expect(page.placed.at(-1)?.band.structure.at(-1)?.tag).not.toBe('H2')
    }
  })
})

describe('groups', () => {
  it('stay on one page where they fit on one', () => {
    const filler = Array.from({ length: 28 }, (): Block => ({
      kind: 'paragraph',
      style: 'body',
      text: [{ text: 'x' }],
    }))
    const group: Block = {
      kind: 'group',
      blocks: Array.from({ length: 10 }, () => ({
        kind: 'paragraph',
        style: 'body',
        text: [{ text: 'in the group' }],
      })),
    }
    const pages = pagesOf([...filler, group])
    expect(pages.map((page) => page.placed.length)).toEqual([28, 10])
  })
})

describe('anchors', () => {
  it('belong to the first block that asks for one', () => {
    const heading = (text: string): Block => ({ kind: 'heading', level: 2, text, anchor: 'same', inOutline: false })
    const anchors = pagesOf([heading('one'), heading('two')]).flatMap((page) =>
      page.placed.map(({ band }) => band.anchors),
    )
    expect(anchors).toEqual([['s', 'same'], []])
  })
})
