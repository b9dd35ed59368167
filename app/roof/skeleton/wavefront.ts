import type { PlanPoint } from '../../job/places.ts'
import type { SkeletonArc, SkeletonNode } from './skeleton.ts'
import type { SlopePlane } from './slope-plane.ts'
import { WaveVertex } from './wave-vertex.ts'

/**
 * The wavefront: closed loops of corners that run into the roof as the height grows, and the arcs that they have left
 * behind. A front is the stretch from a corner to the next one and lies in the plane `corner.after`.
 */
export class Wavefront {
  readonly arcs: SkeletonArc[] = []
  #corners: WaveVertex[] = []
  #deadCount = 0

  /** Every living corner. */
  get corners(): readonly WaveVertex[] {
    if (this.#deadCount > 0) {
      this.#corners = this.#corners.filter((corner) => corner.alive)
      this.#deadCount = 0
    }
    return this.#corners
  }

  /** A new corner, not yet linked to its neighbours. */
  birth(planes: { readonly before: SlopePlane; readonly after: SlopePlane }, node: SkeletonNode): WaveVertex {
    const corner = new WaveVertex(planes.before, planes.after, node)
    this.#corners.push(corner)
    return corner
  }

  /** Ends a corner at a node and keeps its path. */
  end(corner: WaveVertex, node: SkeletonNode): void {
    corner.alive = false
    this.#deadCount++
    if (corner.node === node) return
    this.arcs.push({
      from: corner.node,
      to: node,
      before: corner.before,
      after: corner.after,
      isCrest: corner.meet !== 'reflex',
    })
  }
}

/** Makes a front run from one corner to another. */
export function link(from: WaveVertex, to: WaveVertex): void {
  from.next = to
  to.previous = from
}

/** Where a corner stands at a height. */
export function placeAt(corner: WaveVertex, heightFt: number): PlanPoint {
  return { xFt: corner.xAt(heightFt), yFt: corner.yAt(heightFt) }
}

/** Length of the front that starts at a corner, feet at a height; negative when its ends have crossed. */
export function frontLengthFt(start: WaveVertex, heightFt: number): number {
  const { alongX, alongY } = start.after
  return (
    alongX * (start.next.xAt(heightFt) - start.xAt(heightFt)) +
    alongY * (start.next.yAt(heightFt) - start.yAt(heightFt))
  )
}
