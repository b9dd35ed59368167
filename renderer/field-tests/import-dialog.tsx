import { useState } from 'react'
import type { CsvReadings, CsvRow } from '../../app/fieldtest/csv-readings.ts'
import { useDesk } from '../client/client-context.tsx'
import { useEdit, useJob } from '../state/job-state.tsx'
import { Button } from '../ui/button.tsx'
import { Checkbox } from '../ui/checkbox.tsx'
import { Dialog } from '../ui/dialog.tsx'
import { useMessages } from '../ui/message.tsx'
import { countWords } from '../ui/quantity-words.ts'
import styles from './field-tests.module.css'

/** Readings from a CSV file: chosen, shown row by row with what is wrong, and kept only when a person says so. */
export function ImportDialog({ onClose }: { onClose: () => void }) {
  const desk = useDesk()
  const edit = useEdit()
  const { job } = useJob()
  const { say } = useMessages()
  const [file, setFile] = useState<CsvReadings | null>(null)
  const [fault, setFault] = useState<string | null>(null)
  const [takesKilograms, setTakesKilograms] = useState(false)
  async function preview(chosen: File | undefined) {
    if (chosen === undefined) return
    const reply = await desk.call('field-files.read-csv', { jobId: job.id, text: await chosen.text() })
    setFile(reply.ok ? reply.value : null)
    setFault(reply.ok ? null : `${reply.error.message} ${reply.error.help}`)
  }
  const rows = file?.rows ?? []
  const good = rows.flatMap((row) =>
    row.reading !== null && (row.needs === 'nothing' || takesKilograms) ? [row.reading] : [],
  )
  async function keep() {
    if ((await edit('readings.add', { readings: good })) === null) return
    say({ tone: 'done', text: `${countWords(good.length, 'reading')} came in.` })
    onClose()
  }
  const left = rows.length - good.length
  return (
    <Dialog
      title="Bring readings in from a file"
      isOpen
      onClose={onClose}
      size="large"
      actions={
        <>
          <Button onPress={onClose}>Cancel</Button>
          <Button look="main" isDisabled={good.length === 0} onPress={() => void keep()}>
            {left === 0 || good.length === 0
              ? `Keep ${countWords(good.length, 'reading')}`
              : `Keep ${countWords(good.length, 'good row')}, leave ${left} out`}
          </Button>
        </>
      }
    >
      <FileChoice onChoose={(chosen) => void preview(chosen)} />
      {fault === null ? null : (
        <p className={styles['bad']} role="alert">
          ▲ {fault}
        </p>
      )}
      {file?.notes.map((note) => (
        <p key={note}>▲ {note}</p>
      ))}
      {rows.some(({ needs }) => needs === 'kilograms-confirmed') ? (
        <Checkbox isSelected={takesKilograms} onChange={setTakesKilograms}>
          Take the kilograms as the pounds shown
        </Checkbox>
      ) : null}
      {rows.length === 0 ? null : <Preview titles={file?.titles ?? []} rows={rows} takesKilograms={takesKilograms} />}
    </Dialog>
  )
}

function FileChoice({ onChoose }: { onChoose: (file: File | undefined) => void }) {
  return (
    <>
      <label className={styles['file']}>
        CSV file{' '}
        <input type="file" accept=".csv,text/csv,text/plain" onChange={(event) => onChoose(event.target.files?.[0])} />
      </label>
      <p className={styles['quiet']}>
        First line: titles such as facet, area, lift in, force lbf, instrument, tester, time, finding, note. Commas,
        semicolons or tabs; decimal commas are read.
      </p>
    </>
  )
}

interface PreviewProps {
  readonly titles: readonly string[]
  readonly rows: readonly CsvRow[]
  readonly takesKilograms: boolean
}

function Preview({ titles, rows, takesKilograms }: PreviewProps) {
  return (
    <div className={styles['scroll']}>
      <table className={styles['lines']} aria-label="Rows of the file">
        <thead>
          <tr>
            <th scope="col">Line</th>
            <th scope="col">Comes in</th>
            {titles.map((title, i) => (
              <th key={i} scope="col">
                {title}
              </th>
            ))}
            <th scope="col">Remarks</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ line, needs, cells, messages }) => (
            <tr key={line}>
              <td>{line}</td>
              <td className={needs === 'mending' ? styles['bad'] : undefined}>
                {needs === 'nothing' || (needs === 'kilograms-confirmed' && takesKilograms) ? 'yes' : 'no'}
              </td>
              {titles.map((_, i) => (
                <td key={i}>{cells[i] ?? ''}</td>
              ))}
              <td>{messages.join(' ')}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}
