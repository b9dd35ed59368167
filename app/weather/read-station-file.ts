import { Temporal } from 'temporal-polyfill'
import { compareRows } from './compare-rows.ts'
import type { DailyPeak, Observation, RowProblem, StationNote } from './observation.ts'
import type { RawRows } from './raw-rows.ts'
import { readIsdLines, readIsdTable } from './read-isd-file.ts'
import { readLcdFile } from './read-lcd-file.ts'
import { readMetarFile } from './read-metar-file.ts'
import { lackingColumns, readTableFile } from './read-table-file.ts'
import type { ReadingChoices, TimeBasis } from './reading-choices.ts'
import type { SpeedUnit } from './speed.ts'
import { stationFileKind, type StationFileKind } from './station-file-kind.ts'
import type { StationFile } from './table-file.ts'

/** The most reports that one file may add to a job. */
export const MOST_OBSERVATIONS = 6000

/** What was understood of a file, for a person to look at before anything is taken. */
export interface UnderstoodFile {
  readonly kind: StationFileKind
  /** Titles of the columns; empty where the file is no table. */
  readonly columns: readonly string[]
  /** Why nothing can be taken yet, as sentences; empty when it can. */
  readonly lacks: readonly string[]
  readonly observations: readonly Observation[]
  readonly dailyPeaks: readonly DailyPeak[]
  readonly stations: readonly StationNote[]
  readonly problems: readonly RowProblem[]
  /** Rows that said the same as another row, counted once. */
  readonly merged: number
  /** Good rows outside the chosen days. */
  readonly outsideDays: number
  /** What the file proves of unit and time. */
  readonly proofs: readonly string[]
  readonly provenUnit: SpeedUnit | null
  readonly provenTimeBasis: TimeBasis | null
  /** What speaks against the choices, as sentences. */
  readonly cautions: readonly string[]
}

/** Reads a station file by a person's choices. Never throws: what can't be read is said row by row. */
export function readStationFile(file: StationFile, choices: ReadingChoices): UnderstoodFile {
  const kind = stationFileKind(file)
  const columns = file.table?.header ?? []
  const lacks = lacksOf(kind, file, choices)
  const raw = lacks.length > 0 ? NOTHING : rowsOf(kind, file, choices)
  const compared = compareRows(raw.observations)
  const kept = compared.observations.filter(({ atMs }) => isWithinDays(dayOf(atMs), choices))
  return {
    kind,
    columns: kind === 'table' ? columns : [],
    lacks: [...lacks, ...emptyLack(kind, lacks, { raw, kept })],
    observations: kept,
    dailyPeaks: raw.dailyPeaks.filter(({ date }) => isWithinDays(date, choices)),
    stations: raw.stations,
    problems: raw.problems,
    merged: compared.merged,
    outsideDays: compared.observations.length - kept.length,
    proofs: raw.proof.sentences,
    provenUnit: raw.proof.unit,
    provenTimeBasis: raw.proof.timeBasis,
    cautions: lacks.length > 0 ? [] : [...choiceCautions(raw, kind, choices), ...compared.cautions],
  }
}

const NOTHING: RawRows = {
  observations: [],
  dailyPeaks: [],
  stations: [],
  problems: [],
  writtenSpeeds: [],
  proof: { unit: null, timeBasis: null, sentences: [] },
}

function lacksOf(kind: StationFileKind, file: StationFile, choices: ReadingChoices): readonly string[] {
  switch (kind) {
    case 'metar':
      return choices.nearDate === null
        ? ['The reports give a day and no month: say near which date they were made.']
        : []
    case 'table':
      return file.table === null ? ['The table could not be cut into columns.'] : lackingColumns(file.table, choices)
    case 'forecast':
      return ['This is a forecast, not an observation. It says what was expected, not what the wind was.']
    case 'storm-reports':
      return [
        'These are storm reports by people, not measurements of a station. Add one that matters as an observation by hand, with its source.',
      ]
    case 'bulletin':
      return ['This is a bulletin without station reports. It stays among the attachments.']
    case 'unknown':
      return ['Neither station reports nor a table with a header was found in this file.']
    case 'lcd':
    case 'isd-table':
    case 'isd-lines':
      return []
  }
}

function rowsOf(kind: StationFileKind, { text, table }: StationFile, choices: ReadingChoices): RawRows {
  if (kind === 'metar') return choices.nearDate === null ? NOTHING : readMetarFile(text, choices.nearDate)
  if (kind === 'isd-lines') return readIsdLines(text)
  if (table === null) return NOTHING
  if (kind === 'lcd') return readLcdFile(table, choices)
  if (kind === 'isd-table') return readIsdTable(table)
  return kind === 'table' ? readTableFile(table, choices) : NOTHING
}

function emptyLack(
  kind: StationFileKind,
  lacks: readonly string[],
  { raw, kept }: { raw: RawRows; kept: readonly Observation[] },
): readonly string[] {
  if (lacks.length > 0) return []
  if (kept.length > MOST_OBSERVATIONS) {
    return [`${kept.length} reports are more than the ${MOST_OBSERVATIONS} that one file may add: choose fewer days.`]
  }
  if (kept.length > 0) return []
  if (raw.observations.length > 0) return ['No report lies within the chosen days.']
  return [kind === 'metar' ? 'No report could be read.' : 'No row could be read.']
}

function dayOf(atMs: number): string {
  return Temporal.Instant.fromEpochMilliseconds(atMs).toString().slice(0, 10)
}

function isWithinDays(day: string, { fromDate, toDate }: ReadingChoices): boolean {
  return (fromDate === null || day >= fromDate) && (toDate === null || day <= toDate)
}

function choiceCautions({ proof }: RawRows, kind: StationFileKind, choices: ReadingChoices): readonly string[] {
  if (kind !== 'lcd' && kind !== 'table') return []
  const { timeBasis } = choices
  const isOtherTime =
    proof.timeBasis !== null &&
    (timeBasis.kind !== 'fixed-offset' ||
      proof.timeBasis.kind !== 'fixed-offset' ||
      timeBasis.offsetMinutes !== proof.timeBasis.offsetMinutes)
  return [
    ...(proof.unit !== null && proof.unit !== choices.unit
      ? [`You chose ${choices.unit}, but the file's own figures say ${proof.unit}.`]
      : []),
    ...(isOtherTime ? ["The chosen time is not the one that the file's own reports prove."] : []),
  ]
}
