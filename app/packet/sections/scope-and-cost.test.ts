import { describe, expect, it } from 'vitest'
import { blocksOf, documentAnchors, documentLinks, sectionText } from '../../../tests/builders/document-parts.ts'
import { hipHouse } from '../../../tests/builders/hip-house.ts'
import { aCaseFile } from '../../../tests/builders/case-file.ts'
import { aPacketInput } from '../../../tests/builders/packet-input.ts'
import { aPricedScope } from '../../../tests/builders/priced-scope.ts'
import { aFinding, aJob } from '../../../tests/builders/records.ts'
import { buildPacket } from '../build-packet.ts'
import type { PacketDocument, TableBlock } from '../document.ts'
import { packetOptionsSchema } from '../options.ts'
import { scopeCsv } from '../scope-table.ts'
import { wordingFlags } from '../wording-guard.ts'

const facetId = 'hip-A'
const findings = [
  aFinding({ number: 1, condition: 'missing', extent: { kind: 'exactly', count: 3 }, facetId }),
  aFinding({ number: 2, condition: 'missing', extent: { kind: 'several' }, facetId }),
  aFinding({ number: 3, kind: 'wear', condition: 'surface-ageing', facetId }),
]
const sheet = { covering: { class: 'concrete-tile' as const, exposureIn: 13.5, coverWidthIn: 12, wastePercent: 10 } }

function packetOf(given: { cost: boolean; scope?: Parameters<typeof aPricedScope>[0] }): PacketDocument {
  return buildPacket(
    aPacketInput({
      caseFile: aCaseFile({ job: aJob({ sheet }), facets: hipHouse(), findings, scope: aPricedScope(given.scope) }),
      options: packetOptionsSchema.parse({ cost: given.cost }),
    }),
  )
}

function tables(packet: PacketDocument): readonly TableBlock[] {
  const section = packet.sections.find(({ key }) => key === 'scope')
  return section === undefined ? [] : blocksOf(section).flatMap((block) => (block.kind === 'table' ? [block] : []))
}

const cellText = (cell: TableBlock['rows'][number]['cells'][number] | undefined) =>
  (cell ?? []).map(({ text }) => text).join('')
/** A printed amount in whole cents; null for words. */
function cents(printed: string): bigint | null {
  return /^[\d,]+\.\d\d$/.test(printed) ? BigInt(printed.replaceAll(/[.,]/g, '')) : null
}

