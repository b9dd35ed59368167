import { memo } from 'react'
import type { PlanPoint } from '../../app/job/places.ts'
import type { FacetShape, PlanDrawing } from '../../app/roof/plan-drawing.ts'
import { classNames } from '../ui/class-names.ts'
import type { FacetPlace } from './lengths/facet-places.ts'
import { outlinePath } from './outline-path.ts'
import { hitAttribute } from './plan-hit.ts'
import styles from './plan-shapes.module.css'

/** How a shape stands to the present selection. */
export type ShapeState = 'plain' | 'related' | 'selected'

interface FacetShapesProps {
  readonly facets: PlanDrawing['facets']
  readonly stateOf: (id: string) => ShapeState
}

/** The facets' outlines, in plan feet. */
export const FacetShapes = memo(function FacetShapes({ facets, stateOf }: FacetShapesProps) {
  return (
    <g>
      {facets.map((facet) => (
        <FacetOutline key={facet.id} facet={facet} state={stateOf(facet.id)} />
      ))}
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
    >
      {facet.letter === '' ? null : <title>{`Facet ${facet.letter}`}</title>}
    </path>
  )
})

/** The facets' letters with pitch and downhill arrow, where they were given a place, in pixels from the plan's origin. */
export const FacetLabels = memo(function FacetLabels({ places }: { readonly places: readonly FacetPlace[] }) {
  return (
    <g>
      {places.map(({ facet, at, detail, leadsTo }) => (
        <g key={facet.id}>
          {leadsTo === null ? null : (
            <path className={styles['leader']} d={`M${at.x} ${at.y}L${leadsTo.x} ${leadsTo.y}`} />
          )}
          <g transform={`translate(${at.x} ${at.y})`}>
            <FacetLabel facet={facet} detail={detail} />
          </g>
        </g>
      ))}
    </g>
  )
})

/** Where a mark of a fixed size stands, in pixels from the plan's origin on the screen. */
export function atScale(at: PlanPoint, scale: number): string {
  return `translate(${at.xFt * scale} ${-at.yFt * scale})`
}

interface FacetLabelProps {
  readonly facet: FacetShape
  readonly detail: FacetPlace['detail']
}

const FacetLabel = memo(function FacetLabel({ facet, detail }: FacetLabelProps) {
  const { downhill } = facet
  const turn = (Math.atan2(downhill.x, downhill.y) * 180) / Math.PI
  return (
    <g className={styles['label']}>
      <text className={classNames(styles['letter'], styles[detail])} textAnchor="middle" dominantBaseline="central">
        {facet.letter}
      </text>
      {detail === 'letter' || detail === 'small' ? null : (
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
