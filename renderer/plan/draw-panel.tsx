import { type RefObject, useRef, useState } from 'react'
import { Button } from '../ui/button.tsx'
import { KeyHint } from '../ui/key-hint.tsx'
import { TextField } from '../ui/text-field.tsx'
import styles from './plan-panels.module.css'
import { parseTypedDirection } from './sheet-direction.ts'
import { useEscapeKey } from './use-escape-key.ts'
import { feetAndInchesLabel, parseTypedLength } from './typed-length.ts'
import type { Drawing } from './use-draw-tool.tsx'

interface TypedSideProps {
  readonly drawing: Drawing
  readonly length: string
  readonly onLength: (typed: string) => void
  readonly lengthField: RefObject<HTMLDivElement | null>
  /** Called when a typed side is in, so that the sheet can have the keys again. */
  readonly onAdded: () => void
}

interface DrawPanelProps extends TypedSideProps {
  readonly onCancel: () => void
}

/** The side under way in numbers, and fields to type it instead. */
export function DrawPanel({ onCancel, ...side }: DrawPanelProps) {
  const { drawing } = side
  const corners = drawing.path.length
  return (
    <section className={styles['tool']} aria-label="Draw a facet">
      <p className={styles['lead']}>{corners === 0 ? 'Click the first corner of the facet.' : sideWords(drawing)}</p>
      <TypedSide {...side} />
      {drawing.refusal === null ? null : (
        <p className={styles['refusal']} role="alert">
          {drawing.refusal}
        </p>
      )}
      <div className={styles['line']}>
        <Button look="main" onPress={drawing.close} isDisabled={corners < 3}>
          Close the outline <KeyHint keys="Enter" />
        </Button>
        <Button onPress={drawing.removeLast} isDisabled={corners === 0}>
          Remove last <KeyHint keys="Backspace" />
        </Button>
        <Button look="quiet" onPress={onCancel}>
          Cancel <KeyHint keys="Escape" />
        </Button>
      </div>
    </section>
  )
}

/** Length and direction of the next side, typed; without a direction the side runs where the pointer is. */
export function TypedSide({ drawing, length, onLength, lengthField, onAdded }: TypedSideProps) {
  const [direction, setDirection] = useState('')
  const [wrong, setWrong] = useState<Wrong>({ length: null, direction: null })
  const isDisabled = drawing.path.length === 0
  const { live } = drawing
  const form = useRef<HTMLFormElement>(null)
  useEscapeKey(form, () => {
    onLength('')
    onAdded()
  })
  function add() {
    const feet = parseTypedLength(length)
    const deg =
      direction.trim() === '' ? (live?.directionDeg ?? null) : parseTypedDirection(direction, drawing.lastDirectionDeg)
    setWrong({
      length: feet === null ? 'Type a length such as 24, 24\' 6" or 7.4 m.' : null,
      direction: deg === null ? 'Type 90, up, left, or a turn such as +90.' : null,
    })
    if (feet === null || deg === null) return
    drawing.addSide(feet, deg)
    onLength('')
    setDirection('')
    onAdded()
  }
  return (
    <form
      ref={form}
      className={styles['pair']}
      onSubmit={(event) => {
        event.preventDefault()
        add()
      }}
    >
      <div ref={lengthField}>
        <TextField
          label="Length"
          value={length}
          onChange={onLength}
          placeholder={'24\' 6"'}
          error={wrong.length}
          isDisabled={isDisabled}
        />
      </div>
      <TextField
        label="Direction"
        value={direction}
        onChange={setDirection}
        placeholder={live === null ? 'right' : `${round(live.directionDeg)}°`}
        error={wrong.direction}
        isDisabled={isDisabled}
      />
      <Button type="submit" isDisabled={isDisabled}>
        Add side
      </Button>
    </form>
  )
}

interface Wrong {
  readonly length: string | null
  readonly direction: string | null
}

/** The side under way in words: its length, direction and corner. */
export function sideWords({ path, live }: Drawing): string {
  const side = `Side ${path.length}`
  if (live === null) return `${side}: move to its end, or type it.`
  const corner = live.cornerDeg === null ? '' : `, corner ${round(live.cornerDeg)}°`
  return `${side}: ${feetAndInchesLabel(live.lengthFt)}, direction ${round(live.directionDeg)}°${corner}`
}

function round(deg: number): number {
  return Math.round(deg * 10) / 10
}
