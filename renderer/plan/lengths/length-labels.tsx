import { memo } from 'react'
import type { LengthLabel } from './plan-labels.ts'
import styles from './lengths.module.css'

/** The lengths of the roof's outside, seen from above, in pixels from the plan's origin. */
export const LengthLabels = memo(function LengthLabels({ lengths }: { readonly lengths: readonly LengthLabel[] }) {
  return (
    <g>
      {lengths.map(({ text, at }) => (
        <text
          key={`${at.x} ${at.y}`}
          className={styles['length']}
          x={at.x}
          y={at.y}
          textAnchor="middle"
          dominantBaseline="central"
        >
          {text}
        </text>
      ))}
    </g>
  )
})
