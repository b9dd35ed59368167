import { isIsdLine, isIsdTable } from './read-isd-file.ts'
import { isLcdTable } from './read-lcd-file.ts'
import type { StationFile } from './table-file.ts'

/** What a text file with weather in it is, by its content. */
export type StationFileKind =
  | 'metar'
  | 'lcd'
  | 'isd-table'
  | 'isd-lines'
  | 'table'
  | 'storm-reports'
  | 'forecast'
  | 'bulletin'
  | 'unknown'

export const stationFileKindWords = {
  metar: 'METAR reports',
  lcd: 'local climatological data (CSV)',
  'isd-table': 'integrated surface data (CSV)',
  'isd-lines': 'integrated surface data (fixed columns)',
  table: 'table with columns',
  'storm-reports': 'local storm reports',
  forecast: 'forecast',
  bulletin: 'text bulletin',
  unknown: 'text of another kind',
} as const satisfies Record<StationFileKind, string>

/** Recognises a station file by what stands in it. */
export function stationFileKind({ text, table }: StationFile): StationFileKind {
  const lines = text
    .split('\n', 400)
    .map((line) => line.trim())
    .filter((line) => line !== '')
  if (lines.some((line) => /LOCAL STORM REPORT/i.test(line))) return 'storm-reports'
  if (lines.some(isIsdLine)) return 'isd-lines'
  if (table !== null && isLcdTable(table)) return 'lcd'
  if (table !== null && isIsdTable(table)) return 'isd-table'
  const reports = lines.filter((line) => /\b[A-Z][A-Z0-9]{3} \d{6}Z\b/.test(line) && !line.includes(',')).length
  const forecasts = lines.filter((line) => /^TAF\b/.test(line) || /\b\d{6}Z \d{4}\/\d{4}\b/.test(line)).length
  if (reports > 0) return forecasts >= reports ? 'forecast' : 'metar'
  if (forecasts > 0) return 'forecast'
  if (lines.some((line) => /^[A-Z]{4}\d{2} [A-Z]{4} \d{6}/.test(line))) return 'bulletin'
  return table !== null && table.header.length >= 2 ? 'table' : 'unknown'
}
