import { useEffect, useState } from 'react'
import { TextArea } from '../ui/text-area.tsx'
import { TextField } from '../ui/text-field.tsx'

interface SavedTextProps {
  readonly label: string
  readonly value: string
  /** Called when the field is left with a changed text that is not at fault. */
  readonly onSave: (text: string) => void
  /** What is wrong with a text, in words; null when it can be saved. */
  readonly fault?: (text: string) => string | null
  readonly rows?: number
  readonly placeholder?: string
  readonly maxLength?: number
}

/** A text that is saved when the person leaves it, so that one change is one step of undo. */
export function SavedText({ label, value, onSave, fault, rows, placeholder, maxLength }: SavedTextProps) {
  const [text, setText] = useState(value)
  useEffect(() => setText(value), [value])
  const error = fault?.(text) ?? null
  const shared = {
    label,
    value: text,
    onChange: setText,
    error,
    onBlur: () => {
      if (text !== value && error === null) onSave(text.trim())
    },
    ...(placeholder === undefined ? {} : { placeholder }),
    ...(maxLength === undefined ? {} : { maxLength }),
  }
  return rows === undefined ? <TextField {...shared} /> : <TextArea {...shared} rows={rows} />
}
