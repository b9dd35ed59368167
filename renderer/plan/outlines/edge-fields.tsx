import { useEffect, useState } from 'react'
import type { PlanPoint } from '../../../app/job/places.ts'
import { lengthFt } from '../../../app/roof/polygon.ts'
import { Button } from '../../ui/button.tsx'
import { classNames } from '../../ui/class-names.ts'
import { KeyHint } from '../../ui/key-hint.tsx'
import { NumberField } from '../../ui/number-field.tsx'
import { SegmentedChoice } from '../../ui/segmented-choice.tsx'
import { TextField } from '../../ui/text-field.tsx'
import panels from '../plan-panels.module.css'
import { middleOf, tidyPoint } from '../sheet-geometry.ts'
import { feetAndInchesLabel, parseTypedLength } from '../typed-length.ts'
import { newEdgeId } from './new-edge-id.ts'
import {
  commonPitch,
  houseRings,
  type RingPlace,
  withCornerAdded,
  withCornerRemoved,
  withEdgeLength,
  withEdgePitch,
  withoutCourtyard,
} from './outline-draft.ts'
import styles from './outlines.module.css'
import type { OutlineShape } from './use-outline-shape.ts'

const KINDS = [
  { key: 'eave', label: 'Eave' },
  { key: 'gable', label: 'Gable' },
] as const

interface EdgeFieldsProps {
  readonly shape: OutlineShape
  readonly place: RingPlace
}

/** The picked edge: eave or gable, its pitch, its length. */
export function EdgeFields({ shape, place }: EdgeFieldsProps) {
  const ring = houseRings(shape.outline)[place.ring]
  const edge = ring?.edges[place.index]
  const from = ring?.corners[place.index]
  const to = ring?.corners[(place.index + 1) % ring.corners.length]
  if (ring === undefined || edge === undefined || from === undefined || to === undefined) return null
  const pitch = commonPitch(shape.outline) ?? 5
  return (
    <div className={styles['columns']}>
      <SegmentedChoice
        label={`Edge ${place.index + 1}${place.ring === 0 ? '' : ` of courtyard ${place.ring}`}`}
        options={KINDS}
        value={edge.kind}
        onChange={(kind) => shape.change((now) => withEdgePitch(now, place, kind === 'gable' ? null : pitch))}
      />
      <NumberField
        label="Pitch"
        unit=":12"
        value={edge.kind === 'eave' ? edge.pitchRise : null}
        isDisabled={edge.kind === 'gable'}
        min={0.25}
        max={36}
        onChange={(rise) => {
          if (rise !== null) shape.change((now) => withEdgePitch(now, place, rise))
        }}
      />
      <EdgeLength
        lengthFt={lengthFt(from, to)}
        onChange={(typed) => shape.change((now) => withEdgeLength(now, place, typed))}
      />
      <EdgeActions shape={shape} place={place} middle={tidyPoint(middleOf(from, to))} />
    </div>
  )
}

function EdgeActions({ shape, place, middle }: EdgeFieldsProps & { readonly middle: PlanPoint }) {
  const corners = houseRings(shape.outline)[place.ring]?.corners.length ?? 0
  return (
    <div className={classNames(panels['line'], styles['actions'])}>
      <Button
        onPress={() => {
          shape.change((now) => withCornerAdded(now, place, { at: middle, newId: newEdgeId }))
        }}
      >
        Add a corner
      </Button>
      <Button
        isDisabled={corners <= 3}
        onPress={() => {
          shape.pick(null)
          shape.change((now) => withCornerRemoved(now, place))
        }}
      >
        Remove corner {place.index + 1} <KeyHint keys="Delete" />
      </Button>
      {place.ring === 0 ? null : (
        <Button
          onPress={() => {
            shape.pick(null)
            shape.change((now) => withoutCourtyard(now, place.ring))
          }}
        >
          Close courtyard {place.ring}
        </Button>
      )}
    </div>
  )
}

function EdgeLength({ lengthFt: length, onChange }: { lengthFt: number; onChange: (lengthFt: number) => void }) {
  const shown = feetAndInchesLabel(length)
  const [text, setText] = useState(shown)
  const [error, setError] = useState<string | null>(null)
  useEffect(() => {
    setText(shown)
    setError(null)
  }, [shown])
  function leave() {
    if (text === shown) return
    const typed = parseTypedLength(text)
    setError(typed === null ? 'Type a length such as 24\' 6".' : null)
    if (typed !== null) onChange(typed)
  }
  return (
    <TextField
      label="Length"
      value={text}
      onChange={setText}
      error={error}
      onBlur={leave}
      onKeyDown={(event) => {
        if (event.key === 'Enter') leave()
      }}
    />
  )
}
