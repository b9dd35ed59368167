import { facetTallies, type FacetTally, type KindTally } from '../../../assessment/facet-tallies.ts'
import { pieceSizeOf } from '../../../assessment/piece-size-of.ts'
import {
  affectedWords,
  apartWords,
  inspectedWords,
  TALLY_CAUTION,
  tallyWorking,
} from '../../../assessment/tally-words.ts'
import { findingKindLabels } from '../../../evidence/catalog/labels.ts'
import type { Block, TableBlock, Text } from '../../document.ts'
import { whatWords } from '../../finding-words.ts'
import { facetLink, findingLinks } from '../../links.ts'
import type { PacketContext } from '../../packet-context.ts'
import { plain } from '../../text.ts'
import { column, heading, paragraph } from '../section.ts'

/** What was counted, by facet, component and condition, and the share of tiles affected; every sum with its working. */
export function talliesBlocks({ facets, findings, sheet }: PacketContext): readonly Block[] {
  const piece = pieceSizeOf(sheet.covering)
  const tallies = facetTallies({ facets, findings, piece })
  const rows = tallies.flatMap((one) => one.rows.map((row) => ({ facet: one.facet, row })))
  if (rows.length === 0) return []
  const working = tallies.flatMap((one) => tallyWorking(one, piece))
  return [
    heading('Tallies', true),
    paragraph(TALLY_CAUTION),
    {
      kind: 'table',
      summary: 'Findings by facet, component and condition',
      columns: [
        column('Facet', 1),
        column('What', 4),
        column('Counted', 1, 'end'),
        column('In', 2),
        column('Not counted', 4),
      ],
      rows: rows.map(({ facet, row }) => ({ cells: rowCells(facet, row) })),
    },
    affectedTable(tallies),
    ...(working.length === 0 ? [] : [paragraph('Working', 'small'), workingList(working)]),
  ]
}

function rowCells(facet: FacetTally['facet'], row: KindTally): readonly Text[] {
  const kind = row.kind === 'damage' ? '' : ` (${findingKindLabels[row.kind].toLowerCase()})`
  return [
    facetLink(facet ?? undefined),
    plain(`${whatWords(row)}${kind}`),
    plain(row.counted === null ? '-' : String(row.counted.count)),
    row.counted === null ? plain('-') : findingLinks(row.counted.findings),
    plain(row.apart.length === 0 ? '-' : apartWords(row)),
  ]
}

function affectedTable(tallies: readonly FacetTally[]): TableBlock {
  return {
    kind: 'table',
    summary: 'Tiles with damage out of the tiles of each facet, and how much of it was looked at',
    columns: [column('Facet', 1), column('Looked at', 4), column('Tiles with damage, of the whole facet', 5)],
    rows: tallies.flatMap(({ facet, affected }) =>
      facet === null
        ? []
        : [{ cells: [facetLink(facet), plain(inspectedWords(facet)), plain(affectedWords(affected))] }],
    ),
  }
}

function workingList(lines: readonly string[]): Block {
  return { kind: 'list', items: lines.map(plain) }
}
