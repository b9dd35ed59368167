import type { ContentsBlock } from '../../../../app/packet/document.ts'
import { QUIET, TYPE } from '../text/text-style.ts'
import { linesHeight, type Measuring, plainStrip, textBox, words } from './measuring.ts'
import type { OutlineEntry, Strip } from './strip.ts'

/** The contents share their page with a heading. */
const HEADING_PT = 48

/** The contents: a row for each section and what is listed in it; page numbers come when pages are known. */
export function measureContents(_block: ContentsBlock, measuring: Measuring): readonly Strip[] {
  const toc = { id: measuring.nextId(), tag: 'TOC' } as const
  return onOnePage(measuring).map((entry, i) => {
    const { heightPt, gapBeforePt, title } = rowOf(entry, i, measuring)
    const content = { kind: 'contents-row', title, anchor: entry.anchor, level: entry.level } as const
    const structure = [...measuring.within, toc, { id: measuring.nextId(), tag: 'TOCI' } as const]
    return { ...plainStrip(measuring, content, { heightPt, gapBeforePt }), structure }
  })
}

/**
 * What is listed, on one page as long as the sections alone fit on it: the section with the most lines under it gives
 * its lines up first. The PDF's own outline names all of them.
 */
function onOnePage(measuring: Measuring): readonly OutlineEntry[] {
  const roomPt = measuring.paper.contentHeightPt - HEADING_PT
  const sections = sectionsOf(measuring.contents)
  for (;;) {
    const listed = sections.flatMap(({ title, below }) => [title, ...below])
    const heightPt = listed.reduce((sum, entry, i) => {
      const row = rowOf(entry, i, measuring)
      return sum + row.gapBeforePt + row.heightPt
    }, 0)
    const longest = Math.max(...sections.map(({ below }) => below.length))
    if (heightPt <= roomPt || longest <= 0) return listed
    const given = sections.find(({ below }) => below.length === longest)
    if (given !== undefined) given.below = []
  }
}

function sectionsOf(contents: readonly OutlineEntry[]): { title: OutlineEntry; below: readonly OutlineEntry[] }[] {
  const sections: { title: OutlineEntry; below: readonly OutlineEntry[] }[] = []
  for (const entry of contents) {
    const last = sections.at(-1)
    if (entry.level === 1 || last === undefined) sections.push({ title: entry, below: [] })
    else last.below = [...last.below, entry]
  }
  return sections
}

function rowOf(entry: OutlineEntry, index: number, measuring: Measuring) {
  const indentPt = entry.level === 1 ? 0 : 16
  const title = textBox(measuring, words(entry.title), {
    style: entry.level === 1 ? { ...TYPE.body, face: 'strong' } : { ...TYPE.body, colour: QUIET },
    xPt: indentPt,
    yPt: 0,
    widthPt: measuring.paper.contentWidthPt - 60 - indentPt,
  })
  return {
    title,
    heightPt: linesHeight(title.lines) + 1,
    gapBeforePt: index === 0 ? 10 : entry.level === 1 ? 6 : 1,
  }
}
