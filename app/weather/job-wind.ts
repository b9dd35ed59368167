import type { CaseFile } from '../evidence/case-file.ts'
import { stationDistance, type StationDistance } from './station-distance.ts'
import { stationWinds, type StationWind } from './station-wind.ts'
import { windWindow, type WindWindow } from './wind-window.ts'

/** A station's wind and how far it is from the property. */
export interface PlacedWind {
  readonly wind: StationWind
  /** Null when the place of one of them is not known. */
  readonly distance: StationDistance | null
}

/** The wind of a job around the day of loss, nearest stations first, those of unknown place last. */
export interface JobWind {
  readonly window: WindWindow
  readonly stations: readonly PlacedWind[]
}

/** Looks at all stations of a job in the chosen window; null while the sheet has no date of loss. */
export function jobWind({ job, weather }: Pick<CaseFile, 'job' | 'weather'>, zone: string): JobWind | null {
  const { loss, property } = job.sheet
  if (loss.date === null) return null
  const { hoursBefore, hoursAfter } = weather.choices
  const window = windWindow(loss.date, { zone, hoursBefore, hoursAfter })
  const home = property.position ?? job.frame.anchor
  const stations = stationWinds(weather, window).map((wind): PlacedWind => {
    const { position } = wind.station
    return { wind, distance: home === null || position === null ? null : stationDistance(home, position) }
  })
  const miles = ({ distance }: PlacedWind) => distance?.miles ?? Number.MAX_VALUE
  return { window, stations: [...stations].sort((a, b) => miles(a) - miles(b)) }
}
