import type { PlanPoint } from '../../job/places.ts'
import type { DirectedEdge } from './directed-rings.ts'
import { EventQueue } from './event-queue.ts'
import { crossingPlace, meetingAt, wedgesBetween, type MeetingPlace } from './meeting.ts'
import { IN_LINE, SAME_PLACE_FT } from './tolerances.ts'
import type { SkeletonArc, SkeletonNode } from './skeleton.ts'
import { turnCosine, turnSine, uprightAt } from './slope-plane.ts'
import { foresee, stillHolds, type WaveEvent } from './wave-events.ts'
import type { WaveVertex } from './wave-vertex.ts'
import { frontLengthFt, link, placeAt, Wavefront } from './wavefront.ts'

/** What a wavefront leaves behind. */
export interface Skeleton {
  readonly arcs: readonly SkeletonArc[]
  /** The node of each corner of each ring, as the edges start there. */
  readonly cornerNodes: readonly (readonly SkeletonNode[])[]
  /** Corners that no event ended: the part of the roof around them has no slope to cover it. */
  readonly leftOver: readonly WaveVertex[]
}

/** A sound wavefront needs at most a few; more means that rounding has led it in a circle. */
const MEETINGS_PER_CORNER = 20

/**
 * Weighted straight skeleton by wavefront propagation (Aichholzer and Aurenhammer 1996; weights as in Biedl, Held, Huber,
 * Kaaser and Palfrader 2015). Every edge moves into the roof by 12 / pitch feet for a foot of height; gable edges stand
 * still. Where the wavefront meets itself it is joined anew, and the paths of its corners are the lines of the roof.
 *
 * Weights leave three cases open, settled here so that the roof is one that is built:
 * - Two fronts of one direction and line but different pitch become neighbours after the edge between them is used up.
 *   The longer front takes over the other's stretch (a main roof goes on behind a bump-out, and past a niche); of equal
 *   ones the steeper. The line between them is level: a pitch break, or the head of a slope at a gable wall.
 * - Edges of the outline on one line with different pitches have no common line to run along. An upright wall goes up from
 *   their corner, at right angles to them.
 * - A gable beside an inner corner goes on into the roof on its own line as an upright wall, as far as lower slopes reach it.
 */
export function growSkeleton(rings: readonly (readonly DirectedEdge[])[]): Skeleton {
  const wavefront = new Wavefront()
  const cornerNodes = rings.map((ring) => start(wavefront, ring))
  const queue = new EventQueue<WaveEvent>()
  foresee(queue, wavefront.corners, { heightFt: 0, fronts: wavefront.corners, corners: wavefront.corners })
  let heightFt = 0
  let meetingsLeft = MEETINGS_PER_CORNER * wavefront.corners.length
  for (let event = queue.pop(); event !== undefined && meetingsLeft > 0; event = queue.pop()) {
    if (!stillHolds(event)) continue
    meetingsLeft--
    heightFt = Math.max(heightFt, event.heightFt)
    settle({ wavefront, queue, place: placeOf(event, heightFt) })
  }
  return { arcs: wavefront.arcs, cornerNodes, leftOver: wavefront.corners }
}

/** Puts one ring's corners on the wavefront. Edges of one plane run on as one front. */
function start(wavefront: Wavefront, ring: readonly DirectedEdge[]): readonly SkeletonNode[] {
  const nodes = ring.map(({ from }): SkeletonNode => ({ xFt: from.xFt, yFt: from.yFt, heightFt: 0 }))
  const corners = ring.flatMap((edge, index) => {
    const earlier = ring.at(index - 1)
    const node = nodes[index]
    return earlier === undefined || node === undefined ? [] : cornersBetween(wavefront, [earlier, edge], node)
  })
  corners.forEach((corner, index) => link(corners.at(index - 1) ?? corner, corner))
  return nodes
}

