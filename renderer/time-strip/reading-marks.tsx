import { readingLabel } from '../../app/evidence/reading-label.ts'
import type { Reading } from '../../app/fieldtest/reading.ts'
import { type JobClock, timeWords } from '../state/job-clock.ts'
import { useRelated, useSelection } from '../state/selection.tsx'
import type { StripContent } from './strip-lanes.ts'
import { isInSight, type StripScale } from './strip-scale.ts'
import styles from './time-strip.module.css'

interface ReadingMarksProps {
  readonly content: StripContent
  readonly scale: StripScale
  readonly clock: JobClock
  readonly top: number
}

/** Readings as triangles that point up, as the tile was lifted; a click selects one. */
export function ReadingMarks({ content, scale, clock, top }: ReadingMarksProps) {
  const { readingIds } = useRelated()
  const { select } = useSelection()
  return (
    <g>
      <path className={styles['laneLine']} d={`M0 ${top + 18.5}H${scale.widthPx}`} />
      {content.readings
        .filter(({ instantMs }) => isInSight(instantMs, scale))
        .map(({ reading, instantMs }) => (
          <path
            key={reading.id}
            className={styles['reading']}
            data-related={readingIds.has(reading.id)}
            d={`M${scale.xOf(instantMs)} ${top + 4}l5.5 10h-11z`}
            onPointerDown={(event) => event.stopPropagation()}
            onClick={() => select({ kind: 'reading', id: reading.id })}
          >
            <title>{`${readingLabel(reading.number)}, ${timeWords(instantMs, clock)}: ${figureWords(reading)}`}</title>
          </path>
        ))}
    </g>
  )
}

function figureWords({ liftIn, forceLbf }: Reading): string {
  const lift = liftIn === null ? 'no lift recorded' : `lift ${liftIn} in`
  return forceLbf === null ? `${lift}, no force recorded` : `${lift} at ${forceLbf} lbf`
}
