import { useEffect, useState } from 'react'
import { TextField } from '../ui/text-field.tsx'

interface KeptTextProps {
  readonly label: string
  readonly hideLabel?: boolean
  readonly value: string
  readonly onChange: (text: string) => void
  readonly placeholder?: string
  /** A sentence for text that can't be taken, null for what can. */
  readonly faultOf?: (text: string) => string | null
}

/** A line of text that is saved when it is left, not with every letter. */
export function KeptText({ value, onChange, faultOf, ...rest }: KeptTextProps) {
  const [text, setText] = useState(value)
  const [fault, setFault] = useState<string | null>(null)
  useEffect(() => setText(value), [value])
  function leave() {
    const wrong = faultOf?.(text) ?? null
    setFault(wrong)
    if (wrong === null && text !== value) onChange(text)
  }
  return (
    <TextField
      {...rest}
      value={text}
      onChange={setText}
      onBlur={leave}
      onKeyDown={(event) => {
        if (event.key === 'Enter') leave()
      }}
      error={fault}
    />
  )
}
