import type { ScopeRow } from '../../../scope/build-scope.ts'
import type { LineGroup, ScopeLine } from '../../../scope/scope-line.ts'
import { bids } from '../../../scope/scope-record.ts'
import { scopeUnits } from '../../../scope/units.ts'
import type { Anchor } from '../../document.ts'

/** A line of the scope under the number that it has in this packet. */
export interface NumberedRow {
  readonly number: number
  readonly row: ScopeRow
  readonly group: LineGroup
  readonly words: string
  readonly unit: string
  /** Lines of the bids that have it. */
  readonly lines: readonly ScopeLine[]
}

/** Numbers the lines in the order in which they are printed. */
export function numberedRows(rows: readonly ScopeRow[]): readonly NumberedRow[] {
  return rows
    .flatMap((row): NumberedRow[] => {
      const lines = bids.flatMap((bid) => row[bid] ?? [])
      const [first] = lines
      return first === undefined
        ? []
        : [{ number: 0, row, group: first.group, words: first.words, unit: scopeUnits[first.unit].words, lines }]
    })
    .map((one, i) => ({ ...one, number: i + 1 }))
}

/** Anchor of a line in the table of work. */
export function anchorOfLine(number: number): Anchor {
  return `scope-line-${number}`
}
