import type { Mark, PicturePoint } from '../markup.ts'

/** The points that place a mark: ends, middle, corner, or every point of a freehand line. */
export function markPoints(mark: Mark): readonly PicturePoint[] {
  switch (mark.kind) {
    case 'arrow':
    case 'scale':
    case 'measure':
      return [mark.from, mark.to]
    case 'ellipse':
      return [mark.centre]
    case 'freehand':
      return mark.points
    case 'text':
      return [mark.at]
    case 'obscured':
      return [mark.corner]
  }
}

/** The first mark that lies outside a picture of a size, or of unknown size; null when all lie inside. */
export function markOutside(
  marks: readonly Mark[],
  { widthPx, heightPx }: { readonly widthPx: number | null; readonly heightPx: number | null },
): Mark | null {
  const isInside = ({ xPx, yPx }: PicturePoint) =>
    widthPx !== null && heightPx !== null && xPx <= widthPx && yPx <= heightPx
  return marks.find((mark) => !markPoints(mark).every(isInside)) ?? null
}
