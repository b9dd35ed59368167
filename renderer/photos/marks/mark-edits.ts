import { MOST_POINTS, type Mark, type PicturePoint } from '../../../app/evidence/markup.ts'
import type { MarkColour } from '../../../app/evidence/markup/colours.ts'
import type { MarkWeight } from '../../../app/evidence/markup.ts'
import { markPoints } from '../../../app/evidence/markup/mark-points.ts'

/** The size of a picture as it should be looked at, pixels of the original. */
export interface PictureSize {
  readonly widthPx: number
  readonly heightPx: number
}

/** A place of a mark that can be dragged to change its shape. */
export interface MarkHandle {
  readonly key: 'from' | 'to' | 'size'
  readonly at: PicturePoint
}

/** The handles of a mark; none for one that is only moved. */
export function handlesOf(mark: Mark): readonly MarkHandle[] {
  switch (mark.kind) {
    case 'arrow':
    case 'scale':
    case 'measure':
      return [
        { key: 'from', at: mark.from },
        { key: 'to', at: mark.to },
      ]
    case 'ellipse':
      return [{ key: 'size', at: { xPx: mark.centre.xPx + mark.radiusXPx, yPx: mark.centre.yPx + mark.radiusYPx } }]
    case 'obscured':
      return [{ key: 'size', at: { xPx: mark.corner.xPx + mark.widthPx, yPx: mark.corner.yPx + mark.heightPx } }]
    case 'freehand':
    case 'text':
      return []
  }
}

/** A mark with one of its handles at another place. */
export function withHandle(mark: Mark, key: MarkHandle['key'], at: PicturePoint): Mark {
  switch (mark.kind) {
    case 'arrow':
    case 'scale':
    case 'measure':
      return key === 'from' ? { ...mark, from: at } : { ...mark, to: at }
    case 'ellipse':
      return {
        ...mark,
        radiusXPx: Math.max(1, at.xPx - mark.centre.xPx),
        radiusYPx: Math.max(1, at.yPx - mark.centre.yPx),
      }
    case 'obscured':
      return {
        ...mark,
        widthPx: Math.max(1, at.xPx - mark.corner.xPx),
        heightPx: Math.max(1, at.yPx - mark.corner.yPx),
      }
    case 'freehand':
    case 'text':
      return mark
  }
}

/** A mark moved by a distance in pixels of the original; it stays on the picture. */
export function movedMark(mark: Mark, by: { x: number; y: number }, picture: PictureSize): Mark {
  const points = markPoints(mark)
  const held = (wanted: number, values: readonly number[], most: number) =>
    Math.min(most - Math.max(...values), Math.max(-Math.min(...values), wanted))
  const x = held(
    by.x,
    points.map(({ xPx }) => xPx),
    picture.widthPx,
  )
  const y = held(
    by.y,
    points.map(({ yPx }) => yPx),
    picture.heightPx,
  )
  const moved = ({ xPx, yPx }: PicturePoint): PicturePoint => ({ xPx: tenth(xPx + x), yPx: tenth(yPx + y) })
  switch (mark.kind) {
    case 'arrow':
    case 'scale':
    case 'measure':
      return { ...mark, from: moved(mark.from), to: moved(mark.to) }
    case 'ellipse':
      return { ...mark, centre: moved(mark.centre) }
    case 'freehand':
      return { ...mark, points: mark.points.map(moved) }
    case 'text':
      return { ...mark, at: moved(mark.at) }
    case 'obscured':
      return { ...mark, corner: moved(mark.corner) }
  }
}

/** Marks with one in another place of the stack: `by` 1 is one up, towards the topmost. */
export function restackedMarks(marks: readonly Mark[], id: string, by: 1 | -1): readonly Mark[] {
  const at = marks.findIndex((mark) => mark.id === id)
  const mark = marks[at]
  const to = at + by
  if (mark === undefined || to < 0 || to >= marks.length) return marks
  const others = marks.filter((one) => one.id !== id)
  return [...others.slice(0, to), mark, ...others.slice(to)]
}

/** Marks with one replaced by its changed self. */
export function withMark(marks: readonly Mark[], changed: Mark): readonly Mark[] {
  return marks.map((mark) => (mark.id === changed.id ? changed : mark))
}

/** How the next marks look, and what a measured line takes its length from. */
export interface MarkStyle {
  readonly colour: MarkColour
  readonly weight: MarkWeight
}

interface NewMark extends MarkStyle {
  readonly id: string
  readonly kind: Mark['kind']
  /** Where the pointer went, from where it was pressed; at least one point. */
  readonly path: readonly PicturePoint[]
  /** The scale line that a measured line rests on; null when the photo has none. */
  readonly scaleId: string | null
  readonly picture: PictureSize
}

/** A drag shorter than this part of the longer side is a slip of the hand. */
const SHORTEST_PART = 0.008

/** The mark that a drag draws; null for a drag too short to mean one, or a measured line without a scale line. */
export function drawnMark({ kind, path, scaleId, picture, ...look }: NewMark): Mark | null {
  const points = path.map((point) => onPicture(point, picture))
  const [from] = points
  const to = points.at(-1)
  if (from === undefined || to === undefined) return null
  if (kind === 'text') return { kind, ...look, at: from, text: 'Text' }
  if (kind === 'freehand') return points.length < 2 ? null : { kind, ...look, points: [...thinned(points)] }
  const [dx, dy] = [Math.abs(to.xPx - from.xPx), Math.abs(to.yPx - from.yPx)]
  if (Math.hypot(dx, dy) < Math.max(picture.widthPx, picture.heightPx) * SHORTEST_PART) return null
  const corner = { xPx: Math.min(from.xPx, to.xPx), yPx: Math.min(from.yPx, to.yPx) }
  const [widthPx, heightPx] = [Math.max(1, dx), Math.max(1, dy)]
  switch (kind) {
    case 'arrow':
      return { kind, ...look, from, to }
    case 'scale':
      return { kind, ...look, from, to, lengthIn: 12, of: '' }
    case 'measure':
      return scaleId === null ? null : { kind, ...look, from, to, scaleId }
    case 'ellipse': {
      const centre = { xPx: corner.xPx + widthPx / 2, yPx: corner.yPx + heightPx / 2 }
      return { kind, ...look, centre, radiusXPx: widthPx / 2, radiusYPx: heightPx / 2 }
    }
    case 'obscured':
      return { kind, id: look.id, corner, widthPx, heightPx, what: 'face' }
  }
}

/** The nearest point that lies on the picture, to a tenth of a pixel. */
export function onPicture({ xPx, yPx }: PicturePoint, { widthPx, heightPx }: PictureSize): PicturePoint {
  return { xPx: tenth(Math.min(widthPx, Math.max(0, xPx))), yPx: tenth(Math.min(heightPx, Math.max(0, yPx))) }
}

/** Every so many points of a long line, its ends among them. */
function thinned(points: readonly PicturePoint[]): readonly PicturePoint[] {
  if (points.length <= MOST_POINTS) return points
  const step = (points.length - 1) / (MOST_POINTS - 1)
  return Array.from({ length: MOST_POINTS }, (_, k) => points[Math.round(k * step)]).flatMap((point) => point ?? [])
}

function tenth(n: number): number {
  return Math.round(n * 10) / 10
}
