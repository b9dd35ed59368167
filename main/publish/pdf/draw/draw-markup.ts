import type { MarkShape, MarkupDrawing } from '../../../../app/evidence/markup-drawing.ts'
import type { TextStyle } from '../text/text-style.ts'
import { drawPiece } from './draw-text.ts'
import type { Pen, Spot } from './pen.ts'

/** What is drawn a second time as an edge round letters is no text of its own. */
const NO_TEXT = '/Span <</ActualText <FEFF> >> BDC'
/** Text rendering mode: letters as outlines only (ISO 32000-1, table 106). */
const OUTLINED = '1 Tr'

/** Draws a photo's marks as vectors over its picture, which stands in a box; nothing reaches beyond it. */
export function drawMarkup(pen: Pen, drawing: MarkupDrawing, box: Spot): void {
  const { pdf } = pen
  const scale = box.widthPt / drawing.widthPx
  pdf.save().rect(box.xPt, box.yPt, box.widthPt, box.heightPt).clip()
  pdf.lineJoin('round').lineCap('round')
  const place = ({ xPx, yPx }: { xPx: number; yPx: number }) => ({
    xPt: box.xPt + xPx * scale,
    yPt: box.yPt + yPx * scale,
  })
  for (const shape of drawing.shapes) {
    if (shape.kind === 'path') drawPath(pen, shape, { place, scale })
    else drawText(pen, shape, { place, scale })
  }
  pdf.restore()
}

interface Placing {
  readonly place: (point: { xPx: number; yPx: number }) => { xPt: number; yPt: number }
  readonly scale: number
}

function drawPath({ pdf }: Pen, shape: Extract<MarkShape, { kind: 'path' }>, { place, scale }: Placing): void {
  const [first, ...others] = shape.points.map(place)
  if (first === undefined) return
  pdf.moveTo(first.xPt, first.yPt)
  for (const point of others) pdf.lineTo(point.xPt, point.yPt)
  if (shape.closed) pdf.closePath()
  const { fill, stroke } = shape
  if (stroke === null) {
    if (fill !== null) pdf.fill(fill)
    return
  }
  pdf.lineWidth(stroke.widthPx * scale)
  const dashes = stroke.dashPx.map((length) => length * scale)
  if (dashes.length > 0) pdf.addContent(`[${dashes.join(' ')}] 0 d`).lineCap('butt')
  if (fill === null) pdf.stroke(stroke.colour)
  else pdf.fillAndStroke(fill, stroke.colour)
  if (dashes.length > 0) pdf.undash().lineCap('round')
}

function drawText(pen: Pen, shape: Extract<MarkShape, { kind: 'text' }>, { place, scale }: Placing): void {
  const { pdf } = pen
  const sizePt = shape.sizePx * scale
  const style: TextStyle = { sizePt, leadingPt: sizePt, face: 'strong', colour: shape.colour }
  const [line] = pen.typesetter.lines([{ text: shape.text }], style, Infinity)
  if (line === undefined) return
  const at = place(shape.at)
  const xPt = at.xPt - (shape.align === 'middle' ? line.widthPt / 2 : 0)
  const draw = () => line.pieces.forEach((piece) => drawPiece(pen, piece, { xPt: xPt + piece.xPt, yPt: at.yPt }))
  pdf.save()
  pdf.lineWidth(shape.edge.widthPx * scale).strokeColor(shape.edge.colour)
  pdf.addContent(NO_TEXT).addContent(OUTLINED)
  draw()
  pdf.addContent('EMC')
  pdf.restore()
  draw()
}
