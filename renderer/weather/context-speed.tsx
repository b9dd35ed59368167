import { useEffect, useState } from 'react'
import type { WeatherChoices } from '../../app/weather/weather-records.ts'
import { NumberField } from '../ui/number-field.tsx'
import { TextField } from '../ui/text-field.tsx'

interface ContextSpeedProps {
  readonly choices: WeatherChoices
  readonly onChoose: (part: Partial<WeatherChoices>) => void
}

/** The speed that the figures are for, and where it comes from. */
export function ContextSpeed({ choices, onChoose }: ContextSpeedProps) {
  const [source, setSource] = useState(choices.speedSource)
  useEffect(() => setSource(choices.speedSource), [choices.speedSource])
  return (
    <>
      <NumberField
        label="Wind speed, 3-second gust"
        unit="mph"
        min={1}
        max={400}
        value={choices.speedMph}
        onChange={(speedMph) => onChoose({ speedMph })}
      />
      <TextField
        label="Where that speed comes from"
        value={source}
        onChange={(text) => setSource(text.slice(0, 400))}
        onBlur={() => {
          if (source !== choices.speedSource) onChoose({ speedSource: source })
        }}
      />
    </>
  )
}
