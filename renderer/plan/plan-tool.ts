import type { ReactNode } from 'react'
import type { PlanPoint } from '../../app/job/places.ts'
import type { PlanImage } from '../../app/roof/plan-image.ts'
import type { PlanHit } from './plan-hit.ts'
import type { PlanView } from './plan-view.ts'

/** Where the pointer is, as tools want to know it. */
export interface PlanPointer {
  readonly at: PlanPoint
  /** What is drawn there; null on the empty sheet. */
  readonly over: PlanHit | null
  /** How near counts as near, feet: the same distance on the screen at every zoom. */
  readonly reachFt: number
  /** True while the person holds Alt to keep points where the pointer is. */
  readonly free: boolean
}

/** A dragging hand on something of the plan, from press to release. */
export interface PlanDrag {
  move(pointer: PlanPointer): void
  drop(pointer: PlanPointer): void
  cancel(): void
}

/** What the pointer and the arrow keys do on the plan at present. */
export interface PlanTool {
  readonly cursor: 'default' | 'crosshair'
  onMove?(pointer: PlanPointer): void
  onClick?(pointer: PlanPointer): void
  onDoubleClick?(pointer: PlanPointer): void
  /** Takes hold of what is under the pointer; null leaves the drag to the sheet, which then pans. */
  grab?(pointer: PlanPointer): PlanDrag | null
  /** Arrow keys move a cross on the sheet by this, feet; null when they pan. */
  readonly cross: { readonly at: PlanPoint | null; onMove(at: PlanPoint): void; onPlace(): void } | null
  /** A digit typed over the sheet starts a typed entry. */
  onDigit?(typed: string): void
  /** The image under the plan as the tool lays it now, in place of the one that is kept. */
  readonly underlay?: PlanImage
  /** Drawn above the plan, in screen coordinates. */
  readonly overlay?: (view: PlanView) => ReactNode
  /** Controls placed over the plan, in screen coordinates. */
  readonly handles?: (view: PlanView) => ReactNode
}
