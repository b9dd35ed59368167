import { useRef, useState } from 'react'
import type { RoofArea } from '../../app/fieldtest/roof-area.ts'
import { readForce } from '../../app/fieldtest/typed-force.ts'
import { readLift } from '../../app/fieldtest/typed-lift.ts'
import type { FacetId } from '../../app/job/ids.ts'
import { useEdit } from '../state/job-state.tsx'
import { Button } from '../ui/button.tsx'
import { TextField } from '../ui/text-field.tsx'
import styles from './field-tests.module.css'
import { AreaField, FacetField } from './place-fields.tsx'

interface Faults {
  readonly lift: string | null
  readonly force: string | null
  /** Pounds for kilograms that were typed, to be confirmed. */
  readonly offer: { readonly lbf: number; readonly typed: string } | null
}
const NO_FAULTS: Faults = { lift: null, force: null, offer: null }

/** One line for the next reading. Facet, area, instrument and tester stay for the one after. */
export function NewReading() {
  const edit = useEdit()
  const line = useRef<HTMLFormElement>(null)
  const isSaving = useRef(false)
  const [facetId, setFacetId] = useState<FacetId | null>(null)
  const [area, setArea] = useState<RoofArea | null>(null)
  const [lift, setLift] = useState('')
  const [force, setForce] = useState('')
  const [instrument, setInstrument] = useState('')
  const [tester, setTester] = useState('')
  const [faults, setFaults] = useState(NO_FAULTS)
  async function add(confirmed: Faults['offer']) {
    const { wrong, values } = typedLine({ lift, force, confirmed })
    setFaults(wrong)
    if (values === null) return
    const method = values.forceLbf === null ? ('by-hand' as const) : ('gauge' as const)
    const gauge = method === 'gauge' ? instrument : ''
    const reading = { facetId, area, ...values, method, instrument: gauge, tester }
    // Enter pressed twice must not write the same reading twice.
    if (isSaving.current) return
    isSaving.current = true
    const saved = await edit('readings.save', { id: null, reading })
    isSaving.current = false
    if (saved === null) return
    setLift('')
    setForce('')
    line.current?.querySelector<HTMLInputElement>('input[name="lift"]')?.focus()
  }
  const offer = faults.offer
  return (
    <form
      ref={line}
      className={styles['entry']}
      aria-label="Next reading"
      onSubmit={(event) => {
        event.preventDefault()
        void add(null)
      }}
    >
      <FacetField value={facetId} onChange={setFacetId} />
      <AreaField value={area} onChange={setArea} />
      <TextField label="Lift, in" name="lift" value={lift} onChange={setLift} error={faults.lift} />
      <div className={styles['offer']}>
        <TextField label="Force, lbf" value={force} onChange={setForce} placeholder="by hand" error={faults.force} />
        {offer === null ? null : <Button onPress={() => void add(offer)}>Take {offer.lbf.toFixed(1)} lbf</Button>}
      </div>
      <TextField label="Instrument" value={instrument} onChange={setInstrument} />
      <TextField label="Tester" value={tester} onChange={setTester} />
      <div className={styles['entryButton']}>
        <Button type="submit" look="main">
          Add
        </Button>
      </div>
    </form>
  )
}

interface TypedLine {
  readonly lift: string
  readonly force: string
  /** Pounds that a person has confirmed for the kilograms typed. */
  readonly confirmed: Faults['offer']
}

/** The values of a line, or what is wrong with it. */
function typedLine({ lift, force, confirmed }: TypedLine) {
  const liftAs = readLift(lift)
  const forceAs = confirmed === null ? readForce(force) : ({ kind: 'none' } as const)
  const isEmpty = confirmed === null && liftAs.kind === 'none' && forceAs.kind === 'none'
  const wrong: Faults = {
    lift: liftAs.kind === 'refused' ? liftAs.sentence : isEmpty ? 'Write a lift or a force.' : null,
    force: forceAs.kind === 'refused' || forceAs.kind === 'offer' ? forceAs.sentence : null,
    offer: forceAs.kind === 'offer' ? { lbf: forceAs.forceLbf, typed: forceAs.typed } : null,
  }
  if (wrong.lift !== null || wrong.force !== null) return { wrong, values: null }
  const values = {
    liftIn: liftAs.kind === 'read' ? liftAs.liftIn : null,
    liftTyped: liftAs.kind === 'read' ? liftAs.typed : '',
    forceLbf: confirmed?.lbf ?? (forceAs.kind === 'read' ? forceAs.forceLbf : null),
    forceTyped: confirmed?.typed ?? (forceAs.kind === 'read' ? forceAs.typed : ''),
  }
  return { wrong, values }
}
