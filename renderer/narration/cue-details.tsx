import { useMemo } from 'react'
import { findingLabel } from '../../app/evidence/finding.ts'
import { photoLabel } from '../../app/evidence/photo.ts'
import { useGoTo } from '../frame/use-go-to.ts'
import { dayWords, jobClock } from '../state/job-clock.ts'
import { useJob } from '../state/job-state.tsx'
import { useRelated, useSelection } from '../state/selection.tsx'
import { Button } from '../ui/button.tsx'
import { cueTimeWords } from './cue-times.ts'
import styles from './narration.module.css'
import { useNarrations } from './use-narration.ts'

/** The selected cue: when it was spoken, its words, and the findings and photos that belong to it. */
export function CueDetails() {
  const job = useJob()
  const { selection } = useSelection()
  const { findingIds, photoIds } = useRelated()
  const clock = useMemo(() => jobClock(job), [job])
  const all = useNarrations()
  const goTo = useGoTo()
  if (selection.kind !== 'cue') return null
  const read = all.find(({ narration }) => narration.id === selection.narrationId)
  const cue = read?.narration.cues[selection.cue]
  if (read === undefined || cue === undefined) return <p>This narration was removed.</p>
  const day = read.startMs === null ? '' : `${dayWords(read.startMs + cue.startMs, clock)}, `
  return (
    <div className={styles['details']}>
      <p className={styles['quiet']}>
        {day}
        {cueTimeWords(cue.startMs, read.startMs, clock)}
        {cue.speaker === '' ? '' : `, ${cue.speaker}`}
      </p>
      <p className={styles['spoken']}>{cue.text}</p>
      <div className={styles['links']}>
        {job.findings
          .filter(({ id }) => findingIds.has(id))
          .map(({ id, number }) => (
            <Button key={id} onPress={() => goTo({ workspace: 'findings', target: { kind: 'finding', id } })}>
              {findingLabel(number)}
            </Button>
          ))}
        {job.photos
          .filter(({ id }) => photoIds.has(id))
          .slice(0, 12)
          .map(({ id, number }) => (
            <Button key={id} onPress={() => goTo({ workspace: 'photos', target: { kind: 'photo', id } })}>
              {photoLabel(number)}
            </Button>
          ))}
      </div>
    </div>
  )
}
