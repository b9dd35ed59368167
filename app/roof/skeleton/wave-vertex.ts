import type { SkeletonNode } from './skeleton.ts'
import { turnCosine, turnSine, type SlopePlane } from './slope-plane.ts'
import { PARALLEL } from './tolerances.ts'

/**
 * How two planes meet at a corner of the wavefront.
 *
 * - `convex`, `reflex`: the corner runs along the planes' common line; reflex corners are the ones that can split a front.
 * - `abreast`: one line, one direction, one speed; the corner runs straight up the slope.
 * - `opposed`: two fronts have met face to face along a stretch; the corner runs along it at once, without gaining height.
 * - `overtaking`: one line, one direction, two speeds; one front takes over the other's stretch at once.
 */
export type Meet = 'convex' | 'reflex' | 'abreast' | 'opposed' | 'overtaking'

/** A corner of the wavefront, between the front that arrives at it and the one that leaves. */
export class WaveVertex {
  readonly before: SlopePlane
  readonly after: SlopePlane
  /** Where it was born; it runs straight from there. */
  readonly node: SkeletonNode
  readonly bornXFt: number
  readonly bornYFt: number
  readonly bornFt: number
  readonly meet: Meet
  /** Feet of plan run for a foot of rise. */
  readonly runX: number
  readonly runY: number
  previous: WaveVertex
  next: WaveVertex
  alive = true

  constructor(before: SlopePlane, after: SlopePlane, node: SkeletonNode) {
    this.before = before
    this.after = after
    this.node = node
    this.bornXFt = node.xFt
    this.bornYFt = node.yFt
    this.bornFt = node.heightFt
    this.meet = meetOf(before, after)
    const [runX, runY] = runOf(this.meet, before, after)
    this.runX = runX
    this.runY = runY
    this.previous = this
    this.next = this
  }

  xAt(heightFt: number): number {
    return this.bornXFt + this.runX * (heightFt - this.bornFt)
  }

  yAt(heightFt: number): number {
    return this.bornYFt + this.runY * (heightFt - this.bornFt)
  }

  /** Opposed and overtaking corners run at no height at all, however far. */
  get isRushing(): boolean {
    return this.meet === 'opposed' || this.meet === 'overtaking'
  }
}

function meetOf(before: SlopePlane, after: SlopePlane): Meet {
  const sine = turnSine(before, after)
  if (sine >= PARALLEL) return 'convex'
  if (sine <= -PARALLEL) return 'reflex'
  if (turnCosine(before, after) < 0) return 'opposed'
  return before.runPerRise === after.runPerRise ? 'abreast' : 'overtaking'
}

/**
 * The velocity v with inward . v = speed for both planes. Written as the first plane's own advance and a slide along its
 * edge, which for equal speeds and little turn does not lose digits as solving the two equations would.
 */
function runOf(meet: Meet, before: SlopePlane, after: SlopePlane): readonly [number, number] {
  if (meet === 'opposed' || meet === 'overtaking') return [0, 0]
  const [x, y] = [before.inwardX * before.runPerRise, before.inwardY * before.runPerRise]
  if (meet === 'abreast') return [x, y]
  const sine = turnSine(before, after)
  const cosine = turnCosine(before, after)
  const lessThanOne = cosine > 0 ? (sine * sine) / (1 + cosine) : 1 - cosine
  const slide = -(after.runPerRise - before.runPerRise + before.runPerRise * lessThanOne) / sine
  return [x + before.alongX * slide, y + before.alongY * slide]
}
