import type { DimensionShape, EdgeKind, PlanDrawing } from '../plan-drawing.ts'
import type { PlanPoint } from '../../job/places.ts'
import { containsPoint, lengthFt } from '../polygon.ts'

const OUTER: readonly EdgeKind[] = ['eave', 'rake', 'top-edge']

/** Ends nearer than this are one corner, feet. */
const SAME_CORNER_FT = 1 / 24

/** Sine of the turn up to which two edges run on in one line. */
const STRAIGHT = 0.004

/** How far beside an edge the roof is looked for, feet. */
const BESIDE_FT = 0.2

interface Run {
  readonly from: PlanPoint
  readonly to: PlanPoint
}

/** The straight runs along the outside of a roof, edges in one line taken together, with their lengths in plan. */
export function outerRuns(drawing: Pick<PlanDrawing, 'edges' | 'facets'>): readonly DimensionShape[] {
  let runs: readonly Run[] = []
  for (const { kind, from, to } of drawing.edges) if (OUTER.includes(kind)) runs = joined(runs, { from, to })
  return runs.flatMap(({ from, to }) => {
    const length = lengthFt(from, to)
    const across = { x: (from.yFt - to.yFt) / length, y: (to.xFt - from.xFt) / length }
    const beside = (side: number): PlanPoint => ({
      xFt: (from.xFt + to.xFt) / 2 + side * BESIDE_FT * across.x,
      yFt: (from.yFt + to.yFt) / 2 + side * BESIDE_FT * across.y,
    })
    const isRoof = (at: PlanPoint) => drawing.facets.some(({ outline }) => containsPoint(outline, at))
    const [left, right] = [isRoof(beside(1)), isRoof(beside(-1))]
    if (left === right) return []
    const outward = left ? { x: -across.x, y: -across.y } : across
    return [{ from, to, lengthFt: length, outward }]
  })
}

/** The runs with one more: it runs on from those that end where it starts or start where it ends, in the same line. */
function joined(runs: readonly Run[], next: Run): readonly Run[] {
  let whole = next
  const left = runs.filter((run) => {
    const longer = inLine(run, whole)
    if (longer !== null) whole = longer
    return longer === null
  })
  return [...left, whole]
}

function inLine(a: Run, b: Run): Run | null {
  for (const one of [a, turned(a)]) {
    for (const other of [b, turned(b)]) {
      if (lengthFt(one.to, other.from) <= SAME_CORNER_FT && isStraight(one, other))
        return { from: one.from, to: other.to }
    }
  }
  return null
}

function turned({ from, to }: Run): Run {
  return { from: to, to: from }
}

function isStraight(a: Run, b: Run): boolean {
  const [ax, ay] = [a.to.xFt - a.from.xFt, a.to.yFt - a.from.yFt]
  const [bx, by] = [b.to.xFt - b.from.xFt, b.to.yFt - b.from.yFt]
  const size = Math.hypot(ax, ay) * Math.hypot(bx, by)
  return ax * bx + ay * by > 0 && Math.abs(ax * by - ay * bx) <= STRAIGHT * size
}
