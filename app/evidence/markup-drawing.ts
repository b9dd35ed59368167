import { getStroke } from 'perfect-freehand'
import type { Mark, MarkWeight, ObscuredMark, PicturePoint } from './markup.ts'
import { type MarkColour, markLooks } from './markup/colours.ts'
import { knownLengthWords, lengthWords, measuredLength, scaleNames, scaleOf } from './markup/measured-length.ts'

/** A line to draw: colour, width in pixels of the original, dashes and gaps in the same. */
export interface MarkStroke {
  readonly colour: string
  readonly widthPx: number
  readonly dashPx: readonly number[]
}

/** What a mark is drawn with. Ends and corners are round; shapes stand from the lowest to the topmost. */
export type MarkShape =
  | {
      readonly kind: 'path'
      readonly markId: string
      readonly points: readonly PicturePoint[]
      readonly closed: boolean
      readonly fill: string | null
      readonly stroke: MarkStroke | null
    }
  | {
      readonly kind: 'text'
      readonly markId: string
      /** Where the base line begins or has its middle. */
      readonly at: PicturePoint
      readonly align: 'start' | 'middle'
      readonly text: string
      readonly sizePx: number
      readonly colour: string
      /** Drawn round the letters. */
      readonly edge: { readonly colour: string; readonly widthPx: number }
    }

/** A rectangle of the picture whose pixels are destroyed in the copy. */
export interface ObscuredArea {
  readonly leftPx: number
  readonly topPx: number
  readonly widthPx: number
  readonly heightPx: number
  readonly what: ObscuredMark['what']
}

/**
 * A photo's marks as things to draw, in pixels of the upright original. Screens, marked copies and the packet all draw
 * from this, so that they can't differ.
 */
export interface MarkupDrawing {
  readonly widthPx: number
  readonly heightPx: number
  readonly shapes: readonly MarkShape[]
  readonly obscured: readonly ObscuredArea[]
}

/** Widths and text sizes as parts of the picture's longer side, so that marks look alike on small and large pictures. */
const STROKE_PARTS = { fine: 0.0022, normal: 0.004, bold: 0.0065 } as const satisfies Record<MarkWeight, number>
const TEXT_PARTS = { fine: 0.03, normal: 0.038, bold: 0.05 } as const satisfies Record<MarkWeight, number>
const EDGE_PART = 0.0016
/** Mean width of a letter in its size: enough to keep words on the picture. */
export const LETTER_PART = 0.52
const ROUND_CORNERS = 96

/** Turns marks into things to draw over a picture of a size. */
export function drawMarkup(
  marks: readonly Mark[],
  picture: { readonly widthPx: number; readonly heightPx: number },
): MarkupDrawing {
  const longEdgePx = Math.max(picture.widthPx, picture.heightPx)
  const scene = { marks, longEdgePx, widthPx: picture.widthPx, names: scaleNames(marks) }
  return {
    widthPx: picture.widthPx,
    heightPx: picture.heightPx,
    shapes: marks.flatMap((mark) => shapesOf(mark, scene)),
    obscured: marks.flatMap((mark) => (mark.kind === 'obscured' ? areaOf(mark, picture) : [])),
  }
}

interface Scene {
  readonly marks: readonly Mark[]
  readonly longEdgePx: number
  readonly widthPx: number
  readonly names: ReadonlyMap<string, string>
}

function shapesOf(mark: Mark, scene: Scene): readonly MarkShape[] {
  switch (mark.kind) {
    case 'arrow':
      return arrow(mark, scene)
    case 'ellipse':
      return line(mark, scene, { points: ellipsePoints(mark), closed: true })
    case 'freehand':
      return freehand(mark, scene)
    case 'text':
      return [text(mark, scene, { at: mark.at, align: 'start', text: mark.text })]
    case 'scale':
      return ruled(mark, scene, `${knownLengthWords(mark)}, ${scene.names.get(mark.id) ?? ''}`)
    case 'measure': {
      const scale = scaleOf(mark, scene.marks)
      const words = scale === null ? 'no scale' : lengthWords(measuredLength(mark, scale))
      return ruled(mark, scene, `${words} (${scene.names.get(mark.scaleId) ?? ''})`)
    }
    case 'obscured':
      return frame(mark, scene)
  }
}

