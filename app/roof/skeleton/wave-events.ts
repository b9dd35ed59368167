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
  const { heightFt: nowFt } = change
  const foreseeHit = (corner: WaveVertex, start: WaveVertex) => {
    const heightFt = hitHeightFt(corner, start, nowFt)
    if (heightFt !== NEVER) queue.push({ kind: 'hit', heightFt, corner, start, end: start.next })
  }
  for (const corner of change.corners) {
    if (corner.meet === 'opposed') queue.push({ kind: 'rush', heightFt: nowFt, corner })
    if (corner.meet === 'overtaking') queue.push({ kind: 'rush', heightFt: nowFt + LAST_OF_HEIGHT_FT, corner })
    if (corner.meet === 'reflex') for (const start of wavefront) foreseeHit(corner, start)
  }
  for (const start of change.fronts) {
    const heightFt = collapseHeightFt(start, nowFt)
    if (heightFt !== NEVER) queue.push({ kind: 'collapse', heightFt, corner: start, next: start.next })
  }
  const reflexBefore = wavefront.filter((corner) => corner.meet === 'reflex' && !change.corners.includes(corner))
  for (const start of change.fronts) for (const corner of reflexBefore) foreseeHit(corner, start)
}

const NEVER = Infinity

/** Height at which the front that starts at a corner has shrunk to nothing, if its ends go on as they do. */
function collapseHeightFt(corner: WaveVertex, nowFt: number): number {
  const { next } = corner
  // Two fronts alone shut in no roof unless they lie on each other, which is for a rush to say.
  if (next.next === corner && !corner.isRushing) return nowFt
  const { alongX, alongY } = corner.after
  const growth = alongX * (next.runX - corner.runX) + alongY * (next.runY - corner.runY)
  return growth > -STILL ? NEVER : nowFt - Math.max(0, frontLengthFt(corner, nowFt)) / growth
}

/** Height at which a reflex corner meets the front that starts at another, if both go on as they do. */
function hitHeightFt(corner: WaveVertex, start: WaveVertex, nowFt: number): number {
  const { inwardX, inwardY, offsetFt, runPerRise, alongX, alongY } = start.after
  const closing = runPerRise - inwardX * corner.runX - inwardY * corner.runY
  if (closing < STILL) return NEVER
  const aheadFt = inwardX * corner.xAt(nowFt) + inwardY * corner.yAt(nowFt) - offsetFt - runPerRise * nowFt
  if (aheadFt < -SAME_PLACE_FT) return NEVER
  const heightFt = nowFt + Math.max(0, aheadFt) / closing
  const [x, y] = [corner.xAt(heightFt), corner.yAt(heightFt)]
  if (alongX * (x - start.xAt(heightFt)) + alongY * (y - start.yAt(heightFt)) < -SAME_PLACE_FT) return NEVER
  const end = start.next
  if (alongX * (end.xAt(heightFt) - x) + alongY * (end.yAt(heightFt) - y) < -SAME_PLACE_FT) return NEVER
  if (start === corner || end === corner) return NEVER
  // What meets where the corner was born has been settled there.
  const isAtBirth = heightFt - corner.bornFt < SAME_PLACE_FT
  return isAtBirth && (corner.node === start.node || corner.node === end.node) ? NEVER : heightFt
}
