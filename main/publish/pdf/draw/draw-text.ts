import type { TextBox } from '../measure/strip-content.ts'
import type { OpenFont } from '../text/font-shelf.ts'
import type { PlacedGlyph } from '../text/shape.ts'
import type { Piece, TextLine } from '../text/typeset.ts'
import { destinationName, type Pen, resolved } from './pen.ts'
import { INK } from '../text/text-style.ts'
import { type EmbeddedFont, pdfkitInside, pdfString } from './pdfkit-inside.ts'

/** Dots of Arabic letters have no character of their own: for the font they are a joiner, for the text they are nothing. */
const JOINER = 0x200d
const NO_TEXT = '/Span <</ActualText <FEFF> >>'

/** Draws a text box: its lines one under the other, at the start or end of its width. Links become live. */
export function drawTextBox(pen: Pen, box: TextBox, origin: { xPt: number; yPt: number }): void {
  let y = origin.yPt + box.yPt
  for (const line of box.lines) {
    const atRight = (box.align === 'end') !== line.rtl
    const x = origin.xPt + box.xPt + (atRight ? box.widthPt - line.widthPt : 0)
    drawLine(pen, line, { xPt: x, yPt: y })
    y += line.heightPt
  }
}

/** Draws a line with its left end at a point. Stretches of one link are an element of their own. */
export function drawLine(pen: Pen, line: TextLine, at: { xPt: number; yPt: number }): void {
  const baseline = at.yPt + line.baselinePt
  for (const stretch of byLink(line.pieces)) {
    const link = resolved(pen, stretch[0]?.link ?? null)
    // A link that leads nowhere must not look like one.
    const isDead = link === null && stretch[0]?.link != null
    const draw = () =>
      stretch.forEach((piece) =>
        drawPiece(pen, isDead ? { ...piece, colour: INK } : piece, { xPt: at.xPt + piece.xPt, yPt: baseline }),
      )
    if (link === null) {
      pen.tags.content(draw)
      continue
    }
    const x = at.xPt + (stretch[0]?.xPt ?? 0)
    const widthPt = stretch.reduce((sum, piece) => sum + piece.widthPt, 0)
    pen.tags.inside('Link', {}, (element) => {
      pen.tags.content(() => {
        draw()
        underline(pen, { x, baseline, widthPt, colour: stretch[0]?.colour ?? '#000000' })
      })
      addLink(
        pen,
        { xPt: x, yPt: at.yPt, widthPt, heightPt: line.heightPt },
        { anchor: link, element, says: stretch.map((p) => p.text).join('') },
      )
    })
  }
}

/** Makes an area of the page lead to an anchor. */
export function addLink(
  pen: Pen,
  area: { xPt: number; yPt: number; widthPt: number; heightPt: number },
  link: { anchor: string; element: PDFKit.PDFStructureElement; says: string },
): void {
  const options = { structParent: link.element, Contents: pdfString(link.says) }
  pen.pdf.goTo(area.xPt, area.yPt, area.widthPt, area.heightPt, destinationName(link.anchor), options)
}

function byLink(pieces: readonly Piece[]): readonly (readonly Piece[])[] {
  const stretches: Piece[][] = []
  for (const piece of pieces) {
    const last = stretches.at(-1)
    if (last !== undefined && last[0]?.link === piece.link) last.push(piece)
    else stretches.push([piece])
  }
  return stretches
}

function underline(pen: Pen, at: { x: number; baseline: number; widthPt: number; colour: string }): void {
  const y = at.baseline + 1.8
  pen.pdf
    .lineWidth(0.35)
    .moveTo(at.x, y)
    .lineTo(at.x + at.widthPt, y)
    .stroke(at.colour)
}