interface Look {
  readonly id: string
  readonly colour: MarkColour
  readonly weight: MarkWeight
}

function strokePx({ weight }: Look, { longEdgePx }: Scene): number {
  return longEdgePx * STROKE_PARTS[weight]
}

/** A line in its colour and pattern over a wider one in the edge's colour. */
function line(
  mark: Look,
  scene: Scene,
  { points, closed, whole = false }: { points: readonly PicturePoint[]; closed: boolean; whole?: boolean },
): readonly MarkShape[] {
  const widthPx = strokePx(mark, scene)
  const { hex, edgeHex, dash } = markLooks[mark.colour]
  const base = { kind: 'path' as const, markId: mark.id, points, closed, fill: null }
  const dashPx = whole ? [] : dash.map((part) => part * widthPx)
  return [
    { ...base, stroke: { colour: edgeHex, widthPx: widthPx + 2 * scene.longEdgePx * EDGE_PART, dashPx: [] } },
    { ...base, stroke: { colour: hex, widthPx, dashPx } },
  ]
}

function arrow(mark: Extract<Mark, { kind: 'arrow' }>, scene: Scene): readonly MarkShape[] {
  const widthPx = strokePx(mark, scene)
  const along = unit(mark.from, mark.to)
  const headPx = Math.min(widthPx * 6, along.lengthPx)
  const neck = shifted(mark.to, along, { along: -headPx, across: 0 })
  const head = [
    mark.to,
    shifted(mark.to, along, { along: -headPx, across: headPx * 0.42 }),
    shifted(mark.to, along, { along: -headPx, across: -headPx * 0.42 }),
  ]
  const { hex, edgeHex } = markLooks[mark.colour]
  const edge = { colour: edgeHex, widthPx: 2 * scene.longEdgePx * EDGE_PART, dashPx: [] }
  const headPath = { kind: 'path' as const, markId: mark.id, points: head, closed: true }
  return [
    ...line(mark, scene, { points: [mark.from, neck], closed: false }),
    { ...headPath, fill: edgeHex, stroke: edge },
    { ...headPath, fill: hex, stroke: null },
  ]
}

/** A line with a bar at each end and its length over the middle, as a dimension is drawn. */
function ruled(mark: Extract<Mark, { kind: 'scale' | 'measure' }>, scene: Scene, words: string): readonly MarkShape[] {
  const along = unit(mark.from, mark.to)
  const barPx = strokePx(mark, scene) * 3
  const bar = (at: PicturePoint) => [
    shifted(at, along, { along: 0, across: barPx }),
    shifted(at, along, { along: 0, across: -barPx }),
  ]
  const sizePx = scene.longEdgePx * TEXT_PARTS[mark.weight] * 0.85
  const middle = { xPx: (mark.from.xPx + mark.to.xPx) / 2, yPx: (mark.from.yPx + mark.to.yPx) / 2 }
  // Letters stand upright beside the line: over one that lies, right of one that stands.
  const stands = Math.abs(along.y) > Math.abs(along.x)
  const at = stands
    ? { xPx: middle.xPx + barPx * 1.2, yPx: middle.yPx + sizePx * 0.35 }
    : { xPx: middle.xPx, yPx: middle.yPx - barPx * 1.2 }
  return [
    ...line(mark, scene, { points: [mark.from, mark.to], closed: false }),
    ...line(mark, scene, { points: bar(mark.from), closed: false, whole: true }),
    ...line(mark, scene, { points: bar(mark.to), closed: false, whole: true }),
    { ...text(mark, scene, { at, align: stands ? 'start' : 'middle', text: words }), sizePx },
  ]
}

