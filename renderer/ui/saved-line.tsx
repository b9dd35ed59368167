import { useEffect, useState } from 'react'
import { TextField } from './text-field.tsx'

interface SavedLineProps {
  readonly label: string
  readonly hideLabel?: boolean
  readonly placeholder?: string
  readonly value: string
  readonly onSave: (value: string) => void
}

/** A line of text that is saved when it is left or Enter is pressed. */
export function SavedLine({ value, onSave, ...field }: SavedLineProps) {
  const [text, setText] = useState(value)
  useEffect(() => setText(value), [value])
  const save = () => {
    if (text.trim() !== value) onSave(text.trim())
  }
  return (
    <TextField
      {...field}
      value={text}
      onChange={setText}
      onBlur={save}
      onKeyDown={(event) => {
        if (event.key === 'Enter') save()
      }}
    />
  )
}
