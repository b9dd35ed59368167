import { type ClipboardEvent, useRef } from 'react'
import { TextField } from '../../ui/text-field.tsx'
import { useEscapeKey } from '../use-escape-key.ts'
import styles from './outlines.module.css'
import { BLANK_SIDE, partTraverseLines, type TypedTraverseSide } from './traverse-text.ts'

interface TraverseTableProps {
  readonly rows: readonly TypedTraverseSide[]
  readonly onChange: (rows: readonly TypedTraverseSide[]) => void
  readonly onEscape: () => void
}

/** Sides in numbers, one more line than there are sides. Pasted lines fill the table from where they are pasted. */
export function TraverseTable({ rows, onChange, onEscape }: TraverseTableProps) {
  const table = useRef<HTMLDivElement>(null)
  useEscapeKey(table, onEscape)
  const change = (index: number, side: TypedTraverseSide) => onChange(withBlankEnd(rows.with(index, side)))
  function paste(index: number, event: ClipboardEvent) {
    const sides = partTraverseLines(event.clipboardData.getData('text'))
    const [only] = sides
    if (only === undefined || (sides.length === 1 && only.turn === '')) return
    event.preventDefault()
    onChange(withBlankEnd(rows.toSpliced(index, sides.length, ...sides)))
  }
  return (
    <div ref={table} className={styles['sides']} role="group" aria-label="Typed sides">
      {rows.map((side, index) => (
        <div key={index} className={styles['side']} onPaste={(event) => paste(index, event)}>
          <span aria-hidden="true">{index + 1}</span>
          <TextField
            label={`Length of side ${index + 1}`}
            hideLabel
            value={side.length}
            placeholder={index === 0 ? '42\' 6"' : ''}
            onChange={(length) => change(index, { ...side, length })}
          />
          <TextField
            label={`Turn before side ${index + 1}`}
            hideLabel
            value={side.turn}
            placeholder={index === 0 ? 'R' : ''}
            onChange={(turn) => change(index, { ...side, turn })}
          />
        </div>
      ))}
    </div>
  )
}

function withBlankEnd(rows: readonly TypedTraverseSide[]): readonly TypedTraverseSide[] {
  const last = rows.at(-1)
  return last === undefined || last.length !== '' || last.turn !== '' ? [...rows, BLANK_SIDE] : rows
}
