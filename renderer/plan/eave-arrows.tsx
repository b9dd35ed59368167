import type { PlanPoint } from '../../app/job/places.ts'
import { sidesOf } from '../../app/roof/polygon.ts'
import { classNames } from '../ui/class-names.ts'
import { directionWords } from '../../app/packet/format/directions.ts'
import { downslopeOverSide, outwardOf } from './eave-choice.ts'
import styles from './plan-overlay.module.css'
import { toScreen, type PlanView } from './plan-view.ts'
import { middleOf } from './sheet-geometry.ts'

const OUT_PX = 20

interface EaveArrowsProps {
  readonly outline: readonly PlanPoint[]
  readonly upAzimuthDeg: number
  /** The direction that the slope faces now. */
  readonly downslopeAzimuthDeg: number
  readonly view: PlanView
  readonly onChoose: (downslopeAzimuthDeg: number) => void
}

/** An arrow out of each side: pressing one makes that side the eave, so that the slope faces square over it. */
export function EaveArrows({ outline, upAzimuthDeg, downslopeAzimuthDeg, view, onChoose }: EaveArrowsProps) {
  return sidesOf(outline).map((side) => {
    const azimuth = downslopeOverSide(outline, side, upAzimuthDeg)
    const out = outwardOf(outline, side)
    const middle = toScreen(view, middleOf(side.from, side.to))
    const chosen = Math.abs(azimuth - downslopeAzimuthDeg) < 0.1
    const turn = (Math.atan2(out.x, out.y) * 180) / Math.PI
    return (
      <button
        key={side.index}
        type="button"
        aria-pressed={chosen}
        aria-label={`Water leaves over side ${side.index + 1}: the slope faces ${directionWords(azimuth)}`}
        title={`Faces ${directionWords(azimuth)}`}
        className={classNames(styles['handle'], styles['eaveHandle'], chosen && styles['eaveChosen'])}
        style={{ left: middle.x + out.x * OUT_PX, top: middle.y - out.y * OUT_PX }}
        onClick={() => onChoose(azimuth)}
      >
        <svg viewBox="-16 -16 32 32" aria-hidden="true">
          <path className={styles['eaveArrow']} d="M0 -12L9 1H4V11H-4V1H-9Z" transform={`rotate(${turn})`} />
        </svg>
      </button>
    )
  })
}
