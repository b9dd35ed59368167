import type { MarkupDrawing } from '../../../../app/evidence/markup-drawing.ts'
import type { PhotoId } from '../../../../app/job/ids.ts'
import { planInset } from '../../../../app/roof/plan-sheet/plan-sheet.ts'
import { linesHeight } from '../measure/measuring.ts'
import type { MeasuredCard, PhotoRowContent, PictureContent } from '../measure/strip-content.ts'
import { HAIRLINE, TYPE } from '../text/text-style.ts'
import { drawMarkup } from './draw-markup.ts'
import { drawMarks } from './draw-plan.ts'
import { drawTextBox } from './draw-text.ts'
import { addAnchor, type Pen, type PictureWish, type Spot } from './pen.ts'
import { pdfkitInside } from './pdfkit-inside.ts'

/** Dots per inch beyond which a printed photo shows no more. */
const PRINT_DPI = 240
const INSET_GAP_PT = 10
/** A picture lower than this part of the highest in its row does not set the height of the row. */
const LOWEST_OF_ROW = 0.6
const NOT_SHOWN = 'This picture can’t be shown: its file is missing or can’t be read.'

/** One photo at its own proportions, with its caption. */
export function drawPicture(pen: Pen, content: PictureContent, spot: Spot): void {
  const box = { xPt: spot.xPt, yPt: spot.yPt, ...pictureSize(content, spot.heightPt) }
  drawPhoto(pen, content, box)
  const captionTop = spot.yPt + spot.heightPt - linesHeight(content.caption.lines)
  pen.tags.inside('Caption', {}, () => drawTextBox(pen, content.caption, { ...spot, yPt: captionTop }))
}

function pictureSize(content: PictureContent, stripHeightPt: number): { widthPt: number; heightPt: number } {
  const heightPt = stripHeightPt - content.captionPt
  return { widthPt: heightPt * content.widthToHeight, heightPt }
}

/** What a picture asks of the source. */
export function pictureWishes(content: PictureContent, stripHeightPt: number): readonly PictureWish[] {
  const { widthPt, heightPt } = pictureSize(content, stripHeightPt)
  return [{ photoId: content.photoId, longEdgePx: pixels(Math.max(widthPt, heightPt)) }]
}

/** What the cards of a row ask of the source. */
export function photoRowWishes(content: PhotoRowContent, rowHeightPt: number): readonly PictureWish[] {
  const longEdgePx = pixels(Math.max(content.pictureWidthPt, pictureHeight(content, rowHeightPt)))
  return content.cards.map(({ card }) => ({ photoId: card.photoId, longEdgePx }))
}

function pixels(lengthPt: number): number {
  return Math.ceil((lengthPt / 72) * PRINT_DPI)
}

function pictureHeight(content: PhotoRowContent, rowHeightPt: number): number {
  return content.textStands === 'below' ? rowHeightPt - content.textHeightPt : rowHeightPt - content.titleHeightPt
}

/** A row of photo cards: pictures as high as the text of the row leaves, fitted and never cropped. */
export function drawPhotoRow(pen: Pen, content: PhotoRowContent, spot: Spot): void {
  const mostPt = pictureHeight(content, spot.heightPt)
  const heights = content.cards.map(
    (card) => fit(pen, card.card.photoId, { widthPt: pictureWidth(card, content), heightPt: mostPt }).heightPt,
  )
  const boxPt = levelHeight(heights)
  // Text stands right under the highest picture of its row, so that captions of a row are level and near.
  const textPt = Math.min(boxPt, Math.max(...heights))
  for (const card of content.cards) {
    addAnchor(pen, card.card.anchor, spot)
    pen.tags.inside('Div', {}, () => drawCard(pen, card, { content, spot, boxPt, textPt }))
  }
}

/** One height for the pictures of a row: the lowest, unless it is so low (a panorama) that the others would be lost to it. */
function levelHeight(heights: readonly number[]): number {
  const highest = Math.max(...heights)
  return Math.min(...heights.filter((height) => height >= highest * LOWEST_OF_ROW))
}

function pictureWidth(card: MeasuredCard, content: PhotoRowContent): number {
  return (
    content.pictureWidthPt - (card.inset !== null && card.inset.besidePicture ? card.inset.sizePt + INSET_GAP_PT : 0)
  )
}

/** Size of a picture fitted into a box; of the frame that stands in its place where it can't be shown. */
function fit(
  pen: Pen,
  photoId: PhotoId,
  box: { widthPt: number; heightPt: number },
): { widthPt: number; heightPt: number } {
  const { widthPx, heightPx } = pen.pictures.get(photoId) ?? { widthPx: 4, heightPx: 3 }
  const scale = Math.min(box.widthPt / widthPx, box.heightPt / heightPx)
  return { widthPt: widthPx * scale, heightPt: heightPx * scale }
}

