import type { PlanDrawing } from '../../../app/roof/plan-drawing.ts'
import { sheetDirection } from '../../../app/roof/plan-frame.ts'
import { toScreen, type PlanView } from '../plan-view.ts'
import styles from './door.module.css'

/** The front door on the plan: an open leaf and the arc it swings, opening to the front. */
export function DoorSign({ drawing, view }: { readonly drawing: PlanDrawing; readonly view: PlanView }) {
  const { doorAt = null, frontAzimuthDeg, upAzimuthDeg } = drawing
  if (doorAt === null) return null
  const at = toScreen(view, doorAt)
  const out = frontAzimuthDeg === null ? { x: 0, y: -1 } : sheetDirection(frontAzimuthDeg, upAzimuthDeg)
  const turn = (Math.atan2(out.x, out.y) * 180) / Math.PI
  return (
    <g className={styles['sign']} transform={`translate(${at.x} ${at.y}) rotate(${turn})`}>
      <path className={styles['ground']} d="M-8 0V-16A16 16 0 0 1 8 0Z" />
      <path className={styles['arc']} d="M-8 -16A16 16 0 0 1 8 0H-8" />
      <path className={styles['leaf']} d="M-8 0V-16" />
    </g>
  )
}
