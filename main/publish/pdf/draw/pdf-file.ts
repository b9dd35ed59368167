import { once } from 'node:events'
import type { Writable } from 'node:stream'
import { finished } from 'node:stream/promises'
import PDFDocument from 'pdfkit'
import type { PacketDocument } from '../../../../app/packet/document.ts'
import type { Paper } from '../paper.ts'
import { pdfkitInside } from './pdfkit-inside.ts'

/**
 * Text that pdfkit writes in two places: into the info dictionary as it is, and into the XMP packet as XML, where it
 * does not escape it. There pdfkit turns the value into a string, which is the place to escape.
 */
class InfoText extends String {
  override toString(): string {
    return this.valueOf()
      .replace(/[^\t\n\r\u{20}-\u{D7FF}\u{E000}-\u{FFFD}\u{10000}-\u{10FFFF}]/gu, '')
      .replaceAll('&', '&amp;')
      .replaceAll('<', '&lt;')
      .replaceAll('>', '&gt;')
  }
}

/**
 * A PDF that pages can be added to: PDF 1.7, tagged, declared PDF/A-2 level A, sRGB output intent, title shown. Its times
 * and its identifier come from the document alone, so that the same document gives the same bytes.
 */
export function openPdf(document: PacketDocument, paper: Paper): PDFKit.PDFDocument {
  const createdAt = new Date(document.createdAtMs)
  const text = (words: string): string => {
    const boxed: unknown = new InfoText(words)
    return boxed as string
  }
  const pdf = new PDFDocument({
    autoFirstPage: false,
    size: [paper.widthPt, paper.heightPt],
    margin: 0,
    pdfVersion: '1.7',
    subset: 'PDF/A-2a',
    tagged: true,
    lang: 'en-US',
    displayTitle: true,
    // No default font: the standard ones are not embedded, which PDF/A does not allow.
    font: '',
    fontLayoutCache: false,
    info: {
      Title: text(document.title),
      Author: text(document.author),
      Subject: text(`${document.jobLabel}, ${document.revisionLabel}`),
      ...(document.keywords === undefined ? {} : { Keywords: text(document.keywords) }),
      Creator: 'Battenbook',
      Producer: 'Battenbook',
      CreationDate: createdAt,
      ModDate: createdAt,
    },
  })
  // A name tree is searched by halving, in the order of bytes (ISO 32000-1, 7.9.6); pdfkit sorts names for readers.
  pdfkitInside(pdf).destinations._compareKeys = (a, b) => (a < b ? -1 : a > b ? 1 : 0)
  return pdf
}

/** The way of a PDF into a stream. */
interface Sending {
  /** Waits where the stream is slower than the pages, so that memory stays bounded. Rejects when the stream has failed. */
  readonly drained: () => Promise<void>
  /** Settles when the stream has taken everything, or has failed. */
  readonly ended: Promise<void>
}

/** Sends the PDF to a stream as it grows, and ends the stream with it. */
export function sendTo(pdf: PDFKit.PDFDocument, out: Writable): Sending {
  const ended = finished(out)
  // A failure is met where it is waited for; until then it must not count as unhandled.
  ended.catch(() => undefined)
  pdf.on('data', (chunk: Buffer) => out.write(chunk))
  pdf.on('end', () => out.end())
  return {
    ended,
    drained: async () => {
      if (out.destroyed) await ended
      if (out.writableNeedDrain) await Promise.race([once(out, 'drain'), ended])
    },
  }
}

/** Page labels (ISO 32000-1, 12.4.2): the number printed on a page is the one that viewers show. */
export function numberPages(pdf: PDFKit.PDFDocument): void {
  const labels = pdf.ref({ Nums: [0, { S: 'D', St: 1 }] })
  labels.end(undefined)
  pdfkitInside(pdf).catalogue['PageLabels'] = labels
}
