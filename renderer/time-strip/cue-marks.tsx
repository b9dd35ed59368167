import { useMemo } from 'react'
import { useJob } from '../state/job-state.tsx'
import { relatedCues } from '../state/relations.ts'
import { useSelection } from '../state/selection.tsx'
import type { StripContent, TimedCue } from './strip-lanes.ts'
import { isInSight, type StripScale } from './strip-scale.ts'
import styles from './time-strip.module.css'

interface CueMarksProps {
  readonly content: StripContent
  readonly scale: StripScale
  readonly top: number
}

const HEIGHT_PX = 12
/** A cue of a second must still be seen and hit. */
const LEAST_PX = 3

/** The narration as bars from the beginning to the end of each cue; a click selects one. */
export function CueMarks({ content, scale, top }: CueMarksProps) {
  const job = useJob()
  const { selection, select } = useSelection()
  const inSight = useMemo(() => content.cues.filter(({ instantMs }) => isInSight(instantMs, scale)), [content, scale])
  const related = useMemo(
    () => new Map(job.narrations.map(({ id }) => [id, relatedCues(selection, job, id)])),
    [job, selection],
  )
  return (
    <g>
      <path className={styles['laneLine']} d={`M0 ${top + HEIGHT_PX + 6.5}H${scale.widthPx}`} />
      {inSight.map((cue) => (
        <rect
          key={`${cue.narrationId} ${cue.cue}`}
          className={styles['cue']}
          data-related={related.get(cue.narrationId)?.has(cue.cue) === true}
          {...placeOf(cue, scale)}
          y={top + 4}
          height={HEIGHT_PX}
          onPointerDown={(event) => event.stopPropagation()}
          onClick={() => select({ kind: 'cue', narrationId: cue.narrationId, cue: cue.cue })}
        >
          <title>{cue.text}</title>
        </rect>
      ))}
    </g>
  )
}

function placeOf({ instantMs, endMs }: TimedCue, scale: StripScale): { x: number; width: number } {
  const x = scale.xOf(instantMs)
  return { x, width: Math.max(LEAST_PX, scale.xOf(endMs) - x) }
}
