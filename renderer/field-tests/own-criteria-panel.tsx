import { useState } from 'react'
import { ownKey } from '../../app/fieldtest/criteria/criteria.ts'
import { ownCriterionSchema, ruleWords } from '../../app/fieldtest/criteria/criterion.ts'
import { Button } from '../ui/button.tsx'
import { NumberField } from '../ui/number-field.tsx'
import { Panel } from '../ui/panel.tsx'
import { TextField } from '../ui/text-field.tsx'
import styles from './field-tests.module.css'
import { newLineId } from './new-line-id.ts'
import { useSurvey } from './use-survey.ts'

const EMPTY = { name: '', scope: '', source: '', caution: '' }

/** The office's own criteria, beside the shipped ones and never in their place. */
export function OwnCriteriaPanel() {
  const { survey, save } = useSurvey()
  const [words, setWords] = useState(EMPTY)
  const [forceLbf, setForce] = useState<number | null>(null)
  const [liftIn, setLift] = useState<number | null>(null)
  const [fault, setFault] = useState<string | null>(null)
  async function add() {
    const { caution, ...rest } = words
    const rule = liftIn === null ? { kind: 'held-load', forceLbf } : { kind: 'lift-limit', forceLbf, liftIn }
    const cautions = caution.trim() === '' ? [] : [caution.trim()]
    const read = ownCriterionSchema.safeParse({ ...rest, key: newLineId(), rule, cautions })
    if (!read.success) {
      setFault(
        forceLbf === null ? 'A criterion needs a force.' : (read.error.issues[0]?.message ?? 'A field is missing.'),
      )
      return
    }
    setFault(null)
    if (!(await save({ ownCriteria: [...survey.ownCriteria, read.data] }))) return
    setWords(EMPTY)
    setForce(null)
    setLift(null)
  }
  const field = (key: keyof typeof EMPTY, label: string) => (
    <TextField label={label} value={words[key]} onChange={(text) => setWords({ ...words, [key]: text })} />
  )
  return (
    <Panel title="Own criteria">
      <OwnCriteriaList />
      <div className={styles['fields']}>
        {field('name', 'Name')}
        <NumberField label="Force" unit="lbf" min={0.1} max={1000} value={forceLbf} onChange={setForce} />
        <NumberField
          label="Lift limit"
          unit="in"
          min={0.01}
          max={48}
          value={liftIn}
          onChange={setLift}
          help="Leave empty where the tile should hold the force."
        />
        {field('scope', 'Scope')}
        {field('source', 'Source')}
        {field('caution', 'Caution')}
      </div>
      {fault === null ? null : (
        <p className={styles['bad']} role="alert">
          ▲ {fault}
        </p>
      )}
      <p>
        <Button onPress={() => void add()}>Add the criterion</Button>
      </p>
    </Panel>
  )
}

function OwnCriteriaList() {
  const { survey, save } = useSurvey()
  return (
    <ul>
      {survey.ownCriteria.map((one) => (
        <li key={one.key}>
          <strong>{one.name}.</strong> {ruleWords(one.rule)} {one.source}{' '}
          <Button
            look="quiet"
            isDisabled={survey.criterionKey === ownKey(one.key)}
            onPress={() => void save({ ownCriteria: survey.ownCriteria.filter(({ key }) => key !== one.key) })}
          >
            Remove {one.name}
          </Button>
        </li>
      ))}
    </ul>
  )
}
