import type { Anchor, Block, PacketDocument, Section } from '../../../../app/packet/document.ts'
import type { BreakBefore } from '../paginate/paginate.ts'
import type { Paper } from '../paper.ts'
import type { Typesetter } from '../text/typeset.ts'
import { measurePhotoCards } from './measure-photo-cards.ts'
import { measureContents } from './measure-contents.ts'
import { measureFacts } from './measure-facts.ts'
import { measurePicture, measurePlan, measurePlot, measureRule, measureSignature } from './measure-rest.ts'
import { measureTable } from './measure-table.ts'
import { measureHeading, measureList, measureParagraph } from './measure-text.ts'
import type { Measuring } from './measuring.ts'
import { outlineOf } from './outline.ts'
import { COMPACT, USUAL } from './setting.ts'
import type { OutlineEntry, Strip } from './strip.ts'

type Measure = {
  readonly [K in Block['kind']]: (block: Extract<Block, { kind: K }>, measuring: Measuring) => readonly Strip[]
}

/** How each kind of block is measured. A page break has no height: it tells the next block where to stand. */
const MEASURE: Measure = {
  heading: measureHeading,
  paragraph: measureParagraph,
  list: measureList,
  facts: measureFacts,
  table: measureTable,
  plan: measurePlan,
  plot: measurePlot,
  picture: measurePicture,
  'photo-cards': measurePhotoCards,
  signature: measureSignature,
  contents: measureContents,
  rule: measureRule,
  'page-break': () => [],
  group: (group, measuring) => together(measureBlocks(group.blocks, measuring), measuring.paper.contentHeightPt),
}

interface Inputs {
  readonly paper: Paper
  readonly typesetter: Typesetter
  readonly pictureSizes: Measuring['pictureSizes']
}

/** Measures a whole document: every block as strips that are never cut, in order, knowing which may begin a page. */
export function measureDocument(document: PacketDocument, inputs: Inputs): readonly Strip[] {
  const outline = outlineOf(document)
  const claimed = new Set<Anchor>()
  let id = 0
  const measuring: Measuring = {
    ...inputs,
    contents: outline.contents,
    headings: outline.headings,
    within: [],
    setting: USUAL,
    nextId: () => (id += 1),
    claim: (anchor) => {
      const isNew = !claimed.has(anchor)
      claimed.add(anchor)
      return isNew
    },
  }
  return document.sections.flatMap((section) =>
    measureSection(section, outline.sections.get(section) ?? null, measuring),
  )
}

function measureSection(section: Section, entry: OutlineEntry | null, measuring: Measuring): readonly Strip[] {
  const within = [{ id: measuring.nextId(), tag: 'Sect' } as const]
  const isNew = measuring.claim(section.key)
  const [first, ...others] = measureBlocks(section.blocks, {
    ...measuring,
    within,
    setting: section.compact === true ? COMPACT : USUAL,
  })
  if (first === undefined) return []
  const anchors = isNew ? [section.key, ...first.anchors] : first.anchors
  const breakBefore = section.start === 'new-page' ? 'page' : first.breakBefore
  return [{ ...first, anchors, breakBefore, sectionEntry: entry }, ...others]
}

function measureBlocks(blocks: readonly Block[], measuring: Measuring): readonly Strip[] {
  const strips: Strip[] = []
  let before: BreakBefore | null = null
  for (const block of blocks) {
    const [first, ...others] = measureBlock(block, measuring)
    if (first !== undefined) strips.push(before === null ? first : { ...first, breakBefore: before }, ...others)
    before = nextBreak(block, before, first !== undefined)
  }
  return strips
}

/** What a block asks of the one after it: a heading keeps it on its page, a page break sends it to the next. */
function nextBreak(block: Block, asked: BreakBefore | null, hasStrips: boolean): BreakBefore | null {
  if (block.kind === 'page-break') return 'page'
  if (block.kind === 'heading') return 'never'
  return hasStrips ? null : asked
}

/** The table above holds a function for each kind, which the compiler can't tie to the block's own kind by itself. */
function measureBlock<K extends Block['kind']>(
  block: Extract<Block, { kind: K }>,
  measuring: Measuring,
): readonly Strip[] {
  const measure: (block: Extract<Block, { kind: K }>, measuring: Measuring) => readonly Strip[] =
    MEASURE[block.kind as K]
  return measure(block, measuring)
}

/** Makes breaks inside a group unwelcome, if the group fits on a page at all. */
function together(strips: readonly Strip[], pagePt: number): readonly Strip[] {
  const heightPt = strips.reduce((sum, strip, i) => sum + (i === 0 ? 0 : strip.gapBeforePt) + strip.heightPt, 0)
  if (heightPt > pagePt) return strips
  return strips.map((strip, i) =>
    i > 0 && strip.breakBefore === 'free' ? { ...strip, breakBefore: 'unwelcome' } : strip,
  )
}