function drawCard(
  pen: Pen,
  card: MeasuredCard,
  row: { content: PhotoRowContent; spot: Spot; boxPt: number; textPt: number },
): void {
  const { content, spot } = row
  const x = spot.xPt + card.xPt
  const beside = content.textStands === 'beside'
  const picturesTop = beside ? spot.yPt + content.titleHeightPt : spot.yPt
  const textTop = beside ? picturesTop : spot.yPt + row.textPt
  if (beside) pen.tags.inside('Caption', {}, () => drawTextBox(pen, card.title, { xPt: x, yPt: spot.yPt }))
  drawPhoto(pen, card.card, { xPt: x, yPt: picturesTop, widthPt: pictureWidth(card, content), heightPt: row.boxPt })
  if (!beside) pen.tags.inside('Caption', {}, () => drawTextBox(pen, card.title, { xPt: x, yPt: textTop }))
  for (const line of card.lines) pen.tags.inside('P', {}, () => drawTextBox(pen, line, { xPt: x, yPt: textTop }))
  if (card.inset === null) return
  const top = card.inset.besidePicture ? picturesTop : textTop
  drawInset(pen, card, { xPt: x + card.inset.xPt, yPt: top + card.inset.yPt, sizePt: card.inset.sizePt })
}

function drawInset(pen: Pen, card: MeasuredCard, at: { xPt: number; yPt: number; sizePt: number }): void {
  const drawing = card.card.inset
  if (drawing === null) return
  const { sizePt } = at
  const bbox: [number, number, number, number] = [at.xPt, at.yPt, at.xPt + sizePt, at.yPt + sizePt]
  pen.tags.inside('Figure', { alt: 'Small roof plan with the place of the camera.', bbox }, () => {
    pen.tags.content(() => {
      pen.pdf.lineWidth(0.4).rect(at.xPt, at.yPt, sizePt, sizePt).stroke(HAIRLINE)
      // A camera's wedge may reach over the edge of the small plan.
      pen.pdf.save().rect(at.xPt, at.yPt, sizePt, sizePt).clip()
      drawMarks(pen, planInset(drawing, { widthPt: sizePt, heightPt: sizePt }), at)
      pen.pdf.restore()
    })
  })
}

interface DrawnPhoto {
  readonly photoId: PhotoId
  readonly marks?: MarkupDrawing
  readonly alt: string
}

/** A photo fitted into a box from its top left corner, whole; or a frame that says why there is none. */
function drawPhoto(pen: Pen, photo: DrawnPhoto, box: Spot): void {
  const picture = pen.pictures.get(photo.photoId)
  if (picture === null) return drawNotShown(pen, photo, box)
  const size = fit(pen, photo.photoId, box)
  const bbox: [number, number, number, number] = [box.xPt, box.yPt, box.xPt + size.widthPt, box.yPt + size.heightPt]
  pen.tags.inside('Figure', { alt: photo.alt, bbox }, () => {
    pen.tags.content(() => {
      pdfkitInside(pen.pdf).drawImage(picture.image, { xPt: box.xPt, yPt: box.yPt, ...size })
      if (photo.marks !== undefined) drawMarkup(pen, photo.marks, { xPt: box.xPt, yPt: box.yPt, ...size })
    })
  })
}

function drawNotShown(pen: Pen, photo: { readonly photoId: PhotoId; readonly alt: string }, box: Spot): void {
  const { widthPt, heightPt } = fit(pen, photo.photoId, box)
  const textWidth = widthPt - 24
  const lines = pen.typesetter.lines([{ text: NOT_SHOWN }], TYPE.small, textWidth)
  const bbox: [number, number, number, number] = [box.xPt, box.yPt, box.xPt + widthPt, box.yPt + heightPt]
  pen.tags.inside('Figure', { alt: `${photo.alt} ${NOT_SHOWN}`, bbox }, () => {
    pen.tags.content(() =>
      pen.pdf
        .lineWidth(0.6)
        .rect(box.xPt + 0.3, box.yPt + 0.3, widthPt - 0.6, heightPt - 0.6)
        .stroke('#8A8A8A'),
    )
    const yPt = (heightPt - lines.length * TYPE.small.leadingPt) / 2
    drawTextBox(pen, { xPt: 12, yPt, widthPt: textWidth, align: 'start', lines }, box)
  })
}
