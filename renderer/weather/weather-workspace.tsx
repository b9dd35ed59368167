import { useMemo, useState } from 'react'
import { FileTrigger } from 'react-aria-components'
import { jobZone } from '../../app/evidence/job-zone.ts'
import { jobWind } from '../../app/weather/job-wind.ts'
import { useJob } from '../state/job-state.tsx'
import { useTasks } from '../state/tasks.tsx'
import { Button } from '../ui/button.tsx'
import { EmptyState } from '../ui/empty-state.tsx'
import { ContextPanel } from './context-panel.tsx'
import { FilesPanel } from './files-panel.tsx'
import { ObservationDialog } from './observation-dialog.tsx'
import { StationsPanel } from './stations-panel.tsx'
import { isTextFile } from './text-files.ts'
import styles from './weather.module.css'
import { WindPanel } from './wind-panel.tsx'
import { WindowFields } from './window-fields.tsx'

/** The weather around the day of loss: stations, what they measured, and figures of the standard as context. */
export function WeatherWorkspace() {
  const snapshot = useJob()
  const { job, weather, attachments } = snapshot
  const [isTyping, setTyping] = useState(false)
  const zone = jobZone(job)
  const wind = useMemo(() => jobWind({ job, weather }, zone), [job, weather, zone])
  const isEmpty = weather.sources.length === 0 && weather.stations.length === 0
  const typing = <Button onPress={() => setTyping(true)}>Type an observation</Button>
  return (
    <section className={styles['weather']} aria-label="Weather">
      <header className={styles['bar']}>
        <h2 className={styles['title']}>Weather</h2>
        <AddStationFiles />
        {typing}
      </header>
      {isEmpty && !attachments.some(isTextFile) ? (
        <EmptyState
          title="No observation is in this job yet"
          sentence="Download the reports of stations near the house for the days around the loss: METAR text, or a table with time, direction, mean wind and gust. Add the file as it came; it is kept with its hash, and you say how it is to be read."
        >
          <AddStationFiles look="main" />
        </EmptyState>
      ) : (
        <div className={styles['body']}>
          <FilesPanel zone={zone} />
          {isEmpty ? null : (
            <>
              <WindowFields />
              <StationsPanel stations={wind?.stations ?? null} />
              {wind === null ? (
                <p className={styles['caution']}>
                  Enter the date of loss on the job sheet to look at the wind around it.
                </p>
              ) : (
                <WindPanel wind={wind} zone={zone} />
              )}
            </>
          )}
          <ContextPanel wind={wind} />
        </div>
      )}
      {isTyping ? <ObservationDialog zone={zone} onClose={() => setTyping(false)} /> : null}
    </section>
  )
}

function AddStationFiles({ look = 'plain' }: { look?: 'plain' | 'main' }) {
  const { job } = useJob()
  const { takeIn } = useTasks()
  return (
    <FileTrigger allowsMultiple onSelect={(chosen) => void takeIn(job.id, [...(chosen ?? [])])}>
      <Button look={look}>Add station files</Button>
    </FileTrigger>
  )
}
