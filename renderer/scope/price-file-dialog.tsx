import type { ReadBook } from '../../app/scope/read-price-book.ts'
import { Button } from '../ui/button.tsx'
import { Dialog } from '../ui/dialog.tsx'
import { useMessages } from '../ui/message.tsx'
import { countWords } from '../ui/quantity-words.ts'
import { SegmentedChoice } from '../ui/segmented-choice.tsx'
import styles from './scope.module.css'
import { usePriceFile } from './use-price-file.ts'

const marks = [
  { key: 'auto', label: 'As the file shows' },
  { key: 'point', label: 'Point: 1,234.50' },
  { key: 'comma', label: 'Comma: 1.234,50' },
] as const

/** A price book: chosen, shown row by row with what is wrong, and taken only when a person says so. */
export function PriceFileDialog({ onClose }: { onClose: () => void }) {
  const { say } = useMessages()
  const price = usePriceFile()
  const { read, fault } = price
  const good = read?.good ?? 0
  const bad = (read?.rows.length ?? 0) - good
  async function take() {
    const taken = await price.take()
    if (taken === null) return
    say({ tone: 'done', text: `${countWords(taken, 'price')} came in.` })
    onClose()
  }
  return (
    <Dialog
      title="Bring a price book in"
      isOpen
      onClose={onClose}
      size="large"
      actions={
        <>
          <Button onPress={onClose}>Cancel</Button>
          <Button look="main" isDisabled={good === 0} onPress={() => void take()}>
            {bad === 0 || good === 0
              ? `Take ${countWords(good, 'price')}`
              : `Take ${countWords(good, 'good row')}, leave ${bad} out`}
          </Button>
        </>
      }
    >
      <label className={styles['file']}>
        CSV file{' '}
        <input
          type="file"
          accept=".csv,text/csv,text/plain"
          onChange={(event) => void price.choose(event.target.files?.[0])}
        />
      </label>
      <p className={styles['quiet']}>
        First line: code, description, unit, unit price. Commas, semicolons or tabs; quoted cells, currency signs and
        grouped thousands are read.
      </p>
      {price.hasFile ? (
        <SegmentedChoice
          label="Mark before decimals"
          options={marks}
          value={price.mark}
          onChange={(mark) => void price.setMark(mark)}
        />
      ) : null}
      {fault === null ? null : (
        <p className={styles['bad']} role="alert">
          ▲ {fault}
        </p>
      )}
      {read === null ? null : <Preview read={read} />}
    </Dialog>
  )
}

function Preview({ read }: { read: ReadBook }) {
  return (
    <>
      {read.lacks.map((lack) => (
        <p key={lack} className={styles['bad']} role="alert">
          ▲ {lack}
        </p>
      ))}
      {read.rows.length === 0 ? null : (
        <div className={styles['scroll']}>
          <table className={styles['lines']} aria-label="Rows of the file">
            <thead>
              <tr>
                <th scope="col">Line</th>
                <th scope="col">Taken</th>
                {read.titles.map((title, i) => (
                  <th key={i} scope="col">
                    {title}
                  </th>
                ))}
                <th scope="col">Price read</th>
                <th scope="col">Remarks</th>
              </tr>
            </thead>
            <tbody>
              {read.rows.map(({ line, cells, price, messages }) => (
                <tr key={line}>
                  <td>{line}</td>
                  <td className={price === null ? styles['bad'] : undefined}>{price === null ? 'no' : 'yes'}</td>
                  {read.titles.map((_, i) => (
                    <td key={i}>{cells[i] ?? ''}</td>
                  ))}
                  <td className={styles['end']}>{price?.price ?? ''}</td>
                  <td>{messages.join(' ')}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
    </>
  )
}
