import type { EventQueue } from './event-queue.ts'
import { SAME_PLACE_FT } from './tolerances.ts'
import type { WaveVertex } from './wave-vertex.ts'
import { frontLengthFt } from './wavefront.ts'

/**
 * What can change the wavefront.
 *
 * - `collapse`: the front from `corner` to `next` shrinks to nothing (the literature's edge event).
 * - `hit`: a reflex corner runs into the front from `start` to `end`, or into one of its ends (split and vertex events).
 * - `rush`: a corner between parallel fronts runs along them without gaining height.
 *
 * An event holds while its corners live and still follow each other; otherwise it is out of date.
 */
export type WaveEvent = { readonly heightFt: number } & (
  | { readonly kind: 'collapse'; readonly corner: WaveVertex; readonly next: WaveVertex }
  | { readonly kind: 'hit'; readonly corner: WaveVertex; readonly start: WaveVertex; readonly end: WaveVertex }
  | { readonly kind: 'rush'; readonly corner: WaveVertex }
)

/**
 * Overtaking waits until everything else at its height is done, feet: it would take over a stretch that meets another
 * front at the same moment and leave a facet without width. More than rounding, less than counts as one place.
 */
const LAST_OF_HEIGHT_FT = 1e-10

/** Slower than this, feet per foot of rise, two things keep their distance: no house is tall enough for them to meet. */
const STILL = 1e-9

/** False once something else has happened to an event's corners. */
export function stillHolds(event: WaveEvent): boolean {
  switch (event.kind) {
    case 'collapse':
      return event.corner.alive && event.next.alive && event.corner.next === event.next
    case 'hit':
      return event.corner.alive && event.start.alive && event.end.alive && event.start.next === event.end
    case 'rush':
      return event.corner.alive
  }
}

/** What changed in the wavefront at a height: fronts with a new end, by their first corner, and new corners. */
export interface Change {
  readonly heightFt: number
  readonly fronts: readonly WaveVertex[]
  readonly corners: readonly WaveVertex[]
}

/** Foresees every event that a change makes possible; those foreseen before stay in the queue. */
export function foresee(queue: EventQueue<WaveEvent>, wavefront: readonly WaveVertex[], change: Change): void {
  const { heightFt } = change
  for (const corner of change.corners) {
    if (corner.meet === 'opposed') queue.push({ kind: 'rush', heightFt, corner })
    if (corner.meet === 'overtaking') queue.push({ kind: 'rush', heightFt: heightFt + LAST_OF_HEIGHT_FT, corner })
    if (corner.meet === 'reflex') for (const start of wavefront) foreseeHit(queue, { corner, start, heightFt })
  }
  for (const start of change.fronts) {
    foreseeCollapse(queue, start, heightFt)
    for (const corner of wavefront) {
      if (corner.meet === 'reflex' && !change.corners.includes(corner)) foreseeHit(queue, { corner, start, heightFt })
    }
  }
}

function foreseeCollapse(queue: EventQueue<WaveEvent>, corner: WaveVertex, nowFt: number): void {
  const { next } = corner
  const { alongX, alongY } = corner.after
  const growth = alongX * (next.runX - corner.runX) + alongY * (next.runY - corner.runY)
  const isLoopOfTwo = next.next === corner && !corner.isRushing
  if (growth > -STILL && !isLoopOfTwo) return
  const leftFt = Math.max(0, frontLengthFt(corner, nowFt))
  queue.push({ kind: 'collapse', heightFt: isLoopOfTwo ? nowFt : nowFt - leftFt / growth, corner, next })
}

/** A corner, the front that starts at another, and the height from which to look. */
interface Approach {
  readonly corner: WaveVertex
  readonly start: WaveVertex
  readonly heightFt: number
}

function foreseeHit(queue: EventQueue<WaveEvent>, { corner, start, heightFt: nowFt }: Approach): void {
  const end = start.next
  if (start === corner || end === corner) return
  const plane = start.after
  const closing = plane.runPerRise - plane.inwardX * corner.runX - plane.inwardY * corner.runY
  if (closing < STILL) return
  const aheadFt =
    plane.inwardX * corner.xAt(nowFt) + plane.inwardY * corner.yAt(nowFt) - plane.offsetFt - plane.runPerRise * nowFt
  if (aheadFt < -SAME_PLACE_FT) return
  const heightFt = nowFt + Math.max(0, aheadFt) / closing
  const [x, y] = [corner.xAt(heightFt), corner.yAt(heightFt)]
  const { alongX, alongY } = plane
  if (alongX * (x - start.xAt(heightFt)) + alongY * (y - start.yAt(heightFt)) < -SAME_PLACE_FT) return
  if (alongX * (end.xAt(heightFt) - x) + alongY * (end.yAt(heightFt) - y) < -SAME_PLACE_FT) return
  // What meets where the corner was born has been settled there.
  const atBirth = heightFt - corner.node.heightFt < SAME_PLACE_FT
  if (atBirth && (corner.node === start.node || corner.node === end.node)) return
  queue.push({ kind: 'hit', heightFt, corner, start, end })
}
