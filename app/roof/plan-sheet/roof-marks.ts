import type { CameraShape, EdgeKind, EdgeShape, FacetShape } from '../plan-drawing.ts'
import { CAMERA_INK, EDGE_LOOKS, FACET_FILL, FACET_PICKED_FILL, INK, PAPER, QUIET_INK } from './inks.ts'
import { centredText, line, type PlanMark, type SheetPoint, solidPen } from './marks.ts'
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

/** Facets: ground, letter, pitch and the arrow that points downhill, as much of it as there is room for. */
export function facetMarks(facets: readonly FacetShape[], toSheet: ToSheet): DrawnFacets {
  const drawn = facets.map((facet) => facetLabel(facet, toSheet))
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

function facetLabel(facet: FacetShape, toSheet: ToSheet): { marks: readonly PlanMark[]; box: SoftBox } {
  const at = toSheet(facet.labelAt)
  const roomPt = roomAround(at, facet.outline.map(toSheet))
  const full = roomPt >= 34
  const letterPt = full ? 15 : roomPt >= 14 ? 11 : LABEL_PT
  const letter = centredText(facet.letter, up(at, full ? 5 : 0), {
    sizePt: letterPt,
    colour: INK,
    strong: true,
    onWhite: false,
  })
  if (!full) {
    const short = roomPt >= 20 ? [arrow(facet, at, { from: 9, to: Math.min(roomPt - 3, 19) })] : []
    return { marks: [letter, ...short.flat()], box: { at, halfWidthPt: 7, halfHeightPt: 7 } }
  }
  const pitch = centredText(facet.pitchLabel, up(at, -8), {
    sizePt: LABEL_PT,
    colour: QUIET_INK,
    strong: false,
    onWhite: false,
  })
  return {
    marks: [letter, pitch, ...arrow(facet, at, { from: 16, to: Math.min(roomPt - 4, 36) })],
    box: { at, halfWidthPt: 12, halfHeightPt: 14 },
  }
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

/** Edges by kind, and the tags on those long enough to carry one. */
export function edgeMarks(edges: readonly EdgeShape[], toSheet: ToSheet) {
  const lines: readonly PlanMark[] = [...edges]
    .sort((a, b) => DRAWN_ORDER[a.kind] - DRAWN_ORDER[b.kind])
    .map((edge) => line(toSheet(edge.from), toSheet(edge.to), EDGE_LOOKS[edge.kind].pen))
  const tagged = edges.filter((edge) => distance(toSheet(edge.from), toSheet(edge.to)) >= TAGGED_FROM_PT)
  const tags = tagged.map((edge) =>
    centredText(EDGE_LOOKS[edge.kind].tag, middle(toSheet(edge.from), toSheet(edge.to)), {
      sizePt: LABEL_PT,
      colour: QUIET_INK,
      strong: false,
      onWhite: true,
    }),
  )
  const labels: readonly SoftBox[] = tagged.map((edge) => ({
    at: middle(toSheet(edge.from), toSheet(edge.to)),
    halfWidthPt: 6,
    halfHeightPt: 5,
  }))
  return { lines, marks: [...lines, ...tags], labels }
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

/** Distance from a point to the nearest side of an outline. */
function roomAround(at: SheetPoint, outline: readonly SheetPoint[]): number {
  return Math.min(...outline.map((to, i) => toSegment(at, outline.at(i - 1) ?? to, to)))
}

function toSegment(p: SheetPoint, a: SheetPoint, b: SheetPoint): number {
  const along = { x: b.xPt - a.xPt, y: b.yPt - a.yPt }
  const lengthSq = along.x ** 2 + along.y ** 2
  const t = lengthSq === 0 ? 0 : ((p.xPt - a.xPt) * along.x + (p.yPt - a.yPt) * along.y) / lengthSq
  const held = Math.min(Math.max(t, 0), 1)
  return distance(p, { xPt: a.xPt + held * along.x, yPt: a.yPt + held * along.y })
}

function distance(a: SheetPoint, b: SheetPoint): number {
  return Math.hypot(a.xPt - b.xPt, a.yPt - b.yPt)
}

function middle(a: SheetPoint, b: SheetPoint): SheetPoint {
  return { xPt: (a.xPt + b.xPt) / 2, yPt: (a.yPt + b.yPt) / 2 }
}

function up(at: SheetPoint, byPt: number): SheetPoint {
  return { xPt: at.xPt, yPt: at.yPt - byPt }
}
