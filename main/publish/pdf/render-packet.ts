import type { Writable } from 'node:stream'
import type { Block, PacketDocument, PictureBlock } from '../../../app/packet/document.ts'
import type { PhotoId } from '../../../app/job/ids.ts'
import { drawPages, pagesOfAnchors } from './draw/draw-pages.ts'
import { numberPages, openPdf, sendTo } from './draw/pdf-file.ts'
import type { Pen } from './draw/pen.ts'
import { pictureShelf, type PictureSource } from './draw/pictures.ts'
import { tagsFor } from './draw/tags.ts'
import { measureDocument } from './measure/measure-document.ts'
import type { Measuring } from './measure/measuring.ts'
import { paginate } from './paginate/paginate.ts'
import { paperOf } from './paper.ts'
import { typesetter } from './text/typeset.ts'

export type { PictureSource } from './draw/pictures.ts'

/** Where pictures come from and where the PDF goes. */
export interface PacketTarget {
  readonly pictures: PictureSource
  readonly out: Writable
}

export interface RenderOptions {
  /** Called with each page's number, from 1, when it is drawn. */
  readonly onPage?: (page: number) => void
  /** Stops the work between two pages with the signal's reason; what was written so far is no whole PDF. */
  readonly signal?: AbortSignal
}

export interface RenderedPacket {
  readonly pages: number
  /** Sections and headings in order, with the page that each begins on, from 1. */
  readonly outline: readonly { readonly title: string; readonly page: number }[]
  /** Characters that no font has; a box stands in their place. */
  readonly missingCharacters: readonly string[]
  /** Anchors that links ask for and the document lacks; those links are plain text. */
  readonly brokenLinks: readonly string[]
}

/**
 * Writes a packet as PDF: blocks are measured, put on pages, and drawn one page at a time into the stream, which is ended.
 * The same document and pictures give the same bytes. Rejects when the stream fails, a picture source rejects, or the
 * signal aborts; the stream is then destroyed.
 */
export async function renderPacket(
  document: PacketDocument,
  to: PacketTarget,
  options: RenderOptions = {},
): Promise<RenderedPacket> {
  try {
    return await render(document, to, options)
  } catch (cause) {
    to.out.destroy()
    throw cause
  }
}

async function render(document: PacketDocument, to: PacketTarget, options: RenderOptions): Promise<RenderedPacket> {
  const paper = paperOf(document.paper)
  const setter = typesetter()
  const pictureSizes = await sizesOfPictures(document, to.pictures)
  const strips = measureDocument(document, { paper, typesetter: setter, pictureSizes })
  const filled = paginate(strips, paper.contentHeightPt)
  // A file without pages is no PDF.
  const pages = filled.length === 0 ? [{ placed: [] }] : filled
  const pdf = openPdf(document, paper)
  const sending = sendTo(pdf, to.out)
  const pen: Pen = {
    pdf,
    paper,
    tags: tagsFor(pdf),
    typesetter: setter,
    pictures: pictureShelf(pdf, to.pictures),
    pageOf: pagesOfAnchors(pages),
    brokenLinks: new Set(),
  }
  const pause = async () => {
    options.signal?.throwIfAborted()
    await sending.drained()
  }
  const outline = await drawPages(pen, { document, pages }, { onPage: options.onPage ?? (() => undefined), pause })
  numberPages(pdf)
  pdf.end()
  await sending.ended
  return { pages: pages.length, outline, missingCharacters: [...setter.missing], brokenLinks: [...pen.brokenLinks] }
}

/** Sizes of the pictures that are set at their own proportions, which measuring needs. */
async function sizesOfPictures(document: PacketDocument, pictures: PictureSource): Promise<Measuring['pictureSizes']> {
  const sizes = new Map<PhotoId, { widthPx: number; heightPx: number } | null>()
  for (const block of picturesOf(document)) {
    const picture = await pictures.load(block.photoId, { longEdgePx: 400 })
    sizes.set(block.photoId, picture === null ? null : { widthPx: picture.widthPx, heightPx: picture.heightPx })
  }
  return sizes
}

function picturesOf(document: PacketDocument): readonly PictureBlock[] {
  return document.sections
    .flatMap((section) => section.blocks)
    .flatMap((block): readonly Block[] => (block.kind === 'group' ? block.blocks : [block]))
    .filter((block) => block.kind === 'picture')
}
