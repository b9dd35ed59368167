import { sheetDirection } from '../../app/roof/plan-frame.ts'
import type { EdgeKind, PlanDrawing } from '../../app/roof/plan-drawing.ts'
import { ByHandSign, edgeClass, edgeWords } from './edge-lines.tsx'
import { edgePoint } from './edge-point.ts'
import styles from './plan-canvas.module.css'
import type { PlannedTests } from './tested/planned-tests.ts'
import { roundLengthFt, toScreen, type PlanView } from './plan-view.ts'

/** The arrow that shows where true north is on the sheet. */
export function NorthArrow({ upAzimuthDeg }: { upAzimuthDeg: number }) {
  return (
    <svg className={styles['north']} viewBox="-24 -28 48 56" role="img" aria-label="North arrow">
      <g transform={`rotate(${-upAzimuthDeg})`}>
        <path className={styles['northDark']} d="M0 -14L6 12L0 7Z" />
        <path className={styles['northLight']} d="M0 -14L-6 12L0 7Z" />
        <text
          className={styles['northLetter']}
          y="-21"
          textAnchor="middle"
          dominantBaseline="central"
          transform={`rotate(${upAzimuthDeg} 0 -21)`}
        >
          N
        </text>
      </g>
    </svg>
  )
}

const MOST_BAR_PX = 120

/** A bar of a round length at the plan's present scale. */
export function ScaleBar({ view }: { view: PlanView }) {
  const lengthFt = roundLengthFt(view, MOST_BAR_PX)
  const px = lengthFt * view.scale
  const words = lengthFt >= 1 ? `${lengthFt} ft` : `${Math.round(lengthFt * 12 * 10) / 10} in`
  return (
    <div className={styles['scaleBar']} role="img" aria-label={`Scale bar: ${words}`}>
      <svg width={px + 2} height="10" aria-hidden="true">
        <path className={styles['scaleLine']} d={`M1 0V9H${px + 1}V0M${px / 2 + 1} 4V9`} />
      </svg>
      <span>{words}</span>
    </div>
  )
}

/** What the lines and pins of the plan mean: only those that are there. */
export function Legend({ drawing, tests }: { drawing: PlanDrawing; tests?: PlannedTests | undefined }) {
  const present = new Set(drawing.edges.map((edge) => edge.kind))
  const kinds = (Object.keys(edgeWords) as EdgeKind[]).filter((kind) => present.has(kind))
  const hasDamage = drawing.pins.some((pin) => pin.filled)
  const hasOther = drawing.pins.some((pin) => !pin.filled)
  if (kinds.length === 0 && !hasDamage && !hasOther) return null
  return (
    <ul className={styles['legend']} aria-label="Legend">
      {kinds.map((kind) => (
        <li key={kind}>
          <svg width="34" height="10" aria-hidden="true">
            <path className={edgeClass(kind)} d="M1 5H33" />
          </svg>
          {edgeWords[kind]}
        </li>
      ))}
      {drawing.edges.some(({ byHand }) => byHand === true) ? (
        <li>
          <ByHandSign />
          Edge stated by hand
        </li>
      ) : null}
      {hasDamage ? <PinKey filled words="Damage" /> : null}
      {hasOther ? <PinKey filled={false} words="Other finding" /> : null}
      {drawing.cameras.length > 0 ? <CameraKey /> : null}
      {(tests?.readings.length ?? 0) > 0 ? <TestKey path="M17 1.5L23 12H11Z" words="Tile lifted" /> : null}
      {(tests?.squares.length ?? 0) > 0 ? <TestKey path="M12 2H22V12H12Z" words="Test square" /> : null}
    </ul>
  )
}

function PinKey({ filled, words }: { filled: boolean; words: string }) {
  return (
    <li>
      <svg width="34" height="14" aria-hidden="true">
        <circle className={filled ? styles['keyFilled'] : styles['keyOpen']} cx="17" cy="7" r="5.5" />
      </svg>
      {words}
    </li>
  )
}

function TestKey({ path, words }: { path: string; words: string }) {
  return (
    <li>
      <svg width="34" height="14" aria-hidden="true">
        <path className={styles['keyTest']} d={path} />
      </svg>
      {words}
    </li>
  )
}

function CameraKey() {
  return (
    <li>
      <svg width="34" height="12" aria-hidden="true">
        <rect className={styles['keyCamera']} x="13" y="2" width="8" height="8" rx="2" />
      </svg>
      Camera
    </li>
  )
}

/** The word FRONT outside the roof, on the side that the front of the house faces. */
export function FrontMark({ drawing, view }: { drawing: PlanDrawing; view: PlanView }) {
  const { frontAzimuthDeg, upAzimuthDeg, bounds } = drawing
  if (frontAzimuthDeg === null) return null
  const towards = sheetDirection(frontAzimuthDeg, upAzimuthDeg)
  const at = toScreen(view, edgePoint(bounds, towards))
  const turn = (Math.atan2(towards.x, towards.y) * 180) / Math.PI
  return (
    <g transform={`translate(${at.x - towards.x * 2} ${at.y + towards.y * 2})`}>
      <path className={styles['frontArrow']} d="M-7 4L0 -5L7 4Z" transform={`rotate(${turn})`} />
      <text
        className={styles['frontWord']}
        x={towards.x * 30 + (Math.abs(towards.x) < 0.4 ? 28 : 0)}
        y={Math.abs(towards.x) < 0.4 ? 0 : -towards.y * 16}
        textAnchor="middle"
        dominantBaseline="central"
      >
        Front
      </text>
    </g>
  )
}