function freehand(mark: Extract<Mark, { kind: 'freehand' }>, scene: Scene): readonly MarkShape[] {
  const { hex, edgeHex } = markLooks[mark.colour]
  const points = getStroke(
    mark.points.map(({ xPx, yPx }) => [xPx, yPx]),
    {
      size: strokePx(mark, scene) * 1.3,
      thinning: 0,
      smoothing: 0.6,
      streamline: 0.4,
      simulatePressure: false,
      last: true,
    },
  ).map(([xPx = 0, yPx = 0]) => ({ xPx, yPx }))
  const base = { kind: 'path' as const, markId: mark.id, points, closed: true }
  return [
    { ...base, fill: edgeHex, stroke: { colour: edgeHex, widthPx: 2 * scene.longEdgePx * EDGE_PART, dashPx: [] } },
    { ...base, fill: hex, stroke: null },
  ]
}

function text(
  mark: Look,
  { longEdgePx, widthPx }: Scene,
  said: { at: PicturePoint; align: 'start' | 'middle'; text: string },
): Extract<MarkShape, { kind: 'text' }> {
  const { hex, edgeHex } = markLooks[mark.colour]
  const sizePx = longEdgePx * TEXT_PARTS[mark.weight]
  const edge = { colour: edgeHex, widthPx: sizePx * 0.2 }
  const wordsPx = said.text.length * sizePx * LETTER_PART
  const before = said.align === 'middle' ? wordsPx / 2 : 0
  const xPx = Math.max(before, Math.min(said.at.xPx, widthPx - wordsPx + before))
  return { kind: 'text', markId: mark.id, ...said, at: { xPx, yPx: said.at.yPx }, sizePx, colour: hex, edge }
}

/** A thin frame says that an area was obscured on purpose. */
function frame(mark: ObscuredMark, { longEdgePx }: Scene): readonly MarkShape[] {
  const { corner, widthPx, heightPx } = mark
  const points = [
    corner,
    { xPx: corner.xPx + widthPx, yPx: corner.yPx },
    { xPx: corner.xPx + widthPx, yPx: corner.yPx + heightPx },
    { xPx: corner.xPx, yPx: corner.yPx + heightPx },
  ]
  const strokePx = longEdgePx * EDGE_PART
  const base = { kind: 'path' as const, markId: mark.id, points, closed: true, fill: null }
  return [
    { ...base, stroke: { colour: '#000000', widthPx: strokePx, dashPx: [] } },
    { ...base, stroke: { colour: '#FFFFFF', widthPx: strokePx, dashPx: [strokePx * 3, strokePx * 3] } },
  ]
}

function areaOf(mark: ObscuredMark, picture: { widthPx: number; heightPx: number }): readonly ObscuredArea[] {
  const leftPx = Math.max(0, mark.corner.xPx)
  const topPx = Math.max(0, mark.corner.yPx)
  const widthPx = Math.min(picture.widthPx, mark.corner.xPx + mark.widthPx) - leftPx
  const heightPx = Math.min(picture.heightPx, mark.corner.yPx + mark.heightPx) - topPx
  return widthPx > 0 && heightPx > 0 ? [{ leftPx, topPx, widthPx, heightPx, what: mark.what }] : []
}

function ellipsePoints({ centre, radiusXPx, radiusYPx }: Extract<Mark, { kind: 'ellipse' }>): readonly PicturePoint[] {
  return Array.from({ length: ROUND_CORNERS }, (_, k) => {
    const angle = (k / ROUND_CORNERS) * 2 * Math.PI
    return { xPx: centre.xPx + radiusXPx * Math.cos(angle), yPx: centre.yPx + radiusYPx * Math.sin(angle) }
  })
}

interface Way {
  readonly x: number
  readonly y: number
  readonly lengthPx: number
}

function unit(from: PicturePoint, to: PicturePoint): Way {
  const [x, y] = [to.xPx - from.xPx, to.yPx - from.yPx]
  const lengthPx = Math.hypot(x, y)
  return lengthPx === 0 ? { x: 1, y: 0, lengthPx } : { x: x / lengthPx, y: y / lengthPx, lengthPx }
}

function shifted(at: PicturePoint, way: Way, by: { along: number; across: number }): PicturePoint {
  return {
    xPx: at.xPx + way.x * by.along - way.y * by.across,
    yPx: at.yPx + way.y * by.along + way.x * by.across,
  }
}
