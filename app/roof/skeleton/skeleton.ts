import type { PlanPoint } from '../../job/places.ts'
import type { SlopePlane } from './slope-plane.ts'

/** A place where planes meet, at a height above the eaves. */
export interface SkeletonNode extends PlanPoint {
  readonly heightFt: number
}

/** The path of a wavefront corner: `before` lies on its left, `after` on its right. */
export interface SkeletonArc {
  readonly from: SkeletonNode
  readonly to: SkeletonNode
  readonly before: SlopePlane
  readonly after: SlopePlane
  /** True when the roof beside the arc is the lower of the two planes (a crest), false when it is the upper (a trough). */
  readonly isCrest: boolean
}
