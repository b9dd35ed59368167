import { useState } from 'react'
import type { Attachment } from '../../app/evidence/attachment.ts'
import type { WeatherSource } from '../../app/weather/weather-records.ts'
import { useEdit, useJob } from '../state/job-state.tsx'
import { Button } from '../ui/button.tsx'
import { TextField } from '../ui/text-field.tsx'
import { ReadFileDialog } from './read-file-dialog.tsx'
import { isTextFile } from './text-files.ts'
import styles from './weather.module.css'

/** Files that may hold reports, those taken and those not, each with where it was got. */
export function FilesPanel({ zone }: { zone: string }) {
  const { attachments, weather } = useJob()
  const [reading, setReading] = useState<Attachment | null>(null)
  const taken = new Set(weather.sources.map(({ attachmentId }) => attachmentId))
  const waiting = attachments.filter((one) => isTextFile(one) && !taken.has(one.id))
  return (
    <section className={styles['part']} aria-label="Station files">
      <h3>Where observations come from</h3>
      <div className={styles['scroll']}>
        <table className={styles['figures']}>
          <thead>
            <tr>
              <th scope="col">File</th>
              <th scope="col">SHA-256</th>
              <th scope="col">Observations</th>
              <th scope="col">Downloaded from, by whom, when</th>
              <th scope="col">Do</th>
            </tr>
          </thead>
          <tbody>
            {weather.sources.map((source) => (
              <SourceRow key={source.id} source={source} />
            ))}
            {waiting.map((attachment) => (
              <tr key={attachment.id}>
                <td>{attachment.file.fileName}</td>
                <td>
                  <code>{attachment.file.sha256.slice(0, 12)}</code>
                </td>
                <td className={styles['quiet']}>not read yet</td>
                <td className={styles['quiet']}>asked when it is read</td>
                <td>
                  <Button onPress={() => setReading(attachment)}>Read as station file</Button>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {reading === null ? null : (
        <ReadFileDialog key={reading.id} attachment={reading} zone={zone} onClose={() => setReading(null)} />
      )}
    </section>
  )
}

function SourceRow({ source }: { source: WeatherSource }) {
  const edit = useEdit()
  return (
    <tr>
      <td>{source.fileName === '' ? 'typed by hand' : source.fileName}</td>
      <td>
        <code>{source.sha256.slice(0, 12)}</code>
      </td>
      <td>
        {source.observations.length}
        {source.leftOut === 0 ? null : <span className={styles['quiet']}> ({source.leftOut} rows left out)</span>}
      </td>
      <td>
        <Provenance source={source} />
      </td>
      <td>
        <Button look="quiet" onPress={() => void edit('weather.remove-source', { id: source.id })}>
          Remove
        </Button>
      </td>
    </tr>
  )
}

function Provenance({ source }: { source: WeatherSource }) {
  const edit = useEdit()
  const [text, setText] = useState(source.provenance)
  return (
    <TextField
      label={`Where ${source.fileName === '' ? 'the typed observation' : source.fileName} was got`}
      hideLabel
      placeholder="not stated"
      value={text}
      onChange={setText}
      onBlur={() => {
        if (text !== source.provenance) void edit('weather.set-provenance', { id: source.id, provenance: text })
      }}
    />
  )
}
