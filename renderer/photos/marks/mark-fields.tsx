import { useEffect, useRef, useState } from 'react'
import { type Mark, type ObscuredMark, obscuredSchema, type ScaleMark } from '../../../app/evidence/markup.ts'
import { Button } from '../../ui/button.tsx'
import { focusFirstField } from '../../ui/focus-first-field.ts'
import { NumberField } from '../../ui/number-field.tsx'
import { SegmentedChoice } from '../../ui/segmented-choice.tsx'
import { TextField } from '../../ui/text-field.tsx'
import styles from './marks.module.css'
import type { MarkEditor } from './use-mark-editor.ts'

const hides = obscuredSchema.options.map((key) => ({
  key,
  label: { face: 'Face', plate: 'Number plate', other: 'Other' }[key],
}))

/** What the picked or new mark still has to be told: its words, its known length, what it hides. */
export function MarkFields({ editor }: { editor: MarkEditor }) {
  const { selected } = editor
  if (selected === null) return null
  switch (selected.kind) {
    case 'text':
      return <WordsField key={selected.id} editor={editor} mark={selected} />
    case 'scale':
      return <LengthFields key={selected.id} editor={editor} mark={selected} />
    case 'obscured':
      return (
        <SegmentedChoice<ObscuredMark['what']>
          label="What it hides"
          hideLabel
          options={hides}
          value={selected.what}
          onChange={(what) => editor.keep({ ...selected, what })}
        />
      )
    case 'arrow':
    case 'ellipse':
    case 'freehand':
    case 'measure':
      return null
  }
}

function WordsField({ editor, mark }: { editor: MarkEditor; mark: Extract<Mark, { kind: 'text' }> }) {
  const isNew = editor.draft !== null
  const [text, setText] = useState(isNew ? '' : mark.text)
  useEffect(() => {
    if (!isNew) setText(mark.text)
  }, [isNew, mark.text])
  const keep = () => {
    if (text.trim() !== '' && (isNew || text.trim() !== mark.text)) editor.keep({ ...mark, text: text.trim() })
  }
  return (
    <form
      ref={isNew ? focusFirstField : null}
      className={styles['fields']}
      onSubmit={(event) => {
        event.preventDefault()
        keep()
        leaveField()
      }}
    >
      <span className={styles['long']}>
        <TextField
          label="Words"
          value={text}
          maxLength={200}
          onChange={(typed) => {
            setText(typed)
            if (isNew && typed.trim() !== '') editor.setDraft({ ...mark, text: typed.trim() })
          }}
          onKeyDown={(event) => event.key === 'Escape' && (editor.select(null), leaveField())}
        />
      </span>
      <Button type="submit">Keep</Button>
    </form>
  )
}

function LengthFields({ editor, mark }: { editor: MarkEditor; mark: ScaleMark }) {
  const isNew = editor.draft !== null
  // A new line shows a length in the picture at once, but it has to be typed before it is kept.
  const [length, setLength] = useState(isNew ? null : mark.lengthIn)
  const [of, setOf] = useState(mark.of)
  const typed = useRef(length)
  return (
    <form
      ref={isNew ? focusFirstField : null}
      className={styles['fields']}
      onSubmit={(event) => {
        event.preventDefault()
        if (typed.current === null) return
        editor.keep({ ...mark, lengthIn: typed.current, of: of.trim() })
        leaveField()
      }}
    >
      <span className={styles['short']}>
        <NumberField
          label="Its length"
          unit="in"
          value={length}
          min={0.01}
          max={12_000}
          onChange={(lengthIn) => {
            // Enter reads the field and sends the form in one go, before it is drawn again.
            typed.current = lengthIn
            setLength(lengthIn)
            if (isNew && lengthIn !== null) editor.setDraft({ ...mark, lengthIn })
          }}
        />
      </span>
      <span className={styles['long']}>
        <TextField
          label="What has this length"
          value={of}
          maxLength={120}
          placeholder="12-inch steel rule"
          onChange={setOf}
        />
      </span>
      <Button type="submit">Keep</Button>
    </form>
  )
}

/** Gives the keys back to the marks. */
function leaveField(): void {
  if (document.activeElement instanceof HTMLElement) document.activeElement.blur()
}