/** Draws glyphs with the left end of their base line at a point. */
export function drawPiece(pen: Pen, piece: Piece, at: { xPt: number; yPt: number }): void {
  const { pdf } = pen
  if (piece.glyphs === null) {
    const highPt = piece.sizePt * 0.66
    pdf.markContent('Span', { actual: piece.text })
    pdf
      .lineWidth(0.6)
      .rect(at.xPt + 0.5, at.yPt - highPt, piece.widthPt - 1, highPt)
      .stroke(piece.colour)
    pdf.endMarkedContent()
    return
  }
  chooseFont(pdf, piece.glyphs.font)
  writeGlyphs(pdf, piece.glyphs.run.glyphs, { ...at, sizePt: piece.sizePt, colour: piece.colour })
}

/** Makes a font the current one. pdfkit keeps what was registered under a name, and embeds it once. */
function chooseFont(pdf: PDFKit.PDFDocument, font: OpenFont): void {
  const name = font.file.path
  if (!pdfkitInside(pdf).hasFont(name)) pdf.registerFont(name, font.sfnt)
  pdf.font(name)
}

/** Writes glyphs of the current font. The page's y runs down, so that letters are turned over to stand upright. */
function writeGlyphs(
  pdf: PDFKit.PDFDocument,
  glyphs: readonly PlacedGlyph[],
  at: { xPt: number; yPt: number; sizePt: number; colour: string },
): void {
  const font = pdfkitInside(pdf).currentFont()
  pdf.page.fonts[font.id] ??= font.ref()
  pdf.fillColor(at.colour)
  const out = [`BT /${font.id} ${short(at.sizePt)} Tf`]
  const scale = at.sizePt / 1000
  let x = at.xPt
  let array = ''
  const moveTo = (toX: number, toY: number) => out.push(`1 0 0 -1 ${short(toX)} ${short(toY)} Tm`)
  const flush = () => {
    if (array !== '') out.push(`[${array}] TJ`)
    array = ''
  }
  moveTo(x, at.yPt)
  for (const glyph of glyphs) {
    const code = `<${codeOf(font, glyph).toString(16).padStart(4, '0')}>`
    const isMoved = glyph.xOffset !== 0 || glyph.yOffset !== 0
    const isMark = glyph.codePoints.length === 0
    if (isMoved || isMark) {
      flush()
      moveTo(x + glyph.xOffset * scale, at.yPt - glyph.yOffset * scale)
      out.push(isMark ? `${NO_TEXT} BDC\n${code} Tj\nEMC` : `${code} Tj`)
    } else {
      const adjust = glyph.width - glyph.advance
      array += Math.abs(adjust) < 0.01 ? code : `${code}${short(adjust)}`
    }
    x += glyph.advance * scale
    if (isMoved || isMark) moveTo(x, at.yPt)
  }
  flush()
  out.push('ET')
  pdf.addContent(out.join('\n').replaceAll('><', ''))
}

/** Codes of a font in a PDF, by glyph and by what it stands for. */
const codes = new WeakMap<EmbeddedFont, KnownCodes>()

interface KnownCodes {
  readonly byMeaning: Map<string, number>
  /** Glyphs of kept runs come again as the same objects, which are quicker to find. */
  readonly byGlyph: WeakMap<PlacedGlyph, number>
}

/**
 * The code of a glyph in the embedded font. A glyph that stands for different characters (one shape under different dots)
 * has a code for each, so that text can be searched and copied.
 */
function codeOf(font: EmbeddedFont, glyph: PlacedGlyph): number {
  const known = codes.get(font) ?? { byMeaning: new Map<string, number>(), byGlyph: new WeakMap<PlacedGlyph, number>() }
  codes.set(font, known)
  const quick = known.byGlyph.get(glyph)
  if (quick !== undefined) return quick
  const key = `${glyph.id} ${glyph.codePoints.join(' ')}`
  const code = known.byMeaning.get(key) ?? font.subset.glyphs.push(glyph.id) - 1
  known.byMeaning.set(key, code)
  known.byGlyph.set(glyph, code)
  font.widths[code] ??= glyph.width
  font.unicode[code] ??= glyph.codePoints.length === 0 ? [JOINER] : glyph.codePoints
  return code
}

function short(n: number): string {
  return String(Math.round(n * 1000) / 1000)
}
