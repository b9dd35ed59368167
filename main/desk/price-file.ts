import { createHash } from 'node:crypto'
import { parse } from 'csv-parse/sync'
import { z } from 'zod'
import { refuse } from '../../app/contract/app-error.ts'
import type { DecimalMark, PriceBook } from '../../app/scope/price-book.ts'
import { readPriceBook, type FileLine, type ReadBook } from '../../app/scope/read-price-book.ts'
import { decodeSubtitles } from './decode-subtitles.ts'

const recordsSchema = z.array(z.object({ info: z.object({ lines: z.number() }), record: z.array(z.string()) }))

/** A file of prices, read by its bytes: the rows as they were understood. @throws AppFailure `invalid` */
export function readPriceFile(bytes: Buffer, decimalMark: DecimalMark | null): ReadBook {
  // Node reads the old Windows code page as Latin-1, which has a control character where the euro sign is.
  const text = decodeSubtitles(bytes).replaceAll('\u0080', '€')
  return readPriceBook(linesOf(text), decimalMark)
}

/**
 * The price book that a file gives.
 *
 * @throws AppFailure `invalid` when the file lacks something, has no row that can be taken, or has bad rows that nobody
 *   said to leave out
 */
export function priceBookOf(
  { fileName, bytes }: { readonly fileName: string; readonly bytes: Buffer },
  { decimalMark, withoutBadRows }: { readonly decimalMark: DecimalMark | null; readonly withoutBadRows: boolean },
): PriceBook {
  const read = readPriceFile(bytes, decimalMark)
  const [lack] = read.lacks
  if (lack !== undefined) refuse('invalid', `${fileName}: ${lack}`, { about: 'base64' })
  const bad = read.rows.filter(({ price }) => price === null)
  const [first] = bad
  if (read.good === 0) refuse('invalid', `${fileName} has no row that can be taken. ${first?.messages.join(' ') ?? ''}`)
  if (first !== undefined && !withoutBadRows) {
    refuse('invalid', `${bad.length} of ${read.rows.length} rows of ${fileName} can't be taken.`, {
      help: `Mend the file, or say that the other rows are enough. Line ${first.line}: ${first.messages.join(' ')}`,
    })
  }
  return {
    fileName,
    sha256: createHash('sha256').update(bytes).digest('hex'),
    decimalMark: read.decimalMark ?? 'point',
    rows: read.rows.flatMap(({ price }) => (price === null ? [] : [price])),
    leftOut: bad.length,
  }
}

/** Lines of a CSV file with their numbers. The separator is the one that its first line has most of, so that decimal commas survive. */
function linesOf(text: string): readonly FileLine[] {
  const firstLine = text.replace(/^\uFEFF/, '').split(/\r?\n/, 1)[0] ?? ''
  const countOf = (mark: string) => firstLine.split(mark).length
  const [delimiter = ','] = [',', ';', '\t'].toSorted((a, b) => countOf(b) - countOf(a))
  try {
    const records = recordsSchema.parse(
      parse(text, { bom: true, delimiter, info: true, relax_column_count: true, skip_empty_lines: true, trim: true }),
    )
    return records.map(({ info, record }) => ({ line: info.lines, cells: record }))
  } catch (cause) {
    return refuse('invalid', 'This file can’t be read as a table.', {
      about: 'base64',
      help: `Save it as CSV and try again. ${cause instanceof Error ? cause.message : ''}`.trim(),
    })
  }
}
