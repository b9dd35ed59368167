import { useRef, useState } from 'react'
import type { PlanPoint } from '../../app/job/places.ts'
import type { Facet } from '../../app/roof/facet.ts'
import { Button } from '../ui/button.tsx'
import { focusFirstField } from '../ui/focus-first-field.ts'
import { KeyHint } from '../ui/key-hint.tsx'
import { NumberField } from '../ui/number-field.tsx'
import { TextField } from '../ui/text-field.tsx'
import { directionWords } from '../../app/packet/format/directions.ts'
import styles from './plan-panels.module.css'
import { useEscapeKey } from './use-escape-key.ts'

/** A drawn facet that still needs its words and pitch. */
export interface NewFacet {
  readonly outline: readonly PlanPoint[]
  readonly letter: string
  readonly name: string
  readonly pitchRise: number | null
  readonly downslopeAzimuthDeg: number
}

interface NewFacetPanelProps {
  readonly facet: NewFacet
  readonly others: readonly Facet[]
  readonly onChange: (facet: NewFacet) => void
  readonly onSave: (facet: NewFacet & { readonly pitchRise: number }) => void
  readonly onCancel: () => void
}

/** Asks for a drawn facet's letter, pitch and direction before it is added. */
export function NewFacetPanel({ facet, others, onChange, onSave, onCancel }: NewFacetPanelProps) {
  const [asked, setAsked] = useState(false)
  const letterFault = faultOfLetter(facet.letter, others)
  const { pitchRise } = facet
  const form = useRef<HTMLFormElement>(null)
  useEscapeKey(form, onCancel)
  function save() {
    setAsked(true)
    if (letterFault === null && pitchRise !== null) onSave({ ...facet, letter: facet.letter.trim(), pitchRise })
  }
  return (
    <form
      ref={form}
      className={styles['tool']}
      aria-label="New facet"

      onSubmit={(event) => {
        event.preventDefault()
        save()
      }}
    >
      <p className={styles['lead']}>New facet: press the arrow on its eave, and give its pitch.</p>
      <NewFacetFields
        facet={facet}
        letterFault={letterFault}
        isPitchAsked={asked && pitchRise === null}
        onChange={onChange}
      />
      <div className={styles['line']}>
        <Button look="main" type="submit">
          Add the facet <KeyHint keys="Enter" />
        </Button>
        <Button look="quiet" onPress={onCancel}>
          Back to drawing
        </Button>
      </div>
    </form>
  )
}

interface NewFacetFieldsProps {
  readonly facet: NewFacet
  readonly letterFault: string | null
  /** True when saving was tried without a pitch. */
  readonly isPitchAsked: boolean
  readonly onChange: (facet: NewFacet) => void
}

function NewFacetFields({ facet, letterFault, isPitchAsked, onChange }: NewFacetFieldsProps) {
  return (
    <div ref={focusFirstField} className={styles['pair']}>
      <NumberField
        label="Pitch"
        unit=":12"
        value={facet.pitchRise}
        onChange={(pitchRise) => onChange({ ...facet, pitchRise })}
        min={0}
        max={36}
        error={isPitchAsked ? 'Type the rise in 12 inches, such as 5.' : null}
      />
      <NumberField
        label="Faces"
        unit="°"
        value={facet.downslopeAzimuthDeg}
        onChange={(deg) =>
          onChange({ ...facet, downslopeAzimuthDeg: deg === null ? facet.downslopeAzimuthDeg : deg % 360 })
        }
        min={0}
        max={360}
        help={directionWords(facet.downslopeAzimuthDeg)}
      />
      <TextField
        label="Letter"
        value={facet.letter}
        onChange={(letter) => onChange({ ...facet, letter })}
        error={letterFault}
      />
      <div className={styles['wide']}>
        <TextField
          label="Name (may stay empty)"
          value={facet.name}
          onChange={(name) => onChange({ ...facet, name })}
          placeholder="front, left of the door"
        />
      </div>
    </div>
  )
}

/** What is wrong with a facet's letter, in words; null when it can stay. */
export function faultOfLetter(letter: string, others: readonly Facet[]): string | null {
  const text = letter.trim()
  if (text === '') return 'A facet needs a letter.'
  if (!/^[\p{L}\p{N}]{1,4}$/u.test(text)) return 'Up to four letters and digits.'
  const taken = others.some((facet) => facet.letter.toUpperCase() === text.toUpperCase())
  return taken ? `Another facet is ${text} already.` : null
}
