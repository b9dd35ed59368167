import type { PlanPoint } from '../../job/places.ts'
import { labelPoint } from '../draw-plan.ts'
import type {
  DimensionShape,
  EdgeShape,
  FacetShape,
  PinShape,
  PlanBounds,
  PlanDrawing,
  PlanWindow,
  ZoneShape,
} from '../plan-drawing.ts'
import { signedAreaSqFt } from '../polygon.ts'

/** Slivers smaller than this are not drawn, square feet. */
const LEAST_SQFT = 0.01

/** The part of a drawing that lies inside bounds. A pin belongs to the part that its marker stands in. */
export function clippedDrawing(drawing: PlanDrawing, bounds: PlanBounds): PlanDrawing {
  return {
    ...drawing,
    facets: drawing.facets.flatMap((facet) => clippedFacet(facet, bounds)),
    edges: drawing.edges.flatMap((edge) => clippedEdge(edge, bounds)),
    pins: drawing.pins.filter(({ markerAt }) => holds(bounds, markerAt)).map((pin) => clippedPin(pin, bounds)),
    cameras: drawing.cameras.filter(({ at }) => holds(bounds, at)),
    ...(drawing.zones === undefined ? {} : { zones: drawing.zones.flatMap((zone) => clippedZone(zone, bounds)) }),
    ...(drawing.dimensions === undefined
      ? {}
      : { dimensions: drawing.dimensions.flatMap((run) => clippedRun(run, bounds)) }),
  }
}

/** Parts inside bounds of lines and areas whose markers stand elsewhere. */
export function extentsFromElsewhere(pins: readonly PinShape[], bounds: PlanBounds): PlanWindow['extents'] {
  return pins
    .filter((pin) => pin.kind !== 'point' && !holds(bounds, pin.markerAt))
    .flatMap((pin): PlanWindow['extents'] => {
      if (pin.kind === 'area') {
        const points = clippedRing(pin.points, bounds)
        return points.length < 3 ? [] : [{ kind: 'area', points }]
      }
      return clippedLine(pin.points, bounds).map((points) => ({ kind: 'line', points }))
    })
}

/** True for a point in bounds; the left and lower sides count, so that windows side by side share no point. */
function holds({ minXFt, minYFt, maxXFt, maxYFt }: PlanBounds, { xFt, yFt }: PlanPoint): boolean {
  return xFt >= minXFt && xFt < maxXFt && yFt >= minYFt && yFt < maxYFt
}

function clippedFacet(facet: FacetShape, bounds: PlanBounds): readonly FacetShape[] {
  const outline = clippedRing(facet.outline, bounds)
  if (outline.length < 3 || Math.abs(signedAreaSqFt(outline)) < LEAST_SQFT) return []
  return [{ ...facet, outline, labelAt: labelPoint(outline) }]
}

function clippedZone({ zone, region }: ZoneShape, bounds: PlanBounds): readonly ZoneShape[] {
  const inside = region.flatMap(({ outer, holes }) => {
    const ring = clippedRing(outer, bounds)
    if (ring.length < 3) return []
    return [{ outer: ring, holes: holes.map((hole) => clippedRing(hole, bounds)).filter(({ length }) => length >= 3) }]
  })
  return inside.length === 0 ? [] : [{ zone, region: inside }]
}

function clippedPin(pin: PinShape, bounds: PlanBounds): PinShape {
  switch (pin.kind) {
    case 'point':
      return pin
    case 'area':
      return { ...pin, points: clippedRing(pin.points, bounds) }
    case 'line': {
      const [longest] = clippedLine(pin.points, bounds).toSorted((a, b) => b.length - a.length)
      return { ...pin, points: longest ?? [] }
    }
  }
}

function clippedEdge({ kind, from, to }: EdgeShape, bounds: PlanBounds): readonly EdgeShape[] {
  const inside = clippedLeg(from, to, bounds)
  return inside === null ? [] : [{ kind, from: inside[0], to: inside[1] }]
}

/** A run is told on the sheet that its middle is on, beside the part of it that is there. */
function clippedRun(run: DimensionShape, bounds: PlanBounds): readonly DimensionShape[] {
  if (!holds(bounds, between(run.from, run.to, 0.5))) return []
  const part = clippedLeg(run.from, run.to, bounds)
  if (part === null) return []
  const [from, to] = part
  return from === run.from && to === run.to ? [run] : [{ ...run, from, to, goesOn: true }]
}

type Inside = (point: PlanPoint) => number

/** How far a point is inside each of the four sides, feet; negative outside. */
function sidesOfBounds({ minXFt, minYFt, maxXFt, maxYFt }: PlanBounds): readonly Inside[] {
  return [(p) => p.xFt - minXFt, (p) => maxXFt - p.xFt, (p) => p.yFt - minYFt, (p) => maxYFt - p.yFt]
}

/**
 * A closed outline cut to bounds, side by side (I. Sutherland and G. Hodgman, 1974). Where it falls into several parts,
 * they stay joined along the bounds, which is enough for filling.
 */
function clippedRing(ring: readonly PlanPoint[], bounds: PlanBounds): readonly PlanPoint[] {
  return sidesOfBounds(bounds).reduce(
    (left, inside) =>
      left.flatMap((point, i) => {
        const before = left.at(i - 1) ?? point
        const [a, b] = [inside(before), inside(point)]
        const crossing = a >= 0 === b >= 0 ? [] : [between(before, point, a / (a - b))]
        return b >= 0 ? [...crossing, point] : crossing
      }),
    ring,
  )
}

/** A straight leg cut to bounds; null where it misses them. */
function clippedLeg(from: PlanPoint, to: PlanPoint, bounds: PlanBounds): readonly [PlanPoint, PlanPoint] | null {
  let [start, end] = [0, 1]
  for (const inside of sidesOfBounds(bounds)) {
    const [a, b] = [inside(from), inside(to)]
    if (a < 0 && b < 0) return null
    if (a < 0) start = Math.max(start, a / (a - b))
    else if (b < 0) end = Math.min(end, a / (a - b))
  }
  return start >= end ? null : [between(from, to, start), between(from, to, end)]
}

/** The parts of a line of several legs that lie inside bounds. */
function clippedLine(points: readonly PlanPoint[], bounds: PlanBounds): readonly (readonly PlanPoint[])[] {
  const parts: PlanPoint[][] = []
  points.slice(1).forEach((to, i) => {
    const leg = clippedLeg(points[i] ?? to, to, bounds)
    if (leg === null) return
    const last = parts.at(-1)
    const end = last?.at(-1)
    if (last !== undefined && end?.xFt === leg[0].xFt && end.yFt === leg[0].yFt) last.push(leg[1])
    else parts.push([...leg])
  })
  return parts
}

function between(from: PlanPoint, to: PlanPoint, share: number): PlanPoint {
  if (share === 0) return from
  if (share === 1) return to
  return { xFt: from.xFt + share * (to.xFt - from.xFt), yFt: from.yFt + share * (to.yFt - from.yFt) }
}
