import { outcomeLabels, pullDirectionLabels, pullPointLabels } from '../../app/fieldtest/reading-words.ts'
import {
  outcomeSchema,
  pullDirectionSchema,
  pullPointSchema,
  writtenTimeSchema,
  type Reading,
} from '../../app/fieldtest/reading.ts'
import { findingLabel } from '../../app/evidence/finding.ts'
import { useJob } from '../state/job-state.tsx'
import { Button } from '../ui/button.tsx'
import { NumberField } from '../ui/number-field.tsx'
import { SelectField } from '../ui/select-field.tsx'
import styles from './field-tests.module.css'
import { KeptText } from './kept-text.tsx'
import { LinePhotos } from './line-photos.tsx'
import { PlaceMap } from './place-map.tsx'
import { useSaveReading } from './reading-columns.tsx'
import { RemoveReading } from './remove-reading.tsx'

type Changed = Partial<Omit<Reading, 'id' | 'number'>>

/** Everything of a reading that the table has no room for: where it was pulled, how, by whom, when, and what shows it. */
export function ReadingForm({ reading }: { reading: Reading }) {
  const { survey } = useJob()
  const save = useSaveReading()
  const set = (changed: Changed) => save(reading, changed)
  return (
    <div className={styles['details']}>
      <PlaceMap reading={reading} onPlace={(at) => set({ at })} />
      <PullFields reading={reading} set={set} />
      <KeptText label="Instrument" value={reading.instrument} onChange={(instrument) => set({ instrument })} />
      {survey.instruments
        .filter(({ name }) => name !== reading.instrument)
        .map(({ id, name }) => (
          <p key={id}>
            <Button look="quiet" onPress={() => set({ instrument: name })}>
              Taken with {name}
            </Button>
          </p>
        ))}
      <KeptText label="Tester" value={reading.tester} onChange={(tester) => set({ tester })} />
      <KeptText
        label="Taken at"
        placeholder="2026-11-12 10:40"
        value={reading.takenAt?.replace('T', ' ') ?? ''}
        faultOf={(text) =>
          text === '' || writtenTimeSchema.safeParse(text.replace(' ', 'T')).success
            ? null
            : 'Write the time as 2026-11-12 10:40.'
        }
        onChange={(text) => set({ takenAt: text === '' ? null : text.replace(' ', 'T') })}
      />
      <LinePhotos value={reading.photoIds} onChange={(photoIds) => set({ photoIds })} />
      <KeptText label="Note" value={reading.note} onChange={(note) => set({ note })} />
      <div className={styles['fields']}>
        <NumberField
          label="Plan x"
          unit="ft"
          value={reading.at?.xFt ?? null}
          onChange={(xFt) => set({ at: xFt === null ? null : { xFt, yFt: reading.at?.yFt ?? 0 } })}
        />
        <NumberField
          label="Plan y"
          unit="ft"
          value={reading.at?.yFt ?? null}
          onChange={(yFt) => set({ at: yFt === null ? null : { yFt, xFt: reading.at?.xFt ?? 0 } })}
        />
      </div>
      <RemoveReading reading={reading} />
    </div>
  )
}

function PullFields({ reading, set }: { reading: Reading; set: (changed: Changed) => void }) {
  const { findings } = useJob()
  return (
    <div className={styles['fields']}>
      <SelectField
        label="Point of pull"
        options={pullPointSchema.options.map((key) => ({ key, label: pullPointLabels[key] }))}
        value={reading.pullPoint}
        onChange={(key) => set({ pullPoint: key ?? 'not-stated' })}
      />
      <SelectField
        label="Direction of pull"
        options={pullDirectionSchema.options.map((key) => ({ key, label: pullDirectionLabels[key] }))}
        value={reading.pullDirection}
        onChange={(key) => set({ pullDirection: key ?? 'not-stated' })}
      />
      <SelectField
        label="Outcome"
        options={outcomeSchema.options.map((key) => ({ key, label: outcomeLabels[key] }))}
        value={reading.outcome}
        onChange={(key) => set({ outcome: key ?? 'not-stated' })}
      />
      <SelectField
        label="Finding"
        emptyLabel="None"
        options={findings.map(({ id, number }) => ({ key: id, label: findingLabel(number) }))}
        value={reading.findingId}
        onChange={(key) => set({ findingId: findings.find(({ id }) => id === key)?.id ?? null })}
      />
    </div>
  )
}
