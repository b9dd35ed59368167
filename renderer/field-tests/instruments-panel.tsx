import { calendarDateSchema } from '../../app/job/calendar.ts'
import type { Instrument } from '../../app/fieldtest/survey.ts'
import { Button } from '../ui/button.tsx'
import { IconButton } from '../ui/icon-button.tsx'
import { Panel } from '../ui/panel.tsx'
import styles from './field-tests.module.css'
import { KeptText } from './kept-text.tsx'
import { newLineId } from './new-line-id.ts'
import { useSurvey } from './use-survey.ts'

/** Gauges and meters, with serial number and calibration. A reading names one by its name. */
export function InstrumentsPanel() {
  const { survey, save } = useSurvey()
  const { instruments } = survey
  const put = (changed: Instrument) =>
    void save({ instruments: instruments.map((one) => (one.id === changed.id ? changed : one)) })
  const fresh = {
    id: newLineId(),
    name: `Gauge ${instruments.length + 1}`,
    serial: '',
    calibratedOn: null,
    certificate: '',
  }
  return (
    <Panel title="Instruments">
      {instruments.map((one, i) => (
        <div key={one.id} className={styles['fields']}>
          <KeptText
            label={`Name of instrument ${i + 1}`}
            value={one.name}
            faultOf={(text) => (text.trim() === '' ? 'An instrument needs a name.' : null)}
            onChange={(name) => put({ ...one, name })}
          />
          <KeptText label="Serial number" value={one.serial} onChange={(serial) => put({ ...one, serial })} />
          <KeptText
            label="Calibrated on"
            placeholder="2026-11-02"
            value={one.calibratedOn ?? ''}
            faultOf={(text) =>
              text === '' || calendarDateSchema.safeParse(text).success ? null : 'Write the date as 2026-11-02.'
            }
            onChange={(text) => put({ ...one, calibratedOn: text === '' ? null : calendarDateSchema.parse(text) })}
          />
          <KeptText
            label="Certificate or check"
            value={one.certificate}
            onChange={(certificate) => put({ ...one, certificate })}
          />
          <IconButton
            icon="close"
            label={`Remove ${one.name}`}
            onPress={() => void save({ instruments: instruments.filter(({ id }) => id !== one.id) })}
          />
        </div>
      ))}
      <p>
        <Button onPress={() => void save({ instruments: [...instruments, fresh] })}>Add an instrument</Button>
      </p>
    </Panel>
  )
}
