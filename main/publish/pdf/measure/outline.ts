import type { Block, HeadingBlock, PacketDocument, Section } from '../../../../app/packet/document.ts'
import type { OutlineEntry } from './strip.ts'

/** What the outline and the contents name, by where it is. */
export interface Outline {
  readonly sections: ReadonlyMap<Section, OutlineEntry>
  readonly headings: ReadonlyMap<HeadingBlock, OutlineEntry>
  /** What a contents block lists, in order. */
  readonly contents: readonly OutlineEntry[]
}

/**
 * Sections are the outline's first level, headings under them the second and third. A section's own title as its first
 * heading is not named twice. The contents leave out the cover, the section that they are in, and the third level.
 */
export function outlineOf(document: PacketDocument): Outline {
  const sections = new Map<Section, OutlineEntry>()
  const headings = new Map<HeadingBlock, OutlineEntry>()
  const contents: OutlineEntry[] = []
  document.sections.forEach((section, index) => {
    const entry: OutlineEntry = { title: section.title, level: 1, anchor: section.key }
    sections.set(section, entry)
    const below = headingEntries(section)
    for (const [heading, found] of below) headings.set(heading, found)
    const isListed = index > 0 && !section.blocks.some((block) => block.kind === 'contents')
    if (isListed) contents.push(entry, ...[...below.values()].filter((found) => found.level === 2))
  })
  return { sections, headings, contents }
}

function headingEntries(section: Section): ReadonlyMap<HeadingBlock, OutlineEntry> {
  const found = new Map<HeadingBlock, OutlineEntry>()
  headingsOf(section.blocks).forEach((heading, i) => {
    const repeatsTitle = i === 0 && heading.text === section.title
    if (!heading.inOutline || repeatsTitle) return
    const anchor = heading.anchor ?? `${section.key}-heading-${i + 1}`
    found.set(heading, { title: heading.text, level: heading.level === 3 ? 3 : 2, anchor })
  })
  return found
}

function headingsOf(blocks: readonly Block[]): readonly HeadingBlock[] {
  return blocks.flatMap((block) => {
    if (block.kind === 'heading') return [block]
    return block.kind === 'group' ? headingsOf(block.blocks) : []
  })
}
