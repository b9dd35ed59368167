import { useState } from 'react'
import { type KnownLine, pixelErrorWords, shortLineSentence, slantSentence } from '../../../app/roof/plan-image.ts'
import { Button } from '../../ui/button.tsx'
import { focusFirstField } from '../../ui/focus-first-field.ts'
import { KeyHint } from '../../ui/key-hint.tsx'
import { TextField } from '../../ui/text-field.tsx'
import panels from '../plan-panels.module.css'
import { feetAndInchesLabel, parseTypedLength } from '../typed-length.ts'
import styles from './underlay.module.css'
import type { Laying } from './use-laying.ts'

/** The length of the line that was marked, and how good a scale it makes. */
export function ScaleSteps({ laying }: { readonly laying: Laying }) {
  const { image, act, marks } = laying
  const [from, to] = marks
  if ((act === 'scale' || act === 'check') && from !== undefined && to !== undefined) {
    return <LengthForm key={`${from.x} ${from.y} ${to.x} ${to.y}`} laying={laying} ends={{ from, to }} />
  }
  if (act !== 'none' || image.knownLine === null) return null
  return <Quality line={image.knownLine} />
}

function Quality({ line }: { readonly line: KnownLine }) {
  const short = shortLineSentence(line)
  if (short !== null) return <p className={styles['warning']}>{short}</p>
  return (
    <p className={panels['quiet']}>
      Scaled by a line of {feetAndInchesLabel(line.lengthFt)}. {pixelErrorWords(line)}
    </p>
  )
}

interface LengthFormProps {
  readonly laying: Laying
  readonly ends: Pick<KnownLine, 'from' | 'to'>
}

function LengthForm({ laying, ends }: LengthFormProps) {
  const [text, setText] = useState('')
  const [wrong, setWrong] = useState<string | null>(null)
  const [checked, setChecked] = useState<string | null>(null)
  const feet = parseTypedLength(text)
  const isSame = Math.hypot(ends.to.x - ends.from.x, ends.to.y - ends.from.y) < 1
  async function use() {
    if (isSame) return setWrong('The two marks are on one place. Stop marking and mark the ends of a longer line.')
    if (feet === null) return setWrong('Type a length above zero, such as 42\' 6", 12.5 ft or 13 m.')
    setWrong(null)
    const line = { ...ends, lengthFt: feet }
    if (laying.act === 'scale') return void (await laying.keep({ knownLine: line }))
    return setChecked(
      slantSentence(laying.image, line) ??
        'This length agrees with the scale, as it does on a view from straight above.',
    )
  }
  const short = feet === null || isSame ? null : shortLineSentence({ ...ends, lengthFt: feet })
  return (
    <form
      ref={focusFirstField}
      className={panels['tool']}
      onSubmit={(event) => {
        event.preventDefault()
        void use()
      }}
    >
      <div className={panels['pair']}>
        <TextField label="Length of the line" value={text} onChange={setText} placeholder={'42\' 6"'} error={wrong} />
        <Button look="main" type="submit">
          {laying.act === 'scale' ? 'Scale the image' : 'Check it'} <KeyHint keys="Enter" />
        </Button>
      </div>
      {isSame ? null : <p className={panels['quiet']}>{pixelErrorWords({ ...ends, lengthFt: feet ?? 1 })}</p>}
      {short === null ? null : <p className={styles['warning']}>{short}</p>}
      {checked === null ? null : <p role="status">{checked}</p>}
    </form>
  )
}
