import type { PacketDocument } from '../../../../app/packet/document.ts'
import { HAIRLINE, type TextStyle, TYPE, WATERMARK } from '../text/text-style.ts'
import { drawLine } from './draw-text.ts'
import type { Pen } from './pen.ts'

const WATERMARK_LARGEST_PT = 72

/** Draws what every page has: the watermark of a draft behind everything, and the running header. */
export function drawFurniture(pen: Pen, document: PacketDocument, page: { number: number; of: number }): void {
  pen.tags.artifact('Pagination', () => {
    if (document.watermark !== null) drawWatermark(pen, document.watermark)
    drawHeader(pen, document, page)
  })
}

function drawHeader(pen: Pen, document: PacketDocument, page: { number: number; of: number }): void {
  const { paper, typesetter } = pen
  const right = paper.leftPt + paper.contentWidthPt
  const ending = typesetter.lines(
    [{ text: `${document.revisionLabel}  ·  page ${page.number} of ${page.of}` }],
    TYPE.running,
    Infinity,
  )[0]
  if (ending === undefined) return
  const top = paper.headerBaselinePt - ending.baselinePt
  drawLine(pen, ending, { xPt: right - ending.widthPt, yPt: top })
  const roomPt = paper.contentWidthPt - ending.widthPt - 24
  const label = typesetter.lines([{ text: document.jobLabel }], TYPE.running, roomPt)[0]
  if (label !== undefined) drawLine(pen, label, { xPt: paper.leftPt, yPt: top })
  pen.pdf.lineWidth(0.4).moveTo(paper.leftPt, paper.headerRulePt).lineTo(right, paper.headerRulePt).stroke(HAIRLINE)
}

/** Light words from the lower left to the upper right, as large as the page lets them be. */
function drawWatermark(pen: Pen, words: string): void {
  const { pdf, paper, typesetter } = pen
  const middle = { xPt: paper.widthPt / 2, yPt: paper.heightPt / 2 }
  const diagonalPt = Math.hypot(paper.contentWidthPt, paper.contentHeightPt) * 0.92
  const style = (sizePt: number): TextStyle => ({ sizePt, leadingPt: sizePt, face: 'strong', colour: WATERMARK })
  const atTen = typesetter.lines([{ text: words }], style(10), Infinity)[0]?.widthPt ?? 1
  const sizePt = Math.min(WATERMARK_LARGEST_PT, (diagonalPt / Math.max(atTen, 1)) * 10)
  const line = typesetter.lines([{ text: words }], style(sizePt), Infinity)[0]
  if (line === undefined) return
  const turnDeg = (Math.atan2(paper.contentHeightPt, paper.contentWidthPt) * -180) / Math.PI
  pdf.save().rotate(turnDeg, { origin: [middle.xPt, middle.yPt] })
  drawLine(pen, line, { xPt: middle.xPt - line.widthPt / 2, yPt: middle.yPt - line.baselinePt + sizePt * 0.33 })
  pdf.restore()
}
