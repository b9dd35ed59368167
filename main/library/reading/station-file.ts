import { parse } from 'csv-parse/sync'
import type { StationFile, TableFile } from '../../../app/weather/table-file.ts'

/** The bytes of a station file as text, and cut into cells where its first line is a header. Never throws. */
export function stationFileOf(bytes: Buffer): StationFile {
  const text = textOf(bytes)
  return { text, table: tableOf(text) }
}

/** UTF-8, and what isn't as Latin-1, in which every byte is a character. */
function textOf(bytes: Buffer): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes)
  } catch {
    return bytes.toString('latin1')
  }
}

/** The separator is the one that cuts the header into the most cells: rows may have decimal commas. */
function tableOf(text: string): TableFile | null {
  const [first = ''] = text.replace(/^\s+/, '').split('\n', 1)
  const [best] = [',', ';', '\t']
    .map((delimiter) => ({ delimiter, cells: first.split(delimiter).length }))
    .toSorted((a, b) => b.cells - a.cells)
  if (best === undefined || best.cells < 2) return null
  return cut(text, best.delimiter)
}

function cut(text: string, delimiter: string): TableFile | null {
  const rows: { line: number; cells: string[] }[] = []
  try {
    parse(text, {
      delimiter,
      bom: true,
      relax_quotes: true,
      relax_column_count: true,
      skip_empty_lines: true,
      max_record_size: 200_000,
      on_record: (cells: string[], { lines }: { lines: number }) => {
        rows.push({ line: lines, cells })
        return null
      },
    })
  } catch {
    return null
  }
  const [header, ...rest] = rows
  return header === undefined ? null : { header: header.cells.map((title) => title.trim()), rows: rest }
}
