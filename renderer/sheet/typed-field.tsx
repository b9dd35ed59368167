import { useEffect, useState } from 'react'
import { TextField } from '../ui/text-field.tsx'

interface TypedFieldProps<Value> {
  readonly label: string
  readonly hideLabel?: boolean
  readonly value: Value
  readonly write: (value: Value) => string
  readonly read: (
    text: string,
  ) => { readonly ok: true; readonly value: Value } | { readonly ok: false; readonly error: string }
  /** Called when the field is left with text that can be read. */
  readonly onChange: (value: Value) => void
  readonly name: string
  readonly help?: string
  readonly placeholder?: string
}

/** A value that is typed as text in its own notation; the text stays as typed until it can be read. */
export function TypedField<Value>(props: TypedFieldProps<Value>) {
  const { value, write, read, onChange, ...rest } = props
  const known = write(value)
  const [text, setText] = useState(known)
  const [error, setError] = useState<string | null>(null)
  useEffect(() => {
    setText(known)
    setError(null)
  }, [known])
  function leave() {
    const typed = read(text)
    setError(typed.ok ? null : typed.error)
    if (!typed.ok) return
    setText(write(typed.value))
    if (write(typed.value) !== known) onChange(typed.value)
  }
  return <TextField {...rest} value={text} onChange={setText} onBlur={leave} error={error} />
}
