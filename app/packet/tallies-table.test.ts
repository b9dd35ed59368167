import { describe, expect, it } from 'vitest'
import { aCaseFile } from '../../tests/builders/case-file.ts'
import { aFacet, aFinding } from '../../tests/builders/records.ts'
import { talliesTable } from './tallies-table.ts'

describe('tallies.csv', () => {
  const a = aFacet({ letter: 'A', inspected: { percent: 60, note: 'Wet.' } })
  const b = aFacet({ letter: 'B', inspected: { percent: 0 } })
  const counted = aFinding({ facetId: a.id, number: 1, extent: { kind: 'exactly', count: 4 } })
  const several = aFinding({ facetId: a.id, number: 2, extent: { kind: 'several' } })
  const { header, rows } = talliesTable(aCaseFile({ facets: [a, b], findings: [counted, several] }))
  const cell = (row: number, title: string) => rows[row]?.[header.indexOf(title)]

  it('has a number only for what was counted', () => {
    expect([cell(0, 'facet'), cell(0, 'counted'), cell(0, 'counted_in')]).toEqual(['A', '4', 'F-1'])
    expect(cell(0, 'not_counted')).toBe('several field tiles, not counted (F-2)')
    expect(cell(0, 'facet_tiles')).toBe('')
  })

  it('has a line for a facet without findings, with what was looked at', () => {
    expect(rows.map((_, i) => [cell(i, 'facet'), cell(i, 'facet_looked_at_percent'), cell(i, 'counted')])).toEqual([
      ['A', '60', '4'],
      ['B', '0', ''],
    ])
  })
})
