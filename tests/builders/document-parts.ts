import type { Anchor, Block, Inline, PacketDocument, Section } from '../../app/packet/document.ts'
import { pinAnchor } from '../../app/packet/document.ts'

/** Every block of a section, those inside groups as well. */
export function blocksOf(section: Section): readonly Block[] {
  return section.blocks.flatMap((block): readonly Block[] =>
    block.kind === 'group' ? [block, ...block.blocks] : [block],
  )
}

/** Every run of text with its link, in reading order; headings, labels and alternative texts come as plain runs. */
export function inlinesOf(block: Block): readonly Inline[] {
  switch (block.kind) {
    case 'heading':
      return [{ text: block.text }]
    case 'paragraph':
      return block.text
    case 'list':
      return block.items.flat()
    case 'facts':
      return block.rows.flatMap(({ label, value }) => [{ text: label }, ...value])
    case 'table':
      return [
        { text: block.summary },
        ...block.columns.map(({ title }) => ({ text: title })),
        ...block.rows.flatMap(({ cells }) => cells.flat()),
      ]
    case 'plan':
      return [{ text: block.alt }]
    case 'plot':
      return [{ text: block.plot.alt }]
    case 'picture':
      return [{ text: block.alt }, ...block.caption]
    case 'photo-cards':
      return block.cards.flatMap(({ alt, title, lines }) => [{ text: alt }, ...title, ...lines.flat()])
    case 'signature':
      return block.lines.flatMap(({ label, value }) => [{ text: label }, { text: value }])
    case 'group':
    case 'contents':
    case 'rule':
    case 'page-break':
      return []
  }
}

/** Anchors that a block sets, those of the plan's pins among them. */
function anchorsOf(block: Block): readonly Anchor[] {
  switch (block.kind) {
    case 'heading':
      return block.anchor === undefined ? [] : [block.anchor]
    case 'table':
      return block.rows.flatMap(({ anchor }) => (anchor === undefined ? [] : [anchor]))
    case 'plan':
      return block.drawing.pins.map(({ label }) => pinAnchor(label))
    case 'photo-cards':
      return block.cards.map(({ anchor }) => anchor)
    case 'paragraph':
    case 'list':
    case 'facts':
    case 'picture':
    case 'group':
    case 'signature':
    case 'contents':
    case 'rule':
    case 'plot':
    case 'page-break':
      return []
  }
}

/** All anchors of a document, section keys first in each section. */
export function documentAnchors({ sections }: PacketDocument): readonly Anchor[] {
  return sections.flatMap((section) => [section.key, ...blocksOf(section).flatMap(anchorsOf)])
}

/** All links of a document. */
export function documentLinks({ sections }: PacketDocument): readonly Anchor[] {
  return sections.flatMap((section) =>
    blocksOf(section).flatMap((block) => inlinesOf(block).flatMap(({ link }) => (link === undefined ? [] : [link]))),
  )
}

/** The text of a block as one line. */
export function textOf(block: Block): string {
  return inlinesOf(block)
    .map(({ text }) => text)
    .join('')
}

/** The text of a whole section, a line for each block. */
export function sectionText(document: PacketDocument, key: string): string {
  const section = document.sections.find((candidate) => candidate.key === key)
  return section === undefined ? '' : blocksOf(section).map(textOf).join('\n')
}
