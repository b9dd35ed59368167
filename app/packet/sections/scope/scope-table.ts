import { bids } from '../../../scope/scope-record.ts'
import { lineGroupLabels, lineGroups } from '../../../scope/scope-line.ts'
import { quantityWords } from '../../../scope/scope-words.ts'
import type { FacetId } from '../../../job/ids.ts'
import type { TableBlock, Text } from '../../document.ts'
import { facetLink, findingLink } from '../../links.ts'
import type { PacketContext } from '../../packet-context.ts'
import { joined, plain } from '../../text.ts'
import { column } from '../section.ts'
import { anchorOfLine, type NumberedRow } from './numbered-rows.ts'

/** Lines of work by kind, both bids side by side, each with the findings and facets that it comes from. */
export function scopeTable(rows: readonly NumberedRow[], context: PacketContext): TableBlock {
  return {
    kind: 'table',
    summary: 'Lines of work with the quantity of each bid and what it comes from',
    columns: [
      column('No.', 0.6, 'end'),
      column('Work', 3.9),
      column('Unit', 1.1),
      column('Repair', 1.7, 'end'),
      column('Replacement', 1.7, 'end'),
      column('Comes from', 3),
    ],
    rows: lineGroups.flatMap((group) => {
      const own = rows.filter((one) => one.group === group)
      if (own.length === 0) return []
      const label: Text = [{ text: lineGroupLabels[group], style: 'strong' }]
      return [
        { leads: true as const, cells: [plain(''), label, plain(''), plain(''), plain(''), plain('')] },
        ...own.map((one) => ({
          anchor: anchorOfLine(one.number),
          cells: [
            plain(String(one.number)),
            workCell(one),
            plain(one.unit),
            ...quantityCells(one),
            fromCell(one, context),
          ],
        })),
      ]
    }),
  }
}

function workCell({ words, lines }: NumberedRow): Text {
  const orders = lines.flatMap(({ toOrder }) => (toOrder === null ? [] : [toOrder]))
  return orders.length === 0 ? plain(words) : [...plain(words), { text: `; ${orders.join('; ')}`, style: 'quiet' }]
}

function quantityCells({ row }: NumberedRow): readonly Text[] {
  return bids.map((bid) => {
    const line = row[bid]
    if (line === null) return [{ text: '-', style: 'quiet' }]
    return line.leftOutBecause === null ? plain(quantityWords(line)) : [{ text: 'left out', style: 'quiet' }]
  })
}

/** Findings where a line has some, else facets: "F-3, F-9", "facets A, B". */
function fromCell({ lines }: NumberedRow, { findings: all, facets }: PacketContext): Text {
  if (lines.every(({ isOwn }) => isOwn)) return plain('added by hand')
  const findingIds = new Set(lines.flatMap(({ traces }) => traces.findingIds))
  const findings = all.filter(({ id }) => findingIds.has(id))
  const facetIds = new Set(
    lines.filter(({ traces }) => traces.findingIds.length === 0).flatMap(({ traces }) => traces.facetIds),
  )
  const parts: Text[] = []
  if (findings.length > 0) parts.push(joined(findings.map(findingLink)))
  if (facetIds.size > 0) parts.push(facetsText(facetIds, facets))
  return parts.length === 0 ? plain('-') : joined(parts, '; ')
}

function facetsText(ids: ReadonlySet<FacetId>, facets: PacketContext['facets']): Text {
  if (ids.size === facets.length) return plain('all facets')
  const named = facets.filter(({ id }) => ids.has(id))
  return [...plain(named.length === 1 ? 'facet ' : 'facets '), ...joined(named.map(facetLink))]
}
