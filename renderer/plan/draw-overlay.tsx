import type { PlanPoint } from '../../app/job/places.ts'
import { lengthFt, sidesOf, signedAreaSqFt } from '../../app/roof/polygon.ts'
import { drawnSides } from './open-path.ts'
import styles from './plan-overlay.module.css'
import { toScreen, type PlanView, type ScreenPoint } from './plan-view.ts'
import type { PlanLine } from './sheet-geometry.ts'
import type { Snap } from './snapping.ts'
import { feetAndInchesLabel } from './typed-length.ts'

interface DrawOverlayProps {
  readonly path: readonly PlanPoint[]
  readonly snap: Snap | null
  readonly view: PlanView
}

/** The facet being drawn: its sides with lengths, the side under way and what the next corner holds on to. */
export function DrawOverlay({ path, snap, view }: DrawOverlayProps) {
  const last = path.at(-1)
  const [first] = path
  const sides = drawnSides(path)
  const underWay = last !== undefined && snap !== null ? { from: last, to: snap.at } : null
  return (
    <g className={styles['drawing']}>
      <path className={styles['drawnLine']} d={linePath(path, view)} />
      {underWay === null ? null : (
        <path className={styles['nextLine']} d={linePath([underWay.from, underWay.to], view)} />
      )}
      {sides.map((side, index) => (
        <SideLength key={index} side={side} view={view} />
      ))}
      {underWay === null ? null : <SideLength side={underWay} view={view} />}
      {path.map((corner, index) => (
        <Corner key={index} at={toScreen(view, corner)} ring={index === 0 && path.length >= 3} />
      ))}
      {first === undefined && snap === null ? null : <SnapMark snap={snap} view={view} />}
    </g>
  )
}

/** The length of a side beside its middle, as feet and inches. */
export function SideLength({ side, view }: { side: PlanLine; view: PlanView }) {
  const from = toScreen(view, side.from)
  const to = toScreen(view, side.to)
  const px = Math.hypot(to.x - from.x, to.y - from.y)
  if (px < 44) return null
  const normal = { x: (to.y - from.y) / px, y: -(to.x - from.x) / px }
  // Words are wider than high: beside an upright side they need more room.
  const offPx = 13 + 12 * Math.abs(normal.x)
  const x = (from.x + to.x) / 2 + normal.x * offPx
  const y = (from.y + to.y) / 2 + normal.y * offPx
  return (
    <text className={styles['sideLength']} x={x} y={y} textAnchor="middle" dominantBaseline="central">
      {feetAndInchesLabel(lengthFt(side.from, side.to))}
    </text>
  )
}

/** All side lengths of a closed outline, inside it whichever way it was drawn. */
export function OutlineLengths({ outline, view }: { outline: readonly PlanPoint[]; view: PlanView }) {
  const counterClockwise = signedAreaSqFt(outline) >= 0 ? outline : outline.toReversed()
  return (
    <g>
      {sidesOf(counterClockwise).map((side) => (
        <SideLength key={side.index} side={side} view={view} />
      ))}
    </g>
  )
}

function Corner({ at, ring }: { at: ScreenPoint; ring: boolean }) {
  return (
    <>
      {ring ? <circle className={styles['closingRing']} cx={at.x} cy={at.y} r="9" /> : null}
      <rect className={styles['corner']} x={at.x - 3.5} y={at.y - 3.5} width="7" height="7" />
    </>
  )
}

function SnapMark({ snap, view }: { snap: Snap | null; view: PlanView }) {
  if (snap === null) return null
  const { x, y } = toScreen(view, snap.at)
  switch (snap.to) {
    case 'corner':
      return <rect className={styles['snapMark']} x={x - 7} y={y - 7} width="14" height="14" />
    case 'side':
      return <path className={styles['snapMark']} d={`M${x} ${y - 8}L${x + 8} ${y}L${x} ${y + 8}L${x - 8} ${y}Z`} />
    case 'aligned':
      return <path className={styles['snapMark']} d={`M${x - 12} ${y}H${x + 12}M${x} ${y - 12}V${y + 12}`} />
    case 'direction':
    case 'free':
      return <circle className={styles['snapDot']} cx={x} cy={y} r="3.5" />
  }
}

/** An open line through plan points, on the screen. */
export function linePath(points: readonly PlanPoint[], view: PlanView): string {
  if (points.length < 2) return ''
  return `M${points
    .map((point) => toScreen(view, point))
    .map(({ x, y }) => `${x} ${y}`)
    .join('L')}`
}
