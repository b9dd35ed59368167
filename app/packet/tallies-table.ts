import { facetTallies, type FacetTally, type KindTally } from '../assessment/facet-tallies.ts'
import { pieceSizeOf } from '../assessment/piece-size-of.ts'
import { apartWords } from '../assessment/tally-words.ts'
import { components } from '../evidence/catalog/components.ts'
import { conditions } from '../evidence/catalog/conditions.ts'
import { findingKindLabels } from '../evidence/catalog/labels.ts'
import type { CaseFile } from '../evidence/case-file.ts'
import { findingLabel } from '../evidence/finding.ts'
import { type CsvTable, table } from './csv-table.ts'

interface Line {
  readonly tally: FacetTally
  /** Null on the one line of a facet without findings. */
  readonly row: KindTally | null
}

/**
 * tallies.csv: a line for each facet, kind, component and condition. A facet without findings has one line, so that what was
 * looked at there is told as well. Columns that begin with `facet_` repeat what holds for the whole facet.
 */
export function talliesTable({ job, facets, findings }: CaseFile): CsvTable {
  const tallies = facetTallies({ facets, findings, piece: pieceSizeOf(job.sheet.covering) })
  const lines = tallies.flatMap((tally): readonly Line[] =>
    tally.rows.length === 0 ? [{ tally, row: null }] : tally.rows.map((row) => ({ tally, row })),
  )
  return table<Line>(
    'tallies.csv',
    [
      ['facet', ({ tally }) => tally.facet?.letter ?? ''],
      ['kind', ({ row }) => (row === null ? '' : findingKindLabels[row.kind])],
      ['component', ({ row }) => (row === null ? '' : components[row.component].label)],
      ['condition', ({ row }) => (row === null ? '' : conditions[row.condition].label)],
      ['counted', ({ row }) => row?.counted?.count ?? null],
      ['counted_in', ({ row }) => (row?.counted?.findings ?? []).map(({ number }) => findingLabel(number)).join(' ')],
      ['not_counted', ({ row }) => (row === null ? '' : apartWords(row))],
      ['facet_looked_at_percent', ({ tally }) => tally.facet?.inspected.percent ?? null],
      ['facet_looked_at_note', ({ tally }) => tally.facet?.inspected.note ?? ''],
      ['facet_tiles', ({ tally: { affected } }) => (affected.kind === 'share' ? affected.tiles : null)],
      ['facet_tiles_looked_at', ({ tally: { affected } }) => (affected.kind === 'share' ? affected.lookedAt : null)],
      [
        'facet_tiles_with_damage',
        ({ tally: { affected } }) => (affected.kind === 'none-counted' ? null : affected.affected),
      ],
      ['facet_findings_not_counted', ({ tally: { affected } }) => affected.uncounted],
    ],
    lines,
  )
}
