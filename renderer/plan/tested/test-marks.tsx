import { memo } from 'react'
import { classNames } from '../../ui/class-names.ts'
import { atScale, type ShapeState } from '../facet-shapes.tsx'
import { hitAttribute } from '../plan-hit.ts'
import shapes from '../plan-shapes.module.css'
import type { PlannedTests } from './planned-tests.ts'
import styles from './test-marks.module.css'

interface TestMarksProps {
  readonly tests: PlannedTests
  readonly stateOf: (readingId: string) => ShapeState
  /** Pixels per foot. */
  readonly scale: number
}

/** Side of a test square in plan, feet; it is drawn square to the sheet, as nobody records how it was turned. */
const SQUARE_FT = 10

/** Readings as numbered triangles that point up, and test squares to scale, in pixels from the plan's origin. */
export const TestMarks = memo(function TestMarks({ tests, stateOf, scale }: TestMarksProps) {
  const sidePx = SQUARE_FT * scale
  return (
    <g>
      {tests.squares.map(({ id, at }) => (
        <g key={id} transform={atScale(at, scale)}>
          <rect className={styles['square']} x={-sidePx / 2} y={-sidePx / 2} width={sidePx} height={sidePx} />
        </g>
      ))}
      {tests.readings.map(({ id, label, at }) => (
        <g
          key={id}
          transform={atScale(at, scale)}
          className={classNames(styles['reading'], shapes[stateOf(id)], styles[stateOf(id)])}
          {...hitAttribute({ kind: 'reading', id })}
        >
          <path d="M0 -11L11 8H-11Z" />
          <text y="2.5" textAnchor="middle" dominantBaseline="central">
            {label}
          </text>
        </g>
      ))}
    </g>
  )
})