function cornersBetween(
  wavefront: Wavefront,
  [earlier, edge]: readonly [DirectedEdge, DirectedEdge],
  node: SkeletonNode,
): readonly WaveVertex[] {
  const [before, after] = [earlier.plane, edge.plane]
  if (before === after) return []
  const isInLine = Math.abs(turnSine(before, after)) < IN_LINE && turnCosine(before, after) > 0
  if (!isInLine || before.runPerRise === after.runPerRise) return [wavefront.birth({ before, after }, node)]
  const side = before.runPerRise > after.runPerRise ? -1 : 1
  const wall = uprightAt(node, { x: before.inwardX * side, y: before.inwardY * side })
  return [wavefront.birth({ before, after: wall }, node), wavefront.birth({ before: wall, after }, node)]
}

function placeOf(event: WaveEvent, heightFt: number): MeetingPlace {
  switch (event.kind) {
    case 'collapse': {
      const { corner, next } = event
      const [slower] = Math.hypot(corner.runX, corner.runY) < Math.hypot(next.runX, next.runY) ? [corner] : [next]
      return { point: placeAt(slower, heightFt), heightFt, corners: [corner, next], front: null }
    }
    case 'hit':
      return { point: placeAt(event.corner, heightFt), heightFt, corners: [event.corner], front: event.start }
    case 'rush':
      return rushEnd(event.corner, heightFt)
  }
}

/** Where a rushing corner comes to rest: at the end of the stretch that it uses up. */
function rushEnd(corner: WaveVertex, heightFt: number): MeetingPlace {
  const [back, ahead] = [corner.previous, corner.next]
  const [backFt, aheadFt] = [frontLengthFt(back, heightFt), frontLengthFt(corner, heightFt)]
  const isTie = Math.abs(backFt - aheadFt) < SAME_PLACE_FT
  if (corner.meet === 'opposed' && isTie)
    return { point: placeAt(back, heightFt), heightFt, corners: [corner, back, ahead], front: null }
  const isBackSteeper = corner.before.runPerRise < corner.after.runPerRise
  const usesUpBack = isTie ? !isBackSteeper : backFt < aheadFt
  const end = usesUpBack ? back : ahead
  return { point: placeAt(end, heightFt), heightFt, corners: [corner, end], front: null }
}

/** Ends the corners at a place, joins what runs through it anew, and foresees what follows. */
function settle({
  wavefront,
  queue,
  place,
}: {
  readonly wavefront: Wavefront
  readonly queue: EventQueue<WaveEvent>
  readonly place: MeetingPlace
}): void {
  const { heightFt } = place
  const meeting = meetingAt(wavefront.corners, place)
  const wedges = wedgesBetween(meeting.strands)
  const changesNothing = meeting.strands.every((strand) => strand.corners.length < 2)
  if (changesNothing && meeting.corners.length === meeting.strands.flatMap((s) => s.corners).length) {
    if (wedges.every((wedge) => wedge.arrival === wedge.departure)) return
  }
  const node = nodeOf(meeting.corners, { ...crossingPlace(meeting, heightFt, place.point), heightFt })
  for (const corner of meeting.corners) wavefront.end(corner, node)
  const born: WaveVertex[] = []
  const fronts = new Set<WaveVertex>()
  for (const { arrival, departure } of wedges) {
    const [before, after] = [arrival.arrives, departure.leaves]
    fronts.add(arrival.from)
    if (before === after) {
      link(arrival.from, departure.to)
      continue
    }
    const corner = wavefront.birth({ before, after }, node)
    link(arrival.from, corner)
    link(corner, departure.to)
    fronts.add(corner)
    born.push(corner)
  }
  foresee(queue, wavefront.corners, { heightFt, fronts: [...fronts].filter((c) => c.alive), corners: born })
}

/** The node for a meeting: one that a corner was born at just here, or a new one. */
function nodeOf(corners: readonly WaveVertex[], place: SkeletonNode): SkeletonNode {
  const known = corners.find((corner) => isSamePlace(corner.node, place))
  return known?.node ?? place
}

function isSamePlace(a: SkeletonNode, b: PlanPoint & { readonly heightFt: number }): boolean {
  return (
    Math.abs(a.xFt - b.xFt) < SAME_PLACE_FT &&
    Math.abs(a.yFt - b.yFt) < SAME_PLACE_FT &&
    Math.abs(a.heightFt - b.heightFt) < SAME_PLACE_FT
  )
}
