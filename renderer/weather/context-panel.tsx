import { contextCautions, contextFigures, type ContextFigures } from '../../app/weather/context-figures.ts'
import type { JobWind } from '../../app/weather/job-wind.ts'
import { fromKnots } from '../../app/weather/speed.ts'
import { exposureSchema } from '../../app/weather/velocity-pressure.ts'
import type { WeatherChoices } from '../../app/weather/weather-records.ts'
import { useEdit, useJob } from '../state/job-state.tsx'
import { Button } from '../ui/button.tsx'
import { NumberField } from '../ui/number-field.tsx'
import { SelectField } from '../ui/select-field.tsx'
import { ContextSpeed } from './context-speed.tsx'
import styles from './weather.module.css'

const exposures = {
  B: 'B: suburbs, wooded, many obstructions',
  C: 'C: open, scattered obstructions',
  D: 'D: flat, unobstructed, or facing open water',
} as const

/** Velocity pressure and uplift moment by the standard's formulas, with what goes in, the working and the cautions. */
export function ContextPanel({ wind }: { wind: JobWind | null }) {
  const { job, weather } = useJob()
  const edit = useEdit()
  const { choices } = weather
  const { figures, lacks, momentLacks } = contextFigures(job.sheet, choices)
  const choose = (part: Partial<WeatherChoices>) => void edit('weather.choose', { choices: { ...choices, ...part } })
  return (
    <section className={styles['part']} aria-label="Figures of the wind standard">
      <h3>Figures of the wind standard, as context</h3>
      <p className={styles['caution']}>{contextCautions[0]}</p>
      <div className={styles['fields']}>
        <ContextSpeed choices={choices} onChoose={choose} />
        <SelectField
          label="Exposure of the site"
          options={exposureSchema.options.map((key) => ({ key, label: exposures[key] }))}
          emptyLabel="Not chosen"
          value={choices.exposure}
          onChange={(exposure) => choose({ exposure })}
        />
        <PressureFields choices={choices} choose={choose} />
        <TileFields choices={choices} choose={choose} />
      </div>
      <UseMeasured wind={wind} choose={choose} />
      {lacks.map((sentence) => (
        <p key={sentence} className={styles['quiet']}>
          {sentence}
        </p>
      ))}
      {figures.length === 0 ? null : <Figures figures={figures} momentLacks={momentLacks} />}
    </section>
  )
}

function Figures({ figures, momentLacks }: Pick<ContextFigures, 'figures' | 'momentLacks'>) {
  return (
    <>
      <table className={styles['figures']}>
        <thead>
          <tr>
            <th scope="col">Edition</th>
            <th scope="col">Velocity pressure</th>
            <th scope="col">Uplift moment on one tile</th>
          </tr>
        </thead>
        <tbody>
          {figures.map(({ edition, pressure, moment }) => (
            <tr key={edition}>
              <td>ASCE {edition}</td>
              <td>
                {pressure.qPsf.toFixed(1)} psf
                {pressure.kdIsIn === 'load' ? ', without Kd as this edition has it' : ', with Kd'}
              </td>
              <td>{moment === null ? momentLacks.join(' ') : `${moment.momentFtLbf.toFixed(1)} ft-lbf`}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <details className={styles['working']}>
        <summary>Show the working</summary>
        {figures.flatMap(({ edition, pressure, moment }) =>
          [
            `ASCE ${edition}: ${pressure.formula}`,
            pressure.working,
            ...(moment === null ? [] : [moment.formula, moment.working, ...moment.outside]),
          ].map((line) => <p key={`${edition} ${line}`}>{line}</p>),
        )}
        {contextCautions.slice(1).map((sentence) => (
          <p key={sentence} className={styles['caution']}>
            {sentence}
          </p>
        ))}
      </details>
    </>
  )
}

interface FieldsProps {
  readonly choices: WeatherChoices
  readonly choose: (part: Partial<WeatherChoices>) => void
}

function PressureFields({ choices, choose }: FieldsProps) {
  return (
    <>
      <NumberField
        label="Ground above sea level"
        unit="ft"
        value={choices.elevationFt}
        onChange={(elevationFt) => choose({ elevationFt })}
      />
      <NumberField
        label="Topographic factor Kzt"
        min={1}
        max={5}
        value={choices.kzt}
        onChange={(kzt) => choose({ kzt: kzt ?? 1 })}
      />
      <NumberField
        label="Directionality factor Kd"
        min={0.5}
        max={1}
        value={choices.kd}
        onChange={(kd) => choose({ kd: kd ?? 0.85 })}
      />
    </>
  )
}

function TileFields({ choices, choose }: FieldsProps) {
  return (
    <>
      <NumberField
        label="Length of a tile"
        unit="ft"
        min={0.1}
        max={4}
        value={choices.tileLengthFt}
        onChange={(tileLengthFt) => choose({ tileLengthFt })}
      />
      <NumberField
        label="Arm to the axis"
        unit="ft"
        min={0.1}
        max={4}
        placeholder="0.76 of length"
        value={choices.armFt}
        onChange={(armFt) => choose({ armFt })}
      />
      <NumberField
        label="Roof coefficient GCp"
        min={-6}
        max={0}
        value={choices.gcp}
        onChange={(gcp) => choose({ gcp })}
      />
    </>
  )
}

/** Offers the highest measured gust, and says that it is not the speed that the formula asks for. */
function UseMeasured({ wind, choose }: { wind: JobWind | null; choose: FieldsProps['choose'] }) {
  const [nearest] = (wind?.stations ?? []).filter((one) => one.wind.peakGust !== null)
  const gust = nearest?.wind.peakGust ?? null
  if (nearest === undefined || gust === null) return null
  const mph = Math.round(fromKnots(gust.kt, 'mph'))
  const { code } = nearest.wind.station
  return (
    <p>
      <Button
        onPress={() =>
          choose({ speedMph: mph, speedSource: `highest gust of ${code} in the window, as measured there` })
        }
      >
        Use {mph} mph, the highest gust of {code}
      </Button>
    </p>
  )
}
