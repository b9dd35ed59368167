import { memo, useMemo } from 'react'
import type { FacetShape, PlanDrawing } from '../../app/roof/plan-drawing.ts'
import { lengthFt, sidesOf } from '../../app/roof/polygon.ts'
import { classNames } from '../ui/class-names.ts'
import { hitAttribute } from './plan-hit.ts'
import { nearestOnSide } from './sheet-geometry.ts'
import styles from './plan-shapes.module.css'

/** How a shape stands to the present selection. */
export type ShapeState = 'plain' | 'related' | 'selected'

interface FacetShapesProps {
  readonly facets: PlanDrawing['facets']
  /** Pixels per foot: labels that would not fit are left away. */
  readonly scale: number
  readonly stateOf: (id: string) => ShapeState
}

/** The facets of the plan with letter, pitch and downhill arrow, in plan feet. */
export const FacetShapes = memo(function FacetShapes({ facets, scale, stateOf }: FacetShapesProps) {
  const roomFt = useMemo(() => new Map(facets.map((facet) => [facet.id, roomAround(facet)])), [facets])
  return (
    <g>
      {facets.map((facet) => (
        <FacetOutline key={facet.id} facet={facet} state={stateOf(facet.id)} />
      ))}
      {facets.map((facet) => {
        const roomPx = (roomFt.get(facet.id) ?? 0) * scale
        return (
          <FacetLabel key={facet.id} facet={facet} detail={roomPx > 34 ? 'full' : roomPx > 20 ? 'arrow' : 'letter'} />
        )
      })}
    </g>
  )
})

const FacetOutline = memo(function FacetOutline({ facet, state }: { facet: FacetShape; state: ShapeState }) {
  return (
    <path
      d={outlinePath(facet.outline)}
      className={classNames(styles['facet'], styles[state])}
      vectorEffect="non-scaling-stroke"
      {...hitAttribute({ kind: 'facet', id: facet.id })}
    />
  )
})

interface FacetLabelProps {
  readonly facet: FacetShape
  readonly detail: 'full' | 'arrow' | 'letter'
}

const FacetLabel = memo(function FacetLabel({ facet, detail }: FacetLabelProps) {
  const { labelAt, downhill } = facet
  const turn = (Math.atan2(downhill.x, downhill.y) * 180) / Math.PI
  return (
    <g
      className={styles['label']}
      style={{
        transform: `translate(${labelAt.xFt}px, ${labelAt.yFt}px) scale(var(--per-pixel), calc(-1 * var(--per-pixel)))`,
      }}
      {...hitAttribute({ kind: 'facet', id: facet.id })}
    >
      <text className={styles['letter']} textAnchor="middle" dominantBaseline="central">
        {facet.letter}
      </text>
      {detail === 'letter' ? null : (
        <path className={styles['downhill']} d="M0 -14V-31M-4.5 -26L0 -31.5L4.5 -26" transform={`rotate(${turn})`} />
      )}
      {detail === 'full' ? <PitchText facet={facet} /> : null}
    </g>
  )
})

/** The pitch stands under the letter, or above it where the downhill arrow takes that place. */
function PitchText({ facet }: { facet: FacetShape }) {
  const { x, y } = facet.downhill
  const arrowRunsDown = -y > Math.abs(x)
  return (
    <text className={styles['pitch']} y={arrowRunsDown ? -19 : 19} textAnchor="middle" dominantBaseline="central">
      {facet.pitchLabel}
    </text>
  )
}

/** The closed path of an outline, in plan feet. */
export function outlinePath(outline: FacetShape['outline']): string {
  return `M${outline.map((corner) => `${corner.xFt} ${corner.yFt}`).join('L')}Z`
}

function roomAround(facet: FacetShape): number {
  const away = sidesOf(facet.outline).map((side) => lengthFt(nearestOnSide(side, facet.labelAt), facet.labelAt))
  return Math.min(...away)
}
