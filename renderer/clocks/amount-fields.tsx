import { useState } from 'react'
import { clockText, readClock } from '../sheet/clock-text.ts'
import { TextField } from '../ui/text-field.tsx'
import type { ComparisonFields } from './comparison-fields.ts'

/** An amount typed by hand. */
export function AmountFields({ camera, onComparison }: ComparisonFields) {
  const [text, setText] = useState(clockText(camera.clock.correctionMs))
  const typed = readClock(text)
  return (
    <TextField
      label="Add to its clock"
      placeholder="+7 min 0 s"
      value={text}
      error={typed.ok ? null : typed.error}
      onChange={(next) => {
        setText(next)
        const read = readClock(next)
        onComparison(
          read.ok
            ? {
                by: 'typed',
                photoId: null,
                cameraLocal: '1970-01-01T00:00:00',
                correctionMs: read.value,
                trueWords: '',
              }
            : null,
        )
      }}
    />
  )
}
