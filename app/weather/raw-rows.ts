import type { DailyPeak, Observation, RowProblem, StationNote } from './observation.ts'
import type { TimeBasis } from './reading-choices.ts'
import type { SpeedUnit } from './speed.ts'

/** What one format's reader makes of a file, before rows are compared with each other. */
export interface RawRows {
  readonly observations: readonly Observation[]
  readonly dailyPeaks: readonly DailyPeak[]
  readonly stations: readonly StationNote[]
  readonly problems: readonly RowProblem[]
  /** Speeds as written, to recognise their unit by. */
  readonly writtenSpeeds: readonly number[]
  /** What the file proves of itself; null where it proves nothing. */
  readonly proof: {
    readonly unit: SpeedUnit | null
    readonly timeBasis: TimeBasis | null
    readonly sentences: readonly string[]
  }
}

/** Gathers rows while a file is read. */
export interface RowCollector {
  readonly observations: Observation[]
  readonly dailyPeaks: DailyPeak[]
  readonly stations: Map<string, StationNote>
  readonly problems: RowProblem[]
  readonly writtenSpeeds: number[]
}

/** An empty collector. */
export function newCollector(): RowCollector {
  return { observations: [], dailyPeaks: [], stations: new Map(), problems: [], writtenSpeeds: [] }
}

/** What was gathered, with what the file proves. */
export function collected(rows: RowCollector, proof: RawRows['proof'] = NO_PROOF): RawRows {
  return { ...rows, stations: [...rows.stations.values()], proof }
}

const NO_PROOF: RawRows['proof'] = { unit: null, timeBasis: null, sentences: [] }
