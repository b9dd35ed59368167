import type { PlanPoint } from '../../job/places.ts'
import type { SlopePlane } from './slope-plane.ts'
import { turnCosine, turnSine } from './slope-plane.ts'
import { PARALLEL, SAME_PLACE_FT } from './tolerances.ts'
import type { WaveVertex } from './wave-vertex.ts'

/** A stretch of the wavefront that runs through a meeting place: it arrives on one front and leaves on another. */
export interface Strand {
  readonly arrives: SlopePlane
  /** The corner from which it arrives. */
  readonly from: WaveVertex
  readonly leaves: SlopePlane
  /** The corner to which it leaves. */
  readonly to: WaveVertex
  /** The corners of this strand that stand at the place; none when one front runs straight through. */
  readonly corners: readonly WaveVertex[]
}

/** Everything that is at one place at one height. */
export interface Meeting {
  readonly strands: readonly Strand[]
  /** Every corner at the place, those of loops that have shrunk to it as well. */
  readonly corners: readonly WaveVertex[]
}

/** A place and a height, with what is known to be there whatever rounding says. */
export interface MeetingPlace {
  readonly point: PlanPoint
  readonly heightFt: number
  readonly corners: readonly WaveVertex[]
  /** The first corner of a front that is known to run through. */
  readonly front: WaveVertex | null
}

/**
 * Reads off the wavefront what is at a place, without regard to which event led there. Events that coincide are so met
 * all at once, however many there are; those that are still in the queue find their corners gone.
 */
export function meetingAt(wavefront: readonly WaveVertex[], place: MeetingPlace): Meeting {
  const { heightFt, point } = place
  const here = new Set(place.corners)
  const through = place.front === null ? [] : [place.front]
  for (const corner of wavefront) {
    const [dx, dy] = [point.xFt - corner.xAt(heightFt), point.yFt - corner.yAt(heightFt)]
    if (Math.abs(dx) < SAME_PLACE_FT && Math.abs(dy) < SAME_PLACE_FT) here.add(corner)
    else if (runsThrough(corner, [dx, dy], place)) through.push(corner)
  }
  const strands: Strand[] = []
  for (const corner of here) if (!here.has(corner.previous)) strands.push(strandFrom(corner, here))
  for (const start of new Set(through)) {
    if (here.has(start) || here.has(start.next)) continue
    strands.push({ arrives: start.after, from: start, leaves: start.after, to: start.next, corners: [] })
  }
  return { strands, corners: [...here] }
}

/** True when the front that starts at a corner runs through a place, which lies at (dx, dy) from the corner. */
function runsThrough({ after, next }: WaveVertex, [dx, dy]: readonly [number, number], place: MeetingPlace): boolean {
  if (Math.abs(after.inwardX * dx + after.inwardY * dy) > SAME_PLACE_FT) return false
  const { point, heightFt } = place
  const toEndFt = after.alongX * (next.xAt(heightFt) - point.xFt) + after.alongY * (next.yAt(heightFt) - point.yFt)
  return after.alongX * dx + after.alongY * dy > 0 && toEndFt > 0
}

function strandFrom(first: WaveVertex, here: ReadonlySet<WaveVertex>): Strand {
  const corners = [first]
  let last = first
  while (here.has(last.next)) {
    last = last.next
    corners.push(last)
  }
  return { arrives: first.before, from: first.previous, leaves: last.after, to: last.next, corners }
}

/** A stretch that arrives and the one that leaves next to it, with nothing but roof between them. */
export interface Wedge {
  readonly arrival: Strand
  readonly departure: Strand
}

/**
 * Joins strands anew. Around the place, stretches that leave and arrive take turns, and every wedge of roof between a
 * leaving stretch and the next arriving one (counter-clockwise) goes on as a corner of its own. The narrowest wedges are
 * taken first, so that fronts which lie on each other, with no roof between them, find each other in spite of rounding.
 */
export function wedgesBetween(strands: readonly Strand[]): readonly Wedge[] {
  const [only] = strands
  if (only !== undefined && strands.length === 1) return [{ arrival: only, departure: only }]
  const pairs = strands
    .flatMap((departure) =>
      strands.map((arrival) => ({ arrival, departure, angle: wedgeAngle(departure.leaves, arrival.arrives) })),
    )
    .toSorted((a, b) => a.angle - b.angle)
  const wedges: Wedge[] = []
  for (const { arrival, departure } of pairs) {
    if (wedges.every((wedge) => wedge.arrival !== arrival && wedge.departure !== departure))
      wedges.push({ arrival, departure })
  }
  return wedges
}

/** Counter-clockwise angle from a stretch that leaves to one that arrives, radians; a hair below a full turn is none. */
function wedgeAngle(leaves: SlopePlane, arrives: SlopePlane): number {
  const angle = Math.atan2(-turnSine(leaves, arrives), -turnCosine(leaves, arrives))
  if (angle > -PARALLEL && angle < 0) return 0
  return angle < 0 ? angle + 2 * Math.PI : angle
}

/** Planes must cross at least this squarely to fix a place better than the corners' own paths do. */
const SQUARE_ENOUGH = 0.05

/**
 * The place where a meeting's planes cross at its height, from the two that cross most squarely. Taken from the planes
 * themselves, so that rounding does not build up from meeting to meeting.
 */
export function crossingPlace(meeting: Meeting, heightFt: number, near: PlanPoint): PlanPoint {
  const planes = meeting.strands.flatMap((strand) => [strand.arrives, strand.leaves])
  for (const corner of meeting.corners) planes.push(corner.before, corner.after)
  let best: { readonly a: SlopePlane; readonly b: SlopePlane; readonly sine: number } | undefined
  planes.forEach((a, index) => {
    for (const b of planes.slice(index + 1)) {
      const sine = turnSine(a, b)
      if (Math.abs(sine) > Math.abs(best?.sine ?? SQUARE_ENOUGH)) best = { a, b, sine }
    }
  })
  if (best === undefined) return near
  const { a, b, sine } = best
  const aFt = a.offsetFt + a.runPerRise * heightFt
  const bFt = b.offsetFt + b.runPerRise * heightFt
  return { xFt: (aFt * b.inwardY - bFt * a.inwardY) / sine, yFt: (a.inwardX * bFt - b.inwardX * aFt) / sine }
}
