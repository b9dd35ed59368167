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
      {edges.map(({ kind, from, to }) => (
        <path
          key={`${kind} ${from.xFt} ${from.yFt} ${to.xFt} ${to.yFt}`}
          d={`M${from.xFt} ${from.yFt}L${to.xFt} ${to.yFt}`}
          className={edgeClass(kind)}
          vectorEffect="non-scaling-stroke"
        />
      ))}
    </g>
  )
})
