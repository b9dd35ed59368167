import type { FileReading } from '../../app/contract/weather.ts'
import { directionWords } from '../../app/weather/direction-words.ts'
import { doubtWords, type Observation } from '../../app/weather/observation.ts'
import { speedWords, windTimeWords } from '../../app/weather/wind-words.ts'
import styles from './weather.module.css'

/** What was understood, row by row, and what was not. */
export function FilePreview({ reading, zone }: { reading: FileReading; zone: string }) {
  const { lacks, cautions, problems, problemTotal, total, merged, outsideDays, firstMs, lastMs, highest } = reading
  if (lacks.length > 0) {
    return (
      <ul>
        {lacks.map((sentence) => (
          <li key={sentence} className={styles['caution']}>
            {sentence}
          </li>
        ))}
      </ul>
    )
  }
  return (
    <>
      <p>
        {total} observations of {reading.stations.map(({ code }) => code).join(', ')}
        {firstMs === null || lastMs === null
          ? null
          : `, from ${windTimeWords(firstMs, zone)} to ${windTimeWords(lastMs, zone)}`}
        . {merged} said twice and counted once; {outsideDays} outside the chosen days.
      </p>
      {cautions.map((sentence) => (
        <p key={sentence} className={styles['caution']}>
          {sentence}
        </p>
      ))}
      {problemTotal === 0 ? null : (
        <div>
          <h3>Rows that can't be read: {problemTotal}</h3>
          <ul className={styles['problems']} aria-label="Rows that can't be read">
            {problems.map(({ line, sentence }) => (
              <li key={`${line} ${sentence}`}>
                Line {line}: {sentence}
              </li>
            ))}
          </ul>
        </div>
      )}
      <Rows title="First reports" rows={reading.first} zone={zone} />
      {highest === null ? null : <Rows title="The one with the highest speed" rows={[highest]} zone={zone} />}
    </>
  )
}

function Rows({ title, rows, zone }: { title: string; rows: readonly Observation[]; zone: string }) {
  const speed = (kt: number | null) => (kt === null ? '–' : speedWords(kt))
  return (
    <div className={styles['scroll']}>
      <table className={styles['figures']}>
        <caption className={styles['quiet']}>{title}</caption>
        <thead>
          <tr>
            <th scope="col">Station</th>
            <th scope="col">Line</th>
            <th scope="col">Time</th>
            <th scope="col">From</th>
            <th scope="col">Mean</th>
            <th scope="col">Gust</th>
            <th scope="col">Peak remark</th>
            <th scope="col">In doubt</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={`${row.station} ${row.atMs} ${row.line ?? 0}`}>
              <td>{row.station}</td>
              <td>{row.line}</td>
              <td>{windTimeWords(row.atMs, zone)}</td>
              <td>{directionWords(row)}</td>
              <td>{speed(row.meanKt)}</td>
              <td>{speed(row.gustKt)}</td>
              <td>{row.peak === null ? '–' : `${speedWords(row.peak.kt)}, ${windTimeWords(row.peak.atMs, zone)}`}</td>
              <td>{row.doubts.map((doubt) => doubtWords[doubt]).join('; ')}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}
