import type { Zone } from '../../../app/roof/zones/edition.ts'
import styles from './zones.module.css'

/** Zones that have a pattern; the field is left as it is. */
export const patterned = ['corner', 'edge', 'ridge'] as const satisfies readonly Zone[]

interface ZonePatternProps {
  readonly id: string
  readonly zone: (typeof patterned)[number]
  /** Pixels to one unit of the drawing, so that the pattern keeps its size on the screen. */
  readonly scale: number
}

/** The pattern of a kind of zone: crosswise lines, lines one way, or dots, each in its own colour besides. */
export function ZonePattern({ id, zone, scale }: ZonePatternProps) {
  return (
    <pattern id={id} patternUnits="userSpaceOnUse" width="8" height="8" patternTransform={`scale(${1 / scale})`}>
      <rect className={styles[`${zone}Ground`]} width="8" height="8" />
      {zone === 'ridge' ? (
        <path className={styles['ridgeDots']} d="M2 2h.01M6 6h.01" />
      ) : (
        <path className={styles[`${zone}Lines`]} d={zone === 'edge' ? ONE_WAY : CROSSWISE} />
      )}
    </pattern>
  )
}

const ONE_WAY = 'M-2 2L2 -2M0 8L8 0M6 10L10 6'
const CROSSWISE = `${ONE_WAY}M-2 6L2 10M0 0L8 8M6 -2L10 2`
