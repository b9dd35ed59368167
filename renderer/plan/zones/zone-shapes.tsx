import { memo, useId } from 'react'
import type { PlanDrawing } from '../../../app/roof/plan-drawing.ts'
import type { PlanPolygon } from '../../../app/roof/zones/region.ts'
import { outlinePath } from '../outline-path.ts'
import { patterned, ZonePattern } from './zone-pattern.tsx'
import styles from './zones.module.css'

interface ZoneShapesProps {
  readonly zones: NonNullable<PlanDrawing['zones']>
  /** Pixels per foot. */
  readonly scale: number
}

/** Edge zones over the facets, in plan feet. They don't take clicks: what lies under them does. */
export const ZoneShapes = memo(function ZoneShapes({ zones, scale }: ZoneShapesProps) {
  const id = useId()
  return (
    <g className={styles['zones']}>
      <defs>
        {patterned.map((zone) => (
          <ZonePattern key={zone} id={`${id}${zone}`} zone={zone} scale={scale} />
        ))}
      </defs>
      {zones.map(({ zone, region }, index) =>
        zone === 'field' ? null : (
          <path
            key={index}
            className={styles['zone']}
            d={region.map(polygonPath).join('')}
            fill={`url(#${id}${zone})`}
            fillRule="evenodd"
            vectorEffect="non-scaling-stroke"
          />
        ),
      )}
    </g>
  )
})

function polygonPath({ outer, holes }: PlanPolygon): string {
  return [outer, ...holes].map(outlinePath).join('')
}
