import { findingAnchor, pinAnchor } from '../../../../app/packet/document.ts'
import type { Pen as LinePen, PlanMark, PlanTarget } from '../../../../app/roof/plan-sheet/marks.ts'
import { planSheet } from '../../../../app/roof/plan-sheet/plan-sheet.ts'
import type { PlanContent, PlotContent } from '../measure/strip-content.ts'
import type { TextStyle } from '../text/text-style.ts'
import { addLink, drawPiece } from './draw-text.ts'
import { addAnchor, type Pen, resolved, type Spot } from './pen.ts'

/** Draws a plan as vectors, true to its scale, its pins linked to their findings and open to links themselves. */
export function drawPlan(pen: Pen, content: PlanContent, spot: Spot): void {
  const sheet = planSheet(content.drawing, { widthPt: spot.widthPt, heightPt: spot.heightPt, scales: pen.paper.scales })
  const box: [number, number, number, number] = [spot.xPt, spot.yPt, spot.xPt + spot.widthPt, spot.yPt + spot.heightPt]
  pen.tags.inside('Figure', { alt: `${content.alt} Scale ${sheet.scale.name}.`, bbox: box }, () => {
    pen.tags.content(() => drawMarks(pen, sheet.marks, spot))
  })
  for (const target of sheet.targets)
    drawTarget(pen, target, { spot, isAnchor: content.anchoredPins.has(target.pinLabel) })
}

/** Draws a plot as vectors, as one figure with its words. */
export function drawPlot(pen: Pen, { plot, scale }: PlotContent, spot: Spot): void {
  const box: [number, number, number, number] = [
    spot.xPt,
    spot.yPt,
    spot.xPt + plot.widthPt * scale,
    spot.yPt + plot.heightPt * scale,
  ]
  pen.tags.inside('Figure', { alt: plot.alt, bbox: box }, () => {
    pen.tags.content(() => {
      pen.pdf.save().translate(spot.xPt, spot.yPt).scale(scale)
      drawMarks(pen, plot.marks, { xPt: 0, yPt: 0 })
      pen.pdf.restore()
    })
  })
}

function drawTarget(pen: Pen, target: PlanTarget, at: { spot: Spot; isAnchor: boolean }): void {
  const xPt = at.spot.xPt + target.at.xPt - target.halfWidthPt
  const yPt = at.spot.yPt + target.at.yPt - target.halfHeightPt
  if (at.isAnchor) addAnchor(pen, pinAnchor(target.pinLabel), { xPt: 0, yPt: yPt - 60 })
  const anchor = resolved(pen, findingAnchor(target.pinLabel))
  if (anchor === null) return
  const area = { xPt, yPt, widthPt: target.halfWidthPt * 2, heightPt: target.halfHeightPt * 2 }
  pen.tags.inside('Link', { alt: `Finding ${target.pinLabel}` }, (element) => {
    addLink(pen, area, { anchor, element, says: `Finding ${target.pinLabel}` })
  })
}

/** Draws marks of a plan with the sheet's top left corner at a point. */
export function drawMarks(pen: Pen, marks: readonly PlanMark[], corner: { xPt: number; yPt: number }): void {
  pen.pdf.save().translate(corner.xPt, corner.yPt).lineJoin('round')
  for (const mark of marks) drawMark(pen, mark)
  pen.pdf.restore()
}

function drawMark(pen: Pen, mark: PlanMark): void {
  const { pdf } = pen
  switch (mark.kind) {
    case 'path': {
      const [first, ...others] = mark.points
      if (first === undefined) return
      pdf.moveTo(first.xPt, first.yPt)
      for (const point of others) pdf.lineTo(point.xPt, point.yPt)
      if (mark.closed) pdf.closePath()
      return paint(pdf, mark.pen, mark.fill)
    }
    case 'pill':
      pdf.roundedRect(
        mark.at.xPt - mark.halfWidthPt,
        mark.at.yPt - mark.halfHeightPt,
        mark.halfWidthPt * 2,
        mark.halfHeightPt * 2,
        mark.halfHeightPt,
      )
      return paint(pdf, mark.pen, mark.fill)
    case 'text':
      return drawMarkText(pen, mark)
  }
}

function paint(pdf: PDFKit.PDFDocument, pen: LinePen | null, fill: string | null): void {
  if (pen === null) {
    if (fill !== null) pdf.fill(fill)
    return
  }
  pdf.lineWidth(pen.widthPt)
  if (pen.dashPt.length > 0) pdf.addContent(`[${pen.dashPt.join(' ')}] 0 d`)
  if (fill === null) pdf.stroke(pen.colour)
  else pdf.fillAndStroke(fill, pen.colour)
  if (pen.dashPt.length > 0) pdf.undash()
}

function drawMarkText(pen: Pen, mark: Extract<PlanMark, { kind: 'text' }>): void {
  const face = mark.weight === 'strong' ? 'strong' : 'regular'
  const style: TextStyle = { sizePt: mark.sizePt, leadingPt: mark.sizePt, face, colour: mark.colour }
  const line = pen.typesetter.lines([{ text: mark.text }], style, Infinity)[0]
  if (line === undefined) return
  const share = { start: 0, middle: 0.5, end: 1 }[mark.align]
  const xPt = mark.at.xPt - line.widthPt * share
  if (mark.onWhite) {
    pen.pdf.rect(xPt - 1.2, mark.at.yPt - mark.sizePt * 0.72, line.widthPt + 2.4, mark.sizePt * 0.86).fill('#FFFFFF')
  }
  // The whole plan is one figure with words of its own, so its letters are no separate content.
  for (const piece of line.pieces) drawPiece(pen, piece, { xPt: xPt + piece.xPt, yPt: mark.at.yPt })
}
