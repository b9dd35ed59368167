import { useState } from 'react'
import { directionWords } from '../../app/weather/direction-words.ts'
import type { PlacedWind } from '../../app/weather/job-wind.ts'
import { stationDoubles } from '../../app/weather/station-doubles.ts'
import type { WeatherStation } from '../../app/weather/weather-records.ts'
import { completenessWords, gapWords } from '../../app/weather/wind-words.ts'
import { useJob } from '../state/job-state.tsx'
import { Button } from '../ui/button.tsx'
import { StationDialog } from './station-dialog.tsx'
import styles from './weather.module.css'

/** The stations, how far they are, and how complete their reports are in the window. */
export function StationsPanel({ stations }: { stations: readonly PlacedWind[] | null }) {
  const { weather } = useJob()
  const [open, setOpen] = useState<WeatherStation | null>(null)
  const rows = stations ?? weather.stations.map((station) => ({ wind: { station }, distance: null }))
  return (
    <section className={styles['part']} aria-label="Stations">
      <h3>Stations</h3>
      <div className={styles['scroll']}>
        <table className={styles['figures']}>
          <thead>
            <tr>
              <th scope="col">Station</th>
              <th scope="col">From the property</th>
              <th scope="col" className={styles['end']}>
                Elevation, ft
              </th>
              <th scope="col" className={styles['end']}>
                Instrument, ft
              </th>
              <th scope="col">Reports in the window</th>
              <th scope="col">Without reports</th>
              <th scope="col">Do</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ wind, distance }) => (
              <tr key={wind.station.id}>
                <td>
                  <strong>{wind.station.code}</strong> {wind.station.name}
                </td>
                <td>
                  {distance === null
                    ? 'place not known'
                    : `${distance.miles.toFixed(1)} mi, ${directionWords({ fromDeg: Math.round(distance.bearingDeg), isVariable: false })}`}
                </td>
                <td className={styles['end']}>{wind.station.elevationFt?.toFixed(0) ?? '–'}</td>
                <td className={styles['end']}>{wind.station.anemometerHeightFt ?? '–'}</td>
                <td>{'observations' in wind ? completenessWords(wind) : '–'}</td>
                <td>{'gaps' in wind ? gapWords(wind.gaps) : '–'}</td>
                <td>
                  <Button look="quiet" onPress={() => setOpen(wind.station)}>
                    Change {wind.station.code}
                  </Button>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {stationDoubles(weather.stations).map((sentence) => (
        <p key={sentence} className={styles['caution']}>
          {sentence}
        </p>
      ))}
      {open === null ? null : <StationDialog key={open.id} station={open} onClose={() => setOpen(null)} />}
    </section>
  )
}
