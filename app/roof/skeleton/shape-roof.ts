import type { PlanPoint } from '../../job/places.ts'
import type { EdgeKind } from '../plan-drawing.ts'
import { lengthFt, signedAreaSqFt } from '../polygon.ts'
import type { BuiltEdge, BuiltFacet, BuiltRoof, RoofVertex } from './built-roof.ts'
import type { SkeletonArc, SkeletonNode } from './skeleton.ts'
import { turnCosine, type SlopePlane } from './slope-plane.ts'
import { PARALLEL } from './tolerances.ts'
import { cornersOf, type FacetStep, type FacetWalk } from './walk-facets.ts'

/** A crest within about 6 degrees of level is a ridge, else a hip. */
const LEVEL_SINE = 0.1

/**
 * Turns walks round facets into the roof as others see it. Corners of the outline stand where `drawn` says; eaves stand
 * `eaveHeightFt` above the datum.
 */
export function shapeRoof(
  walks: readonly FacetWalk[],
  drawn: ReadonlyMap<SkeletonNode, PlanPoint>,
  eaveHeightFt: number,
): BuiltRoof {
  const positions = new Map<SkeletonNode, number>()
  const vertices: RoofVertex[] = []
  for (const node of walks.flatMap(({ steps, holes }) => cornersOf([steps, ...holes].flat()))) {
    if (positions.has(node)) continue
    positions.set(node, vertices.length)
    const { xFt, yFt } = drawn.get(node) ?? node
    vertices.push({ xFt, yFt, heightFt: node.heightFt + eaveHeightFt })
  }
  const place = { vertices, positionOf: (node: SkeletonNode) => positions.get(node) ?? -1 }
  return { vertices, facets: walks.map((walk) => shapeFacet(walk, place)), edges: shapeEdges(walks, place) }
}

interface Placing {
  readonly vertices: readonly RoofVertex[]
  readonly positionOf: (node: SkeletonNode) => number
}

function shapeFacet({ plane, steps, holes }: FacetWalk, { vertices, positionOf }: Placing): BuiltFacet {
  const pointsOf = (positions: readonly number[]) =>
    positions.flatMap((position): PlanPoint[] => {
      const vertex = vertices[position]
      return vertex === undefined ? [] : [{ xFt: vertex.xFt, yFt: vertex.yFt }]
    })
  const corners = cornersOf(steps).map(positionOf)
  const holeCorners = holes.map((hole) => cornersOf(hole).map(positionOf))
  return {
    eaves: steps.flatMap(({ line }) => (line.kind === 'eave' ? [line.edge.place] : [])),
    corners,
    outline: pointsOf(corners),
    holes: holeCorners,
    pitchRise: plane.pitchRise ?? 0,
    downhill: { x: -plane.inwardX, y: -plane.inwardY },
    planAreaSqFt: [corners, ...holeCorners].reduce((sum, loop) => sum + signedAreaSqFt(pointsOf(loop)), 0),
  }
}

/** Every line once: arcs between two slopes when the second facet comes to them, lines at walls and eaves at once. */
function shapeEdges(walks: readonly FacetWalk[], { vertices, positionOf }: Placing): readonly BuiltEdge[] {
  const edges: BuiltEdge[] = []
  const add = (kind: EdgeKind, step: FacetStep, facets: readonly number[]) => {
    const [from, to] = [positionOf(step.from), positionOf(step.to)]
    const [start, end] = [vertices[from], vertices[to]]
    if (start === undefined || end === undefined) return
    const planLengthFt = lengthFt(start, end)
    const trueLengthFt = Math.hypot(planLengthFt, end.heightFt - start.heightFt)
    edges.push({ kind, from, to, planLengthFt, trueLengthFt, facets })
  }
  const facetAt = new Map<SkeletonArc, number>()
  walks.forEach(({ plane, steps, holes }, facet) => {
    for (const step of [steps, ...holes].flat()) {
      if (step.line.kind === 'eave') {
        add('eave', step, [facet])
        continue
      }
      const { arc } = step.line
      const beyond = arc.before === plane ? arc.after : arc.before
      const other = facetAt.get(arc)
      if (beyond.pitchRise === null) add(kindAtWall(step, plane, beyond), step, [facet])
      else if (other === undefined) facetAt.set(arc, facet)
      else add(kindBetween(arc), step, [other, facet])
    }
  })
  return edges
}

/** Where two slopes meet: by which of them drain across the line between them. */
function kindBetween(arc: SkeletonArc): EdgeKind {
  const runFt = lengthFt(arc.from, arc.to)
  const [x, y] = [(arc.to.xFt - arc.from.xFt) / runFt, (arc.to.yFt - arc.from.yFt) / runFt]
  // The slope before lies on the left of the arc, the one after on its right.
  const away = [arc.before.inwardX * y - arc.before.inwardY * x, arc.after.inwardY * x - arc.after.inwardX * y]
  const isLevel = [arc.before, arc.after].every((plane) => Math.abs(plane.inwardX * x + plane.inwardY * y) < LEVEL_SINE)
  if (arc.isCrest && away.every((flow) => flow > -PARALLEL)) return isLevel ? 'ridge' : 'hip'
  return !arc.isCrest && away.every((flow) => flow < PARALLEL) ? 'valley' : 'pitch-break'
}

/** Where a slope ends at an upright plane: in front of the wall it is a step, behind it the roof's own outer edge. */
function kindAtWall(step: FacetStep, slope: SlopePlane, wall: SlopePlane): EdgeKind {
  const along = (step.to.xFt - step.from.xFt) * wall.alongX + (step.to.yFt - step.from.yFt) * wall.alongY
  if (along < 0) return 'step'
  const facing = turnCosine(slope, wall)
  if (Math.abs(facing) < 1 - LEVEL_SINE ** 2 / 2) return 'rake'
  return facing < 0 ? 'top-edge' : 'eave'
}