describe('scope and cost', () => {
  const packet = packetOf({ cost: true })
  const [work, prices] = tables(packet)
  if (work === undefined || prices === undefined) throw new Error('The section has two tables.')

  it('prints totals that are the sum of the amounts printed above them, for both bids', () => {
    for (const at of [3, 4]) {
      const amounts = prices.rows.filter(({ total }) => total !== true).map(({ cells }) => cents(cellText(cells[at])))
      const [subtotal, overhead, tax, total] = prices.rows
        .filter((row) => row.total === true)
        .map(({ cells }) => cents(cellText(cells[at])))
      const sum = amounts.reduce<bigint>((all, one) => all + (one ?? 0n), 0n)
      expect(amounts.filter((one) => one !== null).length).toBeGreaterThan(1)
      expect(subtotal).toBe(sum)
      expect(total).toBe((subtotal ?? 0n) + (overhead ?? 0n) + (tax ?? 0n))
    }
  })

  it('prints amounts that are the printed quantity x the printed unit price', () => {
    const quantityOf = (number: string, at: number) =>
      cellText(work.rows.find(({ cells }) => cellText(cells[0]) === number)?.cells[at]).replaceAll(',', '')
    let checked = 0
    for (const { cells, total } of prices.rows) {
      if (total === true) continue
      const price = /^([\d,.]+) per /.exec(cellText(cells[2]))?.[1]?.replaceAll(',', '')
      for (const [at, from] of [
        [3, 3],
        [4, 4],
      ] as const) {
        const amount = cents(cellText(cells[at]))
        if (amount === null || price === undefined) continue
        const scaled = (text: string, places: number) => {
          const [whole = '', fraction = ''] = text.split('.')
          return BigInt(whole + fraction.padEnd(places, '0'))
        }
        const exact = scaled(quantityOf(cellText(cells[0]), from), 4) * scaled(price, 4)
        expect(amount).toBe((exact * 2n + 1_000_000n) / 2_000_000n)
        checked += 1
      }
    }
    expect(checked).toBe(9)
  })

  it('says which lines have no price, and labels subtotal and total by it', () => {
    const words = prices.rows.map(({ cells }) => cellText(cells[1]))
    expect(words.at(-4)).toMatch(
      /^Subtotal of the lines with a price\. Repair: of the 2 lines with a price; 2 have none\. Replacement: of the 7 lines with a price; 1 has none\.$/,
    )
    expect(words.at(-1)).toBe('Total of the lines with a price')
    expect(cellText(prices.rows.find(({ cells }) => cellText(cells[1]) === 'Eave metal')?.cells[2])).toBe('no price')
  })

  it('prints "count first" for what was not counted, and no amount', () => {
    const row = work.rows.find(({ cells }) => cellText(cells[1]) === 'Replace field tiles, not counted')
    expect(cellText(row?.cells[3])).toBe('count first')
    expect(sectionText(packet, 'scope')).toContain('Count first: F-2 gives no count.')
  })

  it('links every line to its findings and facets, and all links lead somewhere', () => {
    const row = work.rows.find(({ cells }) => cellText(cells[1]) === 'Replace field tiles')
    expect(row?.cells[5]?.filter(({ link }) => link !== undefined)).toEqual([{ text: 'F-1', link: 'finding-F-1' }])
    const anchors = documentAnchors(packet)
    expect(documentLinks(packet).filter((link) => !anchors.includes(link))).toEqual([])
  })

  it('sets the allowance for waste apart and prints the rules of rounding', () => {
    const text = sectionText(packet, 'scope')
    expect(text).toContain('Allowance for waste of the covering, 10 %')
    expect(text).toContain('squares and short tons to 0.01')
    expect(text).toContain('rounded to USD 0.01; a half goes away from zero')
    expect(text).toContain('F-3: not a finding of damage.')
  })

  it('keeps every price back from a recipient who does not get the cost', () => {
    const without = packetOf({ cost: false })
    expect(tables(without)).toHaveLength(1)
    const text = sectionText(without, 'scope')
    expect(text).toContain('Replace field tiles')
    expect(text).not.toMatch(/612\.35|USD|price|Overhead/)
  })

  it('prints a quantity set by hand with the computed one beside it, and lines left out with the reason', () => {
    const changes = [
      { bid: 'replacement', key: 'tear-off', byHand: { quantity: '27.50', why: 'Second layer at the porch' } },
      { bid: 'replacement', key: 'eave', leftOutBecause: 'The metal stays.' },
    ]
    const text = sectionText(packetOf({ cost: true, scope: { changes } }), 'scope')
    expect(text).toContain('27.50 by hand (computed 26.00)')
    expect(text).toContain('Set by hand: Second layer at the porch.')
    expect(text).toContain('left out of the replacement. The metal stays.')
  })

  it('is not in the packet until the office offers it', () => {
    const packet = packetOf({ cost: true, scope: { isOffered: false } })
    expect(packet.sections.some(({ key }) => key === 'scope')).toBe(false)
  })

  it('says nothing outside a contractor’s part', () => {
    const text = sectionText(packet, 'scope')
    expect(wordingFlags(text)).toEqual([])
    expect(text).not.toMatch(/\b(?:covered|owed|claim amount|must be replaced)\b/i)
  })
})

describe('scope.csv', () => {
  const csvOf = (scope: Parameters<typeof aPricedScope>[0] = {}) =>
    scopeCsv(aCaseFile({ job: aJob({ sheet }), facets: hipHouse(), findings, scope: aPricedScope(scope) }))

  it('holds the same amounts and totals as the printed table', () => {
    const { header, rows } = csvOf()
    const at = (name: string) => header.indexOf(name)
    const replacement = rows.filter((row) => row[at('bid')] === 'replacement')
    const totals = replacement.filter((row) => row[at('line')] === '').map((row) => row[at('amount_usd')])
    const [, prices] = tables(packetOf({ cost: true }))
    const printed = prices?.rows.filter(({ total }) => total === true).map(({ cells }) => cellText(cells[4]))
    expect(totals).toEqual(printed?.map((text) => text.replaceAll(',', '')))
    const hip = replacement.find((row) => row[at('line')] === 'hip')
    expect(hip?.[at('quantity')]).toBe('117.9')
    expect(hip?.[at('edges')]?.split('; ')).toHaveLength(4)
  })

  it('has no cell that a spreadsheet would run', () => {
    const own = [{ id: 'x', words: '=HYPERLINK("x")', unit: 'each', repair: '1', source: '@SUM(A1)' }]
    const cells = csvOf({ own }).rows.flat()
    expect(cells.some((cell) => cell.includes('HYPERLINK'))).toBe(true)
    expect(cells.filter((cell) => /^[=+@]/.test(cell))).toEqual([])
  })
})
