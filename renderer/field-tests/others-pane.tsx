import { useState } from 'react'
import { otherTestLabels } from '../../app/fieldtest/other-test-labels.ts'
import type { OtherTest } from '../../app/fieldtest/survey.ts'
import { Button } from '../ui/button.tsx'
import { Panel } from '../ui/panel.tsx'
import { SelectField } from '../ui/select-field.tsx'
import { TextArea } from '../ui/text-area.tsx'
import styles from './field-tests.module.css'
import { LinePhotos } from './line-photos.tsx'
import { newLineId } from './new-line-id.ts'
import { FacetField } from './place-fields.tsx'
import { useSurvey } from './use-survey.ts'

const kinds = (['moisture', 'core', 'cut-test', 'other'] as const).map((key) => ({ key, label: otherTestLabels[key] }))

/** Moisture, cores, cuts: what was done and found, in words. */
export function OthersPane() {
  const { survey, save } = useSurvey()
  const { others } = survey
  const [kind, setKind] = useState<OtherTest['kind']>('moisture')
  const [text, setText] = useState('')
  const put = (changed: OtherTest) =>
    void save({ others: others.map((one) => (one.id === changed.id ? changed : one)) })
  async function add() {
    const line: OtherTest = { id: newLineId(), kind, facetId: null, text: text.trim(), photoIds: [] }
    if (await save({ others: [...others, line] })) setText('')
  }
  return (
    <>
      {others.length === 0 ? (
        <p className={styles['quiet']}>
          No other test yet. A moisture reading, a core or a cut goes here, with what was done, where and what it
          showed. A cut opens the roof: photograph it before, and say how it was closed.
        </p>
      ) : null}
      {others.map((one, i) => (
        <Panel
          key={one.id}
          title={`${otherTestLabels[one.kind]} ${i + 1}`}
          actions={
            <Button onPress={() => void save({ others: others.filter(({ id }) => id !== one.id) })}>
              Remove test {i + 1}
            </Button>
          }
        >
          <p>{one.text}</p>
          <div className={styles['fields']}>
            <FacetField value={one.facetId} onChange={(facetId) => put({ ...one, facetId })} />
            <LinePhotos value={one.photoIds} onChange={(photoIds) => put({ ...one, photoIds })} />
          </div>
        </Panel>
      ))}
      <Panel title="Add a test">
        <div className={styles['details']}>
          <SelectField label="Kind of test" options={kinds} value={kind} onChange={(key) => setKind(key ?? 'other')} />
          <TextArea label="What was done and found" value={text} onChange={setText} />
          <p>
            <Button look="main" isDisabled={text.trim() === ''} onPress={() => void add()}>
              Add the test
            </Button>
          </p>
        </div>
      </Panel>
    </>
  )
}
