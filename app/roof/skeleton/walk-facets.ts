import { containsPoint, signedAreaSqFt } from '../polygon.ts'
import type { DirectedEdge } from './directed-rings.ts'
import type { Skeleton } from './grow-skeleton.ts'
import type { SkeletonArc, SkeletonNode } from './skeleton.ts'
import type { SlopePlane } from './slope-plane.ts'
import { PARALLEL } from './tolerances.ts'

/** One step along the outside of a facet, the facet on its left: along an eave or along an arc. */
export interface FacetStep {
  readonly from: SkeletonNode
  readonly to: SkeletonNode
  readonly line:
    | { readonly kind: 'eave'; readonly edge: DirectedEdge }
    | { readonly kind: 'arc'; readonly arc: SkeletonArc }
}

/** Closed walks round one facet: counter-clockwise round its outside, clockwise round what stands free inside it. */
export interface FacetWalk {
  readonly plane: SlopePlane
  readonly steps: readonly FacetStep[]
  readonly holes: readonly (readonly FacetStep[])[]
}

/** The corners of a walk, in order. */
export function cornersOf(steps: readonly FacetStep[]): readonly SkeletonNode[] {
  return steps.map((step) => step.from)
}

/** Plan area of a facet without its holes. */
export function facetAreaSqFt({ steps, holes }: FacetWalk): number {
  return [steps, ...holes].reduce((sum, walk) => sum + signedAreaSqFt(cornersOf(walk)), 0)
}

/**
 * Walks round every facet of a skeleton. Each sloped plane's eaves and arcs, directed with the plane on their left, join at
 * their nodes to closed walks; where one passes a node twice it turns so as to stay round the same piece of roof. A facet
 * has a hole where its slope runs round a courtyard with gables. Null when a walk does not close.
 */
export function walkFacets(
  rings: readonly (readonly DirectedEdge[])[],
  skeleton: Skeleton,
): readonly FacetWalk[] | null {
  const walks: FacetWalk[] = []
  for (const [plane, steps] of stepsByPlane(rings, skeleton)) {
    const leaving = byStart(steps)
    const left = new Set(steps)
    const loops: (readonly FacetStep[])[] = []
    for (const first of steps) {
      if (!left.has(first)) continue
      const loop = walkFrom(first, leaving, left)
      if (loop === null) return null
      loops.push(loop)
    }
    walks.push(...withHoles(plane, loops))
  }
  return walks
}

/** Sorts one plane's loops: those that run clockwise are holes of the facet around them. */
function withHoles(plane: SlopePlane, loops: readonly (readonly FacetStep[])[]): readonly FacetWalk[] {
  const isHole = (loop: readonly FacetStep[]) => signedAreaSqFt(cornersOf(loop)) < 0
  const holes = loops.filter(isHole)
  const facets = loops.filter((loop) => !isHole(loop))
  return facets.map((steps) => ({
    plane,
    steps,
    holes: holes.filter((hole) => facets.length === 1 || liesInside(steps, hole)),
  }))
}

function liesInside(around: readonly FacetStep[], loop: readonly FacetStep[]): boolean {
  const [first] = loop
  if (first === undefined) return false
  const { from, to } = first
  return containsPoint(cornersOf(around), { xFt: (from.xFt + to.xFt) / 2, yFt: (from.yFt + to.yFt) / 2 })
}

function stepsByPlane(
  rings: readonly (readonly DirectedEdge[])[],
  skeleton: Skeleton,
): ReadonlyMap<SlopePlane, readonly FacetStep[]> {
  const steps = new Map<SlopePlane, FacetStep[]>()
  const add = (plane: SlopePlane, step: FacetStep) => {
    if (plane.pitchRise === null) return
    const known = steps.get(plane)
    if (known === undefined) steps.set(plane, [step])
    else known.push(step)
  }
  rings.forEach((ring, ringIndex) => {
    const nodes = skeleton.cornerNodes[ringIndex] ?? []
    ring.forEach((edge, index) => {
      const [from, to] = [nodes[index], nodes[(index + 1) % nodes.length]]
      if (from !== undefined && to !== undefined) add(edge.plane, { from, to, line: { kind: 'eave', edge } })
    })
  })
  for (const arc of skeleton.arcs) {
    add(arc.before, { from: arc.from, to: arc.to, line: { kind: 'arc', arc } })
    add(arc.after, { from: arc.to, to: arc.from, line: { kind: 'arc', arc } })
  }
  return steps
}

function byStart(steps: readonly FacetStep[]): ReadonlyMap<SkeletonNode, readonly FacetStep[]> {
  const leaving = new Map<SkeletonNode, FacetStep[]>()
  for (const step of steps) {
    const known = leaving.get(step.from)
    if (known === undefined) leaving.set(step.from, [step])
    else known.push(step)
  }
  return leaving
}

function walkFrom(
  first: FacetStep,
  leaving: ReadonlyMap<SkeletonNode, readonly FacetStep[]>,
  left: Set<FacetStep>,
): readonly FacetStep[] | null {
  const walk: FacetStep[] = []
  let step: FacetStep | undefined = first
  do {
    walk.push(step)
    left.delete(step)
    const ways: readonly FacetStep[] = leaving.get(step.to) ?? []
    step = nextStep(
      step,
      ways.filter((way) => way === first || left.has(way)),
    )
    if (step === undefined) return null
  } while (step !== first)
  return walk
}

/** The step that goes on from another: of several, the first one clockwise from where the walk came. */
function nextStep(step: FacetStep, ways: readonly FacetStep[]): FacetStep | undefined {
  const [only, second] = ways
  if (second === undefined) return only
  const back = { x: step.from.xFt - step.to.xFt, y: step.from.yFt - step.to.yFt }
  return ways
    .map((way) => ({ way, turn: clockwiseTurn(back, { x: way.to.xFt - way.from.xFt, y: way.to.yFt - way.from.yFt }) }))
    .toSorted((a, b) => a.turn - b.turn)[0]?.way
}

/** Clockwise angle from one direction to another, from 0 up to a full turn; a hair below a full turn is none. */
function clockwiseTurn(
  from: { readonly x: number; readonly y: number },
  to: { readonly x: number; readonly y: number },
): number {
  const angle = Math.atan2(from.y * to.x - from.x * to.y, from.x * to.x + from.y * to.y)
  return angle < -PARALLEL ? angle + 2 * Math.PI : angle
}
