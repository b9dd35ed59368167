import type { Strip } from '../measure/strip.ts'
import type { StripContent } from '../measure/strip-content.ts'
import type { Placed } from '../paginate/paginate.ts'
import { drawContentsRow, drawFactsRow, drawLines, drawRule, drawSignature, drawTableRow } from './draw-rows.ts'
import { drawPhotoRow, drawPicture, photoRowWishes, pictureWishes } from './draw-pictures.ts'
import { drawPlan, drawPlot } from './draw-plan.ts'
import { addAnchor, type Pen, type PictureWish, type Spot } from './pen.ts'

type Draw = {
  readonly [K in StripContent['kind']]: (pen: Pen, content: Extract<StripContent, { kind: K }>, spot: Spot) => void
}

/** How each kind of strip is drawn. */
const DRAW: Draw = {
  lines: drawLines,
  'facts-row': drawFactsRow,
  'table-row': drawTableRow,
  plan: drawPlan,
  plot: drawPlot,
  picture: drawPicture,
  'photo-row': drawPhotoRow,
  signature: drawSignature,
  'contents-row': drawContentsRow,
  rule: drawRule,
}

/** Draws a strip in its place on the current page, and sets its anchors. A repeated strip is no content. */
export function drawStrip(pen: Pen, placed: Placed<Strip>): void {
  const { band: strip, repeated } = placed
  const spot = {
    xPt: pen.paper.leftPt,
    yPt: pen.paper.topPt + placed.yPt,
    widthPt: pen.paper.contentWidthPt,
    heightPt: placed.heightPt,
  }
  if (repeated) return pen.tags.artifact('Pagination', () => drawContent(pen, strip.content, spot))
  pen.tags.enter(strip.structure)
  for (const anchor of strip.anchors) addAnchor(pen, anchor, { xPt: 0, yPt: spot.yPt })
  drawContent(pen, strip.content, spot)
}

/** The table above holds a function for each kind, which the compiler can't tie to the content's own kind by itself. */
function drawContent<K extends StripContent['kind']>(
  pen: Pen,
  content: Extract<StripContent, { kind: K }>,
  spot: Spot,
): void {
  const draw: (pen: Pen, content: Extract<StripContent, { kind: K }>, spot: Spot) => void = DRAW[content.kind as K]
  draw(pen, content, spot)
}

/** Pictures that a strip will draw at a height. */
export function wishesOf(placed: Placed<Strip>): readonly PictureWish[] {
  const { content } = placed.band
  if (content.kind === 'picture') return pictureWishes(content, placed.heightPt)
  return content.kind === 'photo-row' ? photoRowWishes(content, placed.heightPt) : []
}
