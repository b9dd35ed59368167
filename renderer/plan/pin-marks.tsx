import { memo } from 'react'
import type { PinShape, PlanDrawing } from '../../app/roof/plan-drawing.ts'
import { classNames } from '../ui/class-names.ts'
import { atScale, type ShapeState } from './facet-shapes.tsx'
import { hitAttribute } from './plan-hit.ts'
import styles from './plan-shapes.module.css'

interface PinMarksProps {
  readonly pins: PlanDrawing['pins']
  readonly stateOf: (findingId: string) => ShapeState
}

/** The lines and areas that findings stand on, in plan feet. */
export const PinLines = memo(function PinLines({ pins, stateOf }: PinMarksProps) {
  return (
    <g>
      {pins.map((pin) => (
        <g
          key={pin.findingId}
          className={classNames(styles['pin'], styles[stateOf(pin.findingId)])}
          {...hitAttribute({ kind: 'finding', id: pin.findingId })}
        >
          <PinLine pin={pin} />
        </g>
      ))}
    </g>
  )
})

/** The findings' numbered markers: filled for damage, open for everything else, in pixels from the plan's origin. */
export const PinMarks = memo(function PinMarks({ pins, stateOf, scale }: PinMarksProps & { readonly scale: number }) {
  return (
    <g>
      {pins.map((pin) => (
        <g key={pin.findingId} transform={atScale(pin.markerAt, scale)}>
          <PinMark pin={pin} state={stateOf(pin.findingId)} />
        </g>
      ))}
    </g>
  )
})

const PinMark = memo(function PinMark({ pin, state }: { pin: PinShape; state: ShapeState }) {
  return (
    <g
      className={classNames(styles['pin'], styles[state], pin.filled && styles['filled'])}
      {...hitAttribute({ kind: 'finding', id: pin.findingId })}
    >
      <circle className={styles['pinHalo']} r="14.5" />
      <circle className={styles['pinDisc']} r="10.5" />
      <text className={styles['pinNumber']} textAnchor="middle" dominantBaseline="central">
        {pin.label}
      </text>
    </g>
  )
})

function PinLine({ pin }: { pin: PinShape }) {
  if (pin.kind === 'point') return null
  const points = pin.points.map((point) => `${point.xFt} ${point.yFt}`).join('L')
  return (
    <path
      d={pin.kind === 'area' ? `M${points}Z` : `M${points}`}
      className={pin.kind === 'area' ? styles['pinArea'] : styles['pinLine']}
      vectorEffect="non-scaling-stroke"
    />
  )
}
