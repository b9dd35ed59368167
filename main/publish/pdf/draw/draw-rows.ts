import type {
  ContentsRowContent,
  FactsRowContent,
  LinesContent,
  RuleContent,
  SignatureContent,
  TableRowContent,
} from '../measure/strip-content.ts'
import { CAUTION, HAIRLINE, INK, QUIET, TYPE } from '../text/text-style.ts'
import { addLink, drawLine, drawTextBox } from './draw-text.ts'
import { type Pen, resolved, type Spot } from './pen.ts'

const DOT_EVERY_PT = 5

/** Lines of running text, with the bullet or the bar that belongs to them. */
export function drawLines(pen: Pen, content: LinesContent, spot: Spot): void {
  const { pdf } = pen
  if (content.sign === 'bullet') {
    pen.tags.artifact('Layout', () =>
      pdf.circle(spot.xPt + 4, spot.yPt + (content.box.lines[0]?.heightPt ?? 0) / 2, 1.4).fill(QUIET),
    )
  }
  if (content.sign === 'caution-bar') {
    pen.tags.artifact('Layout', () => pdf.rect(spot.xPt, spot.yPt, 2.2, spot.heightPt).fill(CAUTION))
  }
  drawTextBox(pen, content.box, spot)
}

/** A row of facts: labels and values, a hairline below. */
export function drawFactsRow(pen: Pen, content: FactsRowContent, spot: Spot): void {
  for (const cell of content.cells) {
    pen.tags.inside('TH', { scope: 'Row' }, () => drawTextBox(pen, cell.label, spot))
    pen.tags.inside('TD', {}, () => drawTextBox(pen, cell.value, spot))
  }
  if (!content.ruledBelow) return
  for (const { label, value } of content.cells) {
    const from = spot.xPt + label.xPt
    hairline(pen, { from, to: spot.xPt + value.xPt + value.widthPt, y: spot.yPt + spot.heightPt })
  }
}

/** A row of a table. */
export function drawTableRow(pen: Pen, content: TableRowContent, spot: Spot): void {
  const isHead = content.role === 'head'
  for (const cell of content.cells) {
    const draw = () => drawTextBox(pen, cell, spot)
    if (isHead) pen.tags.inside('TH', { scope: 'Column' }, draw)
    else pen.tags.inside('TD', {}, draw)
  }
  const ends = { from: spot.xPt, to: spot.xPt + spot.widthPt }
  if (content.role === 'total') rule(pen, { ...ends, y: spot.yPt, widthPt: 0.8, colour: INK })
  if (isHead) rule(pen, { ...ends, y: spot.yPt + spot.heightPt, widthPt: 0.8, colour: INK })
  else hairline(pen, { ...ends, y: spot.yPt + spot.heightPt })
}

/** Lines to sign on. */
export function drawSignature(pen: Pen, content: SignatureContent, spot: Spot): void {
  for (const cell of content.cells) {
    const x = spot.xPt + cell.xPt
    rule(pen, { from: x, to: x + cell.widthPt, y: spot.yPt + cell.yPt, widthPt: 0.7, colour: INK })
    pen.tags.inside('P', {}, () => drawTextBox(pen, cell.value, spot))
    pen.tags.inside('P', {}, () => drawTextBox(pen, cell.label, spot))
  }
}

/** A row of the contents: title, dots, page. The whole row is the link. */
export function drawContentsRow(pen: Pen, content: ContentsRowContent, spot: Spot): void {
  const anchor = resolved(pen, content.anchor)
  const last = content.title.lines.at(-1)
  if (anchor === null || last === undefined) return
  const style = content.level === 1 ? ({ ...TYPE.body, face: 'strong' } as const) : { ...TYPE.body, colour: QUIET }
  const number = pen.typesetter.lines([{ text: String(pen.pageOf.get(anchor) ?? '') }], style, Infinity)[0]
  if (number === undefined) return
  const lastTop = spot.yPt + content.title.yPt + last.heightPt * (content.title.lines.length - 1)
  const right = spot.xPt + spot.widthPt
  pen.tags.inside('Link', {}, (element) => {
    drawTextBox(pen, content.title, spot)
    drawLine(pen, number, { xPt: right - number.widthPt, yPt: lastTop })
    const says = `${content.title.lines
      .flatMap((line) => line.pieces)
      .map((piece) => piece.text)
      .join('')}, page ${pen.pageOf.get(anchor) ?? ''}`
    addLink(
      pen,
      { xPt: spot.xPt, yPt: spot.yPt, widthPt: spot.widthPt, heightPt: spot.heightPt },
      { anchor, element, says },
    )
  })
  leaders(pen, {
    from: spot.xPt + content.title.xPt + last.widthPt + 6,
    to: right - number.widthPt - 6,
    y: lastTop + last.baselinePt,
  })
}

function leaders(pen: Pen, at: { from: number; to: number; y: number }): void {
  // Dots of all rows stand in columns.
  const first = Math.ceil(at.from / DOT_EVERY_PT) * DOT_EVERY_PT
  pen.tags.artifact('Layout', () => {
    for (let x = first; x <= at.to; x += DOT_EVERY_PT) pen.pdf.rect(x, at.y - 0.8, 0.8, 0.8)
    pen.pdf.fill('#9A9A9A')
  })
}

/** A hairline across the page. */
export function drawRule(pen: Pen, _content: RuleContent, spot: Spot): void {
  hairline(pen, { from: spot.xPt, to: spot.xPt + spot.widthPt, y: spot.yPt + 0.5 })
}

function hairline(pen: Pen, at: { from: number; to: number; y: number }): void {
  rule(pen, { ...at, widthPt: 0.4, colour: HAIRLINE })
}

function rule(pen: Pen, at: { from: number; to: number; y: number; widthPt: number; colour: string }): void {
  pen.tags.artifact('Layout', () =>
    pen.pdf.lineWidth(at.widthPt).moveTo(at.from, at.y).lineTo(at.to, at.y).stroke(at.colour),
  )
}
