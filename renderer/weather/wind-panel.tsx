import { useMemo, useState } from 'react'
import type { JobWind, PlacedWind } from '../../app/weather/job-wind.ts'
import { windPlot } from '../../app/weather/wind-plot.ts'
import { windRose } from '../../app/weather/wind-rose.ts'
import {
  peakKindWords,
  peakWords,
  placeInSource,
  scaleWords,
  speedWords,
  windTimeWords,
} from '../../app/weather/wind-words.ts'
import { SelectField } from '../ui/select-field.tsx'
import { ChartView } from './chart-view.tsx'
import styles from './weather.module.css'

/** The highest winds of each station side by side, and one station drawn over time and by direction. */
export function WindPanel({ wind, zone }: { wind: JobWind; zone: string }) {
  const reported = wind.stations.filter((one) => one.wind.observations.length > 0)
  const [chosen, setChosen] = useState<string | null>(null)
  const shown = reported.find((one) => one.wind.station.id === chosen) ?? reported[0]
  if (shown === undefined) return <p className={styles['caution']}>No station reported in this window.</p>
  return (
    <section className={styles['part']} aria-label="Wind in the window">
      <h3>Highest winds</h3>
      <PeakTable stations={reported} zone={zone} />
      <p className={styles['quiet']}>
        A gust is the highest short average, a mean wind an average over minutes; the two are not compared.
      </p>
      {reported.length < 2 ? null : (
        <div className={styles['fields']}>
          <SelectField
            label="Drawn below"
            options={reported.map((one) => ({ key: one.wind.station.id, label: one.wind.station.code }))}
            value={shown.wind.station.id}
            onChange={setChosen}
          />
        </div>
      )}
      <Charts one={shown} wind={wind} zone={zone} />
      <DailyPeaks one={shown} />
    </section>
  )
}

function Charts({ one, wind, zone }: { one: PlacedWind; wind: JobWind; zone: string }) {
  const plot = useMemo(() => windPlot(one.wind, wind.window, zone), [one, wind, zone])
  const rose = useMemo(() => windRose(one.wind), [one])
  return (
    <div className={styles['charts']}>
      <ChartView chart={plot} />
      <ChartView chart={rose} />
    </div>
  )
}

function PeakTable({ stations, zone }: { stations: readonly PlacedWind[]; zone: string }) {
  return (
    <div className={styles['scroll']}>
      <table className={styles['figures']}>
        <thead>
          <tr>
            <th scope="col">Station</th>
            <th scope="col">Highest</th>
            <th scope="col">What it is</th>
            <th scope="col">When</th>
            <th scope="col">Where it stands</th>
          </tr>
        </thead>
        <tbody>
          {stations.flatMap(({ wind }) =>
            [wind.peakGust, wind.peakMean].flatMap((peak) => {
              if (peak === null) return []
              return [
                <tr key={`${wind.station.id} ${peak.by}`}>
                  <td>
                    <strong>{wind.station.code}</strong>
                  </td>
                  <td>{peakWords(peak)}</td>
                  <td>
                    {peakKindWords(peak)}
                    {peak.by === 'mean' ? `; ${scaleWords(peak)}` : null}
                  </td>
                  <td>{windTimeWords(peak.atMs, zone)}</td>
                  <td>{placeInSource(peak)}</td>
                </tr>,
              ]
            }),
          )}
        </tbody>
      </table>
    </div>
  )
}

/** The station's own summaries of whole days, which are no reports and stand apart. */
function DailyPeaks({ one }: { one: PlacedWind }) {
  const { dailyPeaks } = one.wind
  if (dailyPeaks.length === 0) return null
  return (
    <p className={styles['quiet']}>
      Highest of the day as the station's daily summary gives it:{' '}
      {dailyPeaks
        .map(({ date, kt, fromDeg }) => `${date} ${speedWords(kt)}${fromDeg === null ? '' : ` from ${fromDeg}°`}`)
        .join('; ')}
      .
    </p>
  )
}
