import type { WindForSides } from '../../app/assessment/wind-side.ts'
import { KeptText } from '../field-tests/kept-text.tsx'
import { NumberField } from '../ui/number-field.tsx'
import styles from './assessment.module.css'
import { useAssessment } from './use-assessment.ts'

/** The wind that sides are named by. A person's statement can be typed while no station gives a direction. */
export function WindFields({ wind }: { wind: WindForSides }) {
  const { assessment, save } = useAssessment()
  const isRecorded = wind.kind === 'known' && wind.by === 'station'
  const state = (set: Partial<typeof assessment.wind>) => void save({ wind: { ...assessment.wind, ...set } })
  return (
    <>
      {wind.kind === 'known' ? <p className={styles['quiet']}>{wind.sentence}</p> : null}
      {isRecorded ? null : (
        <div className={styles['fields']}>
          <NumberField
            label="Wind from, degrees"
            unit="°"
            min={0}
            max={359}
            value={assessment.wind.fromDeg}
            onChange={(fromDeg) => state({ fromDeg })}
          />
          <KeptText
            label="Where that comes from"
            value={assessment.wind.source}
            onChange={(source) => state({ source })}
          />
        </div>
      )}
    </>
  )
}
