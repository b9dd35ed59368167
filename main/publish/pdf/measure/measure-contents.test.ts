import { describe, expect, it } from 'vitest'
import type { PacketDocument, Section } from '../../../../app/packet/document.ts'
import { stormWalkDocument } from '../fixtures/storm-walk-document.ts'
import { paginate } from '../paginate/paginate.ts'
import { paperOf } from '../paper.ts'
import { typesetter } from '../text/typeset.ts'
import { measureDocument } from './measure-document.ts'

const paper = paperOf('letter')

function section(title: string, below: number): Section {
  const headings = Array.from({ length: below }, (_, i) => ({
    kind: 'heading' as const,
    level: 2 as const,
    text: `${title} ${i + 1}`,
    inOutline: true,
  }))
  return { key: title, title, start: 'new-page', blocks: headings }
}

/** Titles that the contents list, page by page. */
function listed(sections: readonly Section[]): readonly (readonly string[])[] {
  const contents: Section = { key: 'contents', title: 'Contents', start: 'new-page', blocks: [{ kind: 'contents' }] }
  const document: PacketDocument = { ...stormWalkDocument(), sections: [section('Cover', 0), contents, ...sections] }
  const strips = measureDocument(document, { paper, typesetter: typesetter(), pictureSizes: new Map() })
  return paginate(strips, paper.contentHeightPt).flatMap(({ placed }) => {
    const rows = placed.flatMap(({ band: { content } }) =>
      content.kind === 'contents-row'
        ? [content.title.lines.map((line) => line.pieces.map(({ text }) => text).join('')).join(' ')]
        : [],
    )
    return rows.length === 0 ? [] : [rows]
  })
}

describe('the contents', () => {
  it('list sections and what stands under them', () => {
    expect(listed([section('Roof', 2), section('Photos', 1)])).toEqual([
      ['Roof', 'Roof 1', 'Roof 2', 'Photos', 'Photos 1'],
    ])
  })

  it('keep to one page: the section with the most lines gives up its own', () => {
    const [page, ...more] = listed([section('Roof', 3), section('Findings', 45), section('Photos', 2)])
    expect(more).toEqual([])
    expect(page).toEqual(['Roof', 'Roof 1', 'Roof 2', 'Roof 3', 'Findings', 'Photos', 'Photos 1', 'Photos 2'])
  })

  it('name every section, also when those alone take more than a page', () => {
    const sections = Array.from({ length: 60 }, (_, i) => section(`Section ${i + 1}`, 1))
    const pages = listed(sections)
    expect(pages.length).toBeGreaterThan(1)
    expect(pages.flat()).toEqual(sections.map(({ title }) => title))
  })
})
