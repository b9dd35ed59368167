import { photoLabel } from '../../app/evidence/photo.ts'
import { useRelated, useSelection } from '../state/selection.tsx'
import type { StripContent } from './strip-lanes.ts'
import type { StripScale } from './strip-scale.ts'
import styles from './time-strip.module.css'

/** Pixels between several photos that were placed between the same two. */
const APART_PX = 7

interface PlacedMarksProps {
  readonly content: StripContent
  readonly scale: StripScale
  readonly heightPx: number
}

/** Photos without a time where a person put them: hollow rings at the foot, half way between their neighbours. */
export function PlacedMarks({ content, scale, heightPx }: PlacedMarksProps) {
  const { photoIds } = useRelated()
  const { select } = useSelection()
  const taken = new Map<number, number>()
  return (
    <g>
      {content.placed.map(({ photo, afterMs, beforeMs }) => {
        const middle = middleOf(scale, afterMs, beforeMs)
        if (middle === null) return null
        const already = taken.get(middle) ?? 0
        taken.set(middle, already + 1)
        return (
          <circle
            key={photo.id}
            className={styles['placed']}
            data-related={photoIds.has(photo.id)}
            cx={middle + already * APART_PX}
            cy={heightPx - 6}
            r={4}
            onPointerDown={(event) => event.stopPropagation()}
            onClick={() => select({ kind: 'photos', ids: [photo.id], lead: photo.id })}
          >
            <title>{photoLabel(photo.number)}, placed by hand; time not known</title>
          </circle>
        )
      })}
    </g>
  )
}

function middleOf(scale: StripScale, afterMs: number | null, beforeMs: number | null): number | null {
  const xs = [afterMs, beforeMs].flatMap((ms) => (ms === null ? [] : [scale.xOf(ms)]))
  const [one, other] = xs
  if (one === undefined) return null
  if (other !== undefined) return Math.round((one + other) / 2)
  return afterMs === null ? Math.max(one - APART_PX, 5) : Math.min(one + APART_PX, scale.widthPx - 5)
}
