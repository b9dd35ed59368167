import type { CameraShape, EdgeKind, EdgeShape, FacetShape } from '../plan-drawing.ts'
import { BY_HAND, CAMERA_INK, EDGE_LOOKS, FACET_FILL, FACET_PICKED_FILL, INK, PAPER, QUIET_INK } from './inks.ts'
import { centredText, line, type PlanMark, type SheetPoint, solidPen } from './marks.ts'
import { labelPlace, outlineDistance, tagPlace } from './label-places.ts'
import type { SoftBox } from './pin-places.ts'
import type { ToSheet } from './plan-sheet.ts'

/** Edges shorter than this on paper carry no tag. */
const TAGGED_FROM_PT = 44
const LABEL_PT = 8
const WEDGE_PT = 17
const WEDGE_HALF_DEG = 24

/** The outline first, so that ridges and hips lie over its corners. */
const DRAWN_ORDER = {
  eave: 0,
  rake: 0,
  'top-edge': 0,
  step: 1,
  'pitch-break': 1,
  valley: 2,
  hip: 2,
  ridge: 3,
} as const satisfies Record<EdgeKind, number>

interface DrawnFacets {
  readonly grounds: readonly PlanMark[]
  readonly marks: readonly PlanMark[]
  readonly labels: readonly SoftBox[]
}

/**
 * Facets: ground, letter, pitch and the arrow that points downhill, as much of it as there is room for, out of the way
 * of pins.
 */
export function facetMarks(facets: readonly FacetShape[], toSheet: ToSheet, pins: readonly SoftBox[]): DrawnFacets {
  const drawn = facets.map((facet) => facetLabel(facet, toSheet, pins))
  return {
    grounds: facets.map((facet) => ({
      kind: 'path',
      points: facet.outline.map(toSheet),
      closed: true,
      pen: null,
      fill: facet.picked === true ? FACET_PICKED_FILL : FACET_FILL,
    })),
    marks: drawn.flatMap((facet) => facet.marks),
    labels: drawn.map((facet) => facet.box),
  }
}

function facetLabel(
  facet: FacetShape,
  toSheet: ToSheet,
  pins: readonly SoftBox[],
): { marks: readonly PlanMark[]; box: SoftBox } {
  const outline = facet.outline.map(toSheet)
  const centre = toSheet(facet.labelAt)
  const roomPt = outlineDistance(centre, outline)
  const full = roomPt >= 34
  const half = full ? { widthPt: 12, heightPt: 14 } : { widthPt: 7, heightPt: 7 }
  const at = labelPlace(centre, { half, outline, pins })
  const letterPt = full ? 15 : roomPt >= 14 ? 11 : LABEL_PT
  const letter = centredText(facet.letter, up(at, full ? 5 : 0), {
    sizePt: letterPt,
    colour: INK,
    strong: true,
    onWhite: false,
  })
  const box = { at, halfWidthPt: half.widthPt, halfHeightPt: half.heightPt }
  const herePt = outlineDistance(at, outline)
  if (!full) {
    const short = roomPt >= 20 && herePt >= 18 ? arrow(facet, at, { from: 9, to: Math.min(herePt - 3, 19) }) : []
    return { marks: [letter, ...short], box }
  }
  const pitch = centredText(facet.pitchLabel, up(at, -8), {
    sizePt: LABEL_PT,
    colour: QUIET_INK,
    strong: false,
    onWhite: false,
  })
  const long = herePt >= 28 ? arrow(facet, at, { from: 16, to: Math.min(herePt - 4, 36) }) : []
  return { marks: [letter, pitch, ...long], box }
}

function arrow(facet: FacetShape, at: SheetPoint, reach: { from: number; to: number }): readonly PlanMark[] {
  const way = { x: facet.downhill.x, y: -facet.downhill.y }
  const along = (distance: number, aside: number): SheetPoint => ({
    xPt: at.xPt + way.x * distance - way.y * aside,
    yPt: at.yPt + way.y * distance + way.x * aside,
  })
  const head: PlanMark = {
    kind: 'path',
    points: [along(reach.to, 0), along(reach.to - 6, 2.4), along(reach.to - 6, -2.4)],
    closed: true,
    pen: null,
    fill: QUIET_INK,
  }
  return [line(along(reach.from, 0), along(reach.to - 5, 0), solidPen(QUIET_INK, 0.9)), head]
}

/** Edges by kind, and the tags on those long enough to carry one, out of the way of pins. */
export function edgeMarks(edges: readonly EdgeShape[], toSheet: ToSheet, pins: readonly SoftBox[]) {
  const lines: readonly PlanMark[] = [...edges]
    .sort((a, b) => DRAWN_ORDER[a.kind] - DRAWN_ORDER[b.kind])
    .map((edge) => line(toSheet(edge.from), toSheet(edge.to), EDGE_LOOKS[edge.kind].pen))
  const tagged = edges
    .map(({ kind, byHand, from, to }) => ({
      tag: `${EDGE_LOOKS[kind].tag}${byHand === undefined ? '' : BY_HAND}`,
      from: toSheet(from),
      to: toSheet(to),
    }))
    .filter(({ from, to }) => distance(from, to) >= TAGGED_FROM_PT)
    .map(({ tag, from, to }) => ({ tag, box: tagPlace(from, to, pins) }))
  const tags = tagged.map(({ tag, box }) =>
    centredText(tag, box.at, { sizePt: LABEL_PT, colour: QUIET_INK, strong: false, onWhite: true }),
  )
  return { lines, marks: [...lines, ...tags], labels: tagged.map(({ box }) => box) }
}

/** Where cameras stood and which way they looked: a dot, and a wedge where the direction is known. */
export function cameraMarks(cameras: readonly CameraShape[], toSheet: ToSheet): readonly PlanMark[] {
  return cameras.flatMap((camera) => {
    const at = toSheet(camera.at)
    const dot: PlanMark = {
      kind: 'pill',
      at,
      halfWidthPt: 2.3,
      halfHeightPt: 2.3,
      pen: solidPen(PAPER, 0.6),
      fill: CAMERA_INK,
    }
    return camera.looking === null ? [dot] : [wedge(at, camera.looking), dot]
  })
}

function wedge(at: SheetPoint, looking: { x: number; y: number }): PlanMark {
  const bearing = Math.atan2(-looking.y, looking.x)
  const corner = (turnDeg: number): SheetPoint => ({
    xPt: at.xPt + WEDGE_PT * Math.cos(bearing + (turnDeg * Math.PI) / 180),
    yPt: at.yPt + WEDGE_PT * Math.sin(bearing + (turnDeg * Math.PI) / 180),
  })
  const points = [at, corner(-WEDGE_HALF_DEG), corner(0), corner(WEDGE_HALF_DEG)]
  return { kind: 'path', points, closed: true, pen: solidPen(CAMERA_INK, 0.8), fill: null }
}

function distance(a: SheetPoint, b: SheetPoint): number {
  return Math.hypot(a.xPt - b.xPt, a.yPt - b.yPt)
}

function up(at: SheetPoint, byPt: number): SheetPoint {
  return { xPt: at.xPt, yPt: at.yPt - byPt }
}
