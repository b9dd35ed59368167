import type { Anchor, PacketDocument } from '../../../../app/packet/document.ts'
import { pinAnchor } from '../../../../app/packet/document.ts'
import type { OutlineEntry, Strip } from '../measure/strip.ts'
import type { Page } from '../paginate/paginate.ts'
import { drawStrip, wishesOf } from './draw-strip.ts'
import { drawFurniture } from './page-furniture.ts'
import type { Pen } from './pen.ts'

/** Page, from 1, of every anchor on the pages. */
export function pagesOfAnchors(pages: readonly Page<Strip>[]): ReadonlyMap<Anchor, number> {
  const found = new Map<Anchor, number>()
  pages.forEach((page, i) => {
    for (const { band, repeated } of page.placed) {
      if (repeated) continue
      for (const anchor of [...band.anchors, ...anchorsInside(band)]) if (!found.has(anchor)) found.set(anchor, i + 1)
    }
  })
  return found
}

function anchorsInside({ content }: Strip): readonly Anchor[] {
  if (content.kind === 'photo-row') return content.cards.map((card) => card.card.anchor)
  return content.kind === 'plan' ? [...content.anchoredPins].map(pinAnchor) : []
}

interface Progress {
  readonly onPage: (page: number) => void
  /** Called between pages; waits or throws. */
  readonly pause: () => Promise<void>
}

/** Draws all pages, one after the other, so that no more than one page's pictures are in memory. Answers the outline. */
export async function drawPages(
  pen: Pen,
  drawn: { document: PacketDocument; pages: readonly Page<Strip>[] },
  progress: Progress,
): Promise<readonly { title: string; page: number }[]> {
  const outline = outlineWriter(pen)
  for (const [i, page] of drawn.pages.entries()) {
    await progress.pause()
    await pen.pictures.fetch(page.placed.flatMap(wishesOf))
    pen.pdf.addPage()
    drawFurniture(pen, drawn.document, { number: i + 1, of: drawn.pages.length })
    for (const placed of page.placed) {
      const topPt = pen.paper.topPt + placed.yPt
      if (!placed.repeated) for (const entry of entriesOf(placed.band)) outline.add(entry, { page: i + 1, topPt })
      drawStrip(pen, placed)
    }
    progress.onPage(i + 1)
  }
  pen.tags.close()
  return outline.entries
}

function entriesOf(strip: Strip): readonly OutlineEntry[] {
  return [strip.sectionEntry ?? null, strip.outline].filter((entry) => entry !== null)
}

function outlineWriter(pen: Pen) {
  const entries: { title: string; page: number }[] = []
  const parents: PDFKit.PDFOutline[] = [pen.pdf.outline]
  return {
    entries,
    add: (entry: OutlineEntry, at: { page: number; topPt: number }) => {
      entries.push({ title: entry.title, page: at.page })
      const parent = parents[Math.min(entry.level, parents.length) - 1] ?? pen.pdf.outline
      // pdfkit counts `left` from the right edge of the page.
      const options = { expanded: false, fit: false, top: Math.max(0, at.topPt - 8), left: pen.paper.widthPt, zoom: 0 }
      parents.splice(entry.level, Infinity, parent.addItem(entry.title, options))
    },
  }
}
