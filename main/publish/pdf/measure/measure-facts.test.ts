import { describe, expect, it } from 'vitest'
import type { Block, FactsBlock } from '../../../../app/packet/document.ts'
import { stormWalkDocument } from '../fixtures/storm-walk-document.ts'
import { paginate } from '../paginate/paginate.ts'
import { paperOf } from '../paper.ts'
import { typesetter } from '../text/typeset.ts'
import { measureDocument } from './measure-document.ts'
import type { Strip } from './strip.ts'
import type { TextBox } from './strip-content.ts'

const paper = paperOf('letter')

function pagesOf(blocks: readonly Block[]) {
  const section = { key: 's', title: 'Section', start: 'new-page', blocks } as const
  const document = { ...stormWalkDocument(), sections: [section] }
  const strips = measureDocument(document, { paper, typesetter: typesetter(), pictureSizes: new Map() })
  return paginate(strips, paper.contentHeightPt)
}

const words = (box: TextBox) => box.lines.flatMap(({ pieces }) => pieces.map(({ text }) => text)).join('')

function labels({ content }: Strip): readonly string[] {
  return content.kind === 'facts-row' ? content.cells.map(({ label }) => words(label)) : []
}

const row = (label: string, text: string) => ({ label, value: [{ text }] })
const long = 'a sentence about tiles that is long enough. '.repeat(6)

describe('facts in two columns', () => {
  const rows = [row('One', 'x'), row('Long', long), { ...row('Wide', 'x'), wide: true as const }, row('Two', 'x')]
  const strips = pagesOf([{ kind: 'facts', columns: 2, rows }]).flatMap(({ placed }) => placed.map(({ band }) => band))

  it('stand side by side as far as they are short; long and wide ones follow, each on its own', () => {
    expect(strips.map(labels)).toEqual([['One', 'Two'], ['Long'], ['Wide']])
  })

  it('give a long value the width that is left of the page', () => {
    const [, second] = strips
    const value = second?.content.kind === 'facts-row' ? second.content.cells[0]?.value : undefined
    expect((value?.xPt ?? 0) + (value?.widthPt ?? 0)).toBeCloseTo(paper.contentWidthPt, 6)
  })
})

describe('facts over two pages', () => {
  const facts: FactsBlock = {
    kind: 'facts',
    columns: 1,
    continued: 'F-7, continued',
    rows: Array.from({ length: 6 }, (_, i) => row(`Row ${i}`, 'x')),
  }

  it.each([28, 29, 30, 31, 32, 33, 34, 35])(
    'say what goes on, and leave no row alone at either end: after %i lines',
    (above) => {
      const filler = Array.from({ length: above }, (): Block => ({
        kind: 'paragraph',
        style: 'body',
        text: [{ text: 'x' }],
      }))
      const pages = pagesOf([...filler, facts])
      const rows = pages.map(({ placed }) => placed.filter(({ band }) => band.content.kind === 'facts-row').length)
      expect(rows.reduce((sum, count) => sum + count, 0)).toBe(6)
      expect(rows).not.toContain(1)
      const [first] = pages[1]?.placed ?? []
      const isBroken = rows.filter((count) => count > 0).length > 1
      expect(isBroken ? first?.repeated : false).toBe(isBroken)
      if (isBroken)
        expect(first?.band.content.kind === 'lines' ? words(first.band.content.box) : '').toBe('F-7, continued')
    },
  )
})
