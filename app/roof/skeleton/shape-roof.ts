import type { EdgeKind } from '../plan-drawing.ts'
import { lengthFt } from '../polygon.ts'
import type { BuiltEdge, BuiltFacet, BuiltRoof, RoofVertex } from './built-roof.ts'
import type { SkeletonArc, SkeletonNode } from './skeleton.ts'
import { turnCosine, type SlopePlane } from './slope-plane.ts'
import { cornersOf, facetAreaSqFt, type FacetStep, type FacetWalk } from './walk-facets.ts'

/** A crest within about 6 degrees of level is a ridge, else a hip. */
const LEVEL_SINE = 0.1

/** Turns walks round facets into the roof as others see it. */
export function shapeRoof(walks: readonly FacetWalk[], eaveHeightFt: number): BuiltRoof {
  const vertices: RoofVertex[] = []
  const positions = new Map<SkeletonNode, number>()
  const positionOf = (node: SkeletonNode): number => {
    const known = positions.get(node)
    if (known !== undefined) return known
    positions.set(node, vertices.length)
    return vertices.push({ xFt: node.xFt, yFt: node.yFt, heightFt: node.heightFt + eaveHeightFt }) - 1
  }
  const facets = walks.map((walk) => shapeFacet(walk, positionOf))
  const facetsOfArc = new Map<SkeletonArc, { readonly facet: number; readonly plane: SlopePlane }[]>()
  const edges: BuiltEdge[] = []
  const edgeOf = (kind: EdgeKind, step: FacetStep, sides: readonly number[]): BuiltEdge => {
    const planLengthFt = lengthFt(step.from, step.to)
    const riseFt = step.to.heightFt - step.from.heightFt
    const [from, to] = [positionOf(step.from), positionOf(step.to)]
    return { kind, from, to, planLengthFt, trueLengthFt: Math.hypot(planLengthFt, riseFt), facets: sides }
  }
  walks.forEach(({ plane, steps, holes }, facet) => {
    for (const step of [steps, ...holes].flat()) {
      if (step.line.kind === 'eave') {
        edges.push(edgeOf('eave', step, [facet]))
        continue
      }
      const { arc } = step.line
      const wall = otherPlane(arc, plane)
      if (wall.pitchRise === null) {
        edges.push(edgeOf(kindAtWall(step, plane, wall), step, [facet]))
        continue
      }
      const sides = facetsOfArc.get(arc) ?? []
      facetsOfArc.set(arc, [...sides, { facet, plane }])
      const [other] = sides
      if (other !== undefined) edges.push(edgeOf(kindBetween(step, arc), step, [other.facet, facet]))
    }
  })
  return { vertices, facets, edges }
}

function shapeFacet(walk: FacetWalk, positionOf: (node: SkeletonNode) => number): BuiltFacet {
  const { plane, steps, holes } = walk
  return {
    eaves: steps.flatMap(({ line }) => (line.kind === 'eave' ? [line.edge.place] : [])),
    corners: cornersOf(steps).map(positionOf),
    outline: cornersOf(steps).map(({ xFt, yFt }) => ({ xFt, yFt })),
    holes: holes.map((hole) => cornersOf(hole).map(positionOf)),
    pitchRise: plane.pitchRise ?? 0,
    downhill: { x: -plane.inwardX, y: -plane.inwardY },
    planAreaSqFt: facetAreaSqFt(walk),
  }
}

function otherPlane(arc: SkeletonArc, plane: SlopePlane): SlopePlane {
  return arc.before === plane ? arc.after : arc.before
}

/** Where two slopes meet: by which of them drain across the line between them. */
function kindBetween(step: FacetStep, arc: SkeletonArc): EdgeKind {
  const flows = [arc.before, arc.after].map((plane) => {
    const runFt = lengthFt(step.from, step.to)
    const x = (arc.to.xFt - arc.from.xFt) / runFt
    const y = (arc.to.yFt - arc.from.yFt) / runFt
    const leftward = -plane.inwardX * -y + -plane.inwardY * x
    const intoFacet = plane === arc.before ? leftward : -leftward
    return { drainsAway: intoFacet >= 0, alongSine: Math.abs(plane.inwardX * x + plane.inwardY * y) }
  })
  if (arc.isCrest && flows.every((flow) => flow.drainsAway))
    return flows.every((flow) => flow.alongSine < LEVEL_SINE) ? 'ridge' : 'hip'
  return !arc.isCrest && flows.every((flow) => !flow.drainsAway) ? 'valley' : 'pitch-break'
}

/** Where a slope ends at an upright plane: in front of the wall it is a step, behind it the roof's own outer edge. */
function kindAtWall(step: FacetStep, slope: SlopePlane, wall: SlopePlane): EdgeKind {
  const along = (step.to.xFt - step.from.xFt) * wall.alongX + (step.to.yFt - step.from.yFt) * wall.alongY
  if (along < 0) return 'step'
  const facing = turnCosine(slope, wall)
  if (Math.abs(facing) < 1 - LEVEL_SINE ** 2 / 2) return 'rake'
  return facing < 0 ? 'top-edge' : 'eave'
}
