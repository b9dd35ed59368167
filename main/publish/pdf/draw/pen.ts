import type { Anchor } from '../../../../app/packet/document.ts'
import type { PhotoId } from '../../../../app/job/ids.ts'
import type { Paper } from '../paper.ts'
import type { Typesetter } from '../text/typeset.ts'
import type { PictureShelf } from './pictures.ts'
import type { Tags } from './tags.ts'

/** Everything that drawing needs beside the thing to draw. */
export interface Pen {
  readonly pdf: PDFKit.PDFDocument
  readonly paper: Paper
  readonly tags: Tags
  readonly typesetter: Typesetter
  readonly pictures: PictureShelf
  /** Page, from 1, of each anchor that the document has; links to any other are drawn as plain text. */
  readonly pageOf: ReadonlyMap<Anchor, number>
  /** Anchors that links asked for and the document does not have. */
  readonly brokenLinks: Set<Anchor>
}

/** A place on the page that content is drawn in, points from the page's top left corner. */
export interface Spot {
  readonly xPt: number
  readonly yPt: number
  readonly widthPt: number
  readonly heightPt: number
}

/** Pictures that drawing a strip will ask for, so that they can be read ahead. */
export interface PictureWish {
  readonly photoId: PhotoId
  readonly longEdgePx: number
}

/** The name that an anchor has in the PDF: ASCII, so that every viewer and `#nameddest=` finds it. */
export function destinationName(anchor: Anchor): string {
  return anchor.replace(/[^\x21-\x7e]/gu, (character) => encodeURIComponent(character))
}

/** Lets links lead to a point of the page. */
export function addAnchor(pen: Pen, anchor: Anchor, at: { readonly xPt: number; readonly yPt: number }): void {
  pen.pdf.addNamedDestination(destinationName(anchor), 'XYZ', Math.max(0, at.xPt), Math.max(0, at.yPt - 6), null)
}

/** The anchor, if the document has it. Notes it as broken if not. */
export function resolved(pen: Pen, anchor: Anchor | null): Anchor | null {
  if (anchor === null) return null
  if (pen.pageOf.has(anchor)) return anchor
  pen.brokenLinks.add(anchor)
  return null
}
