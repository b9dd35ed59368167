import { memo } from 'react'
import type { EdgeKind, PlanDrawing } from '../../app/roof/plan-drawing.ts'
import { classNames } from '../ui/class-names.ts'
import styles from './plan-shapes.module.css'

/** Edge kinds in the order of the legend, with the words for them. */
export const edgeWords = {
  ridge: 'Ridge',
  hip: 'Hip',
  valley: 'Valley',
  eave: 'Eave',
  rake: 'Rake',
  'pitch-break': 'Change of pitch',
  step: 'Step in height',
  'top-edge': 'Top edge at a wall',
} as const satisfies Record<EdgeKind, string>

/** The class names that give each edge kind its line. */
export function edgeClass(kind: EdgeKind): string {
  return classNames(styles['edge'], styles[kind])
}

/** The roof's edges, each kind with its own line, in plan feet. */
export const EdgeLines = memo(function EdgeLines({ edges }: { edges: PlanDrawing['edges'] }) {
  return (
    <g className={styles['edges']}>
      {edges.map(({ kind, from, to }, index) => (
        // Two roofs may have an edge in one place, and a roof under the hand has new edges in every frame.
        <path
          key={index}
          d={`M${from.xFt} ${from.yFt}L${to.xFt} ${to.yFt}`}
          className={edgeClass(kind)}
          vectorEffect="non-scaling-stroke"
        />
      ))}
    </g>
  )
})

/** A lozenge on each edge whose kind was stated by hand, in pixels from the plan's origin. */
export const ByHandMarks = memo(function ByHandMarks({ edges, scale }: Pick<PlanDrawing, 'edges'> & { scale: number }) {
  return (
    <g>
      {edges
        .filter(({ byHand }) => byHand === true)
        .map(({ from, to }) => (
          <path
            key={`${from.xFt} ${from.yFt} ${to.xFt} ${to.yFt}`}
            d={BY_HAND_PATH}
            className={styles['byHand']}
            transform={`translate(${((from.xFt + to.xFt) / 2) * scale} ${((from.yFt + to.yFt) / -2) * scale})`}
          />
        ))}
    </g>
  )
})

const BY_HAND_PATH = 'M0 -5.5L5.5 0L0 5.5L-5.5 0Z'

/** The lozenge as the legend shows it. */
export function ByHandSign() {
  return (
    <svg width="34" height="13" viewBox="-17 -6.5 34 13" aria-hidden="true">
      <path d={BY_HAND_PATH} className={styles['byHand']} />
    </svg>
  )
}
