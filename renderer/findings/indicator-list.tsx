import { useState } from 'react'
import type { CauseOpinion } from '../../app/evidence/finding.ts'
import { Button } from '../ui/button.tsx'
import { TextField } from '../ui/text-field.tsx'
import styles from './finding-form.module.css'
import { type IndicatorState, indicatorLines, withIndicator } from './indicators.ts'

interface IndicatorListProps {
  readonly cause: CauseOpinion
  readonly set: (patch: Partial<CauseOpinion>) => void
  /** The catalog's indicators for the condition. */
  readonly offered: readonly string[]
}

/** Indicators, each marked as seen, as looked for and not seen, or left open. Only marked ones are kept. */
export function IndicatorList({ cause, set, offered }: IndicatorListProps) {
  const [own, setOwn] = useState('')
  const lines = indicatorLines(cause, offered)
  function addOwn() {
    const text = own.trim()
    if (text === '') return
    set(withIndicator(cause, text, 'seen'))
    setOwn('')
  }
  return (
    <div className={styles['stack']}>
      <h4 className={styles['asked']}>Indicators</h4>
      {offered.length === 0 ? null : (
        <p className={styles['quiet']}>Those offered are often read as wind; none of them proves it.</p>
      )}
      <ul className={styles['indicators']}>
        {lines.map(({ text, state }) => (
          <li key={text} className={styles['indicator']}>
            <span>{text}</span>
            <Mark
              text={text}
              words="Seen"
              state="seen"
              present={state}
              onMark={(next) => set(withIndicator(cause, text, next))}
            />
            <Mark
              text={text}
              words="Looked for, not seen"
              state="not-seen"
              present={state}
              onMark={(next) => set(withIndicator(cause, text, next))}
            />
          </li>
        ))}
      </ul>
      <form
        className={styles['line']}
        onSubmit={(event) => {
          event.preventDefault()
          addOwn()
        }}
      >
        <TextField label="Another indicator that was seen" value={own} onChange={setOwn} maxLength={400} />
        <Button type="submit" isDisabled={own.trim() === ''}>
          Add
        </Button>
      </form>
    </div>
  )
}

interface MarkProps {
  readonly text: string
  readonly words: string
  readonly state: IndicatorState
  readonly present: IndicatorState
  readonly onMark: (state: IndicatorState) => void
}

function Mark({ text, words, state, present, onMark }: MarkProps) {
  const isOn = present === state
  return (
    <button
      type="button"
      className={styles['mark']}
      aria-pressed={isOn}
      aria-label={`${words}: ${text}`}
      onClick={() => onMark(isOn ? 'open' : state)}
    >
      {words}
    </button>
  )
}
