import { describe, expect, it } from 'vitest'
import type { z } from 'zod'
import { blocksOf, sectionText } from '../../../tests/builders/document-parts.ts'
import { aCaseFile } from '../../../tests/builders/case-file.ts'
import { aPacketInput } from '../../../tests/builders/packet-input.ts'
import { aFacet, aJob } from '../../../tests/builders/records.ts'
import type { jobSheetSchema } from '../../job/sheet.ts'
import type { Facet } from '../../roof/facet.ts'
import { buildPacket } from '../build-packet.ts'
import type { TableBlock } from '../document.ts'

const covering = { class: 'concrete-tile', exposureIn: 13.5, coverWidthIn: 12, wastePercent: 10 } as const

function packetOf(facets: readonly Facet[], sheet: z.input<typeof jobSheetSchema> = { covering }) {
  return buildPacket(aPacketInput({ caseFile: aCaseFile({ job: aJob({ sheet }), facets: [...facets] }) }))
}

function tableNamed(packet: ReturnType<typeof packetOf>, beginning: string): TableBlock {
  const section = packet.sections.find(({ key }) => key === 'property-and-roof')
  const found = (section === undefined ? [] : blocksOf(section)).find(
    (block): block is TableBlock => block.kind === 'table' && block.summary.startsWith(beginning),
  )
  if (found === undefined) throw new Error(`No table begins with "${beginning}".`)
  return found
}

function cellsOf(table: TableBlock): readonly (readonly string[])[] {
  return table.rows.map(({ cells }) => cells.map((cell) => cell.map(({ text }) => text).join('')))
}

/** Width in plan and pitch; 13.5 ft from eave to top, as in test vector G8 of the geometry dossier: 22 by 13.5 at 4:12. */
const slope = (letter: string, widthFt: number, more: Parameters<typeof aFacet>[0] = {}) =>
  aFacet({
    letter,
    name: `slope ${letter}`,
    outline: [
      { xFt: 0, yFt: 0 },
      { xFt: widthFt, yFt: 0 },
      { xFt: widthFt, yFt: 13.5 },
      { xFt: 0, yFt: 13.5 },
    ],
    pitchRise: 4,
    downslopeAzimuthDeg: 180,
    ...more,
  })

describe('the table of facets', () => {
  it('gives what a handbook gives for 22 by 13.5 ft at 4:12: 297 sq ft of plan, 313 on the slope, 3.13 squares', () => {
    // 14.2302 ft of slope take 12.65 courses of 13.5 in, so 13; 313.0655 sq ft take 278.3 tiles of 13.5 by 12 in.
    const [row] = cellsOf(tableNamed(packetOf([slope('A', 22)]), 'Facets with'))
    expect(row).toEqual(['A slope A', '4:12', 'S 180°', '297', '313', '3.13', '14.2', '13', '278'])
  })

  it('has totals that are summed before rounding, and says what the lines give as printed', () => {
    // Three slopes of 14.7568 sq ft each: printed as 15 each, 45 together; their sum is 44.27, printed as 44.
    const width = 14 / 13.5
    const packet = packetOf([slope('A', width), slope('B', width), slope('C', width)])
    const rows = cellsOf(tableNamed(packet, 'Facets with'))
    expect(rows.map((row) => row[4])).toEqual(['15', '15', '15', '44'])
    expect(sectionText(packet, 'property-and-roof')).toContain(
      'Added up as printed, the lines give 45 for 44 sq ft of area, 0.45 for 0.44 squares: the difference is rounding.',
    )
  })

  it('says so where the lines as printed give the printed totals', () => {
    expect(sectionText(packetOf([slope('A', 22)]), 'property-and-roof')).toContain(
      'Added up as printed, the lines give the printed totals.',
    )
  })

  it('never differs from the printed lines by more than half a unit a line', () => {
    const facets = Array.from({ length: 24 }, (_, i) => slope(`S${i}`, 3 + 1.37 * i))
    const rows = cellsOf(tableNamed(packetOf(facets), 'Facets with'))
    const lines = rows.slice(0, -1)
    const total = rows.at(-1) ?? []
    const figure = (text: string | undefined) => Number((text ?? '').replaceAll(',', ''))
    for (const { at, unit } of [
      { at: 3, unit: 1 },
      { at: 4, unit: 1 },
      { at: 5, unit: 0.01 },
      { at: 8, unit: 1 },
    ]) {
      const added = lines.reduce((sum, line) => sum + figure(line[at]), 0)
      expect(Math.abs(added - figure(total[at]))).toBeLessThanOrEqual(((lines.length + 1) * unit) / 2)
    }
  })

  it('marks a facet on which something was set by hand', () => {
    const followed = slope('A', 22, { from: { outlineId: 'outline-1', edgeId: 'edge-1' }, setByHand: ['pitchRise'] })
    const drawnAlone = slope('B', 22, { setByHand: ['outline'] })
    const rows = cellsOf(tableNamed(packetOf([followed, drawnAlone]), 'Facets with'))
    expect(rows[0]?.[0]).toBe('A slope A, pitch set by hand')
    expect(rows[1]?.[0]).toBe('B slope B')
  })

  it('leaves courses and pieces out where their size is not known', () => {
    const table = tableNamed(packetOf([slope('A', 22)], { covering: { class: 'concrete-tile' } }), 'Facets with')
    expect(table.columns.map(({ title }) => title)).toEqual([
      'Facet',
      'Pitch',
      'Faces',
      'Plan, sq ft',
      'Area, sq ft',
      'Squares',
      'Slope, ft',
    ])
  })
})

describe('the allowance for waste', () => {
  it('is a line apart: no figure of the roof changes with it', () => {
    const facets = [slope('A', 22), slope('B', 30)]
    const [with10, without] = [packetOf(facets), packetOf(facets, { covering: { ...covering, wastePercent: null } })]
    expect(cellsOf(tableNamed(with10, 'Facets with'))).toEqual(cellsOf(tableNamed(without, 'Facets with')))
    expect(sectionText(without, 'property-and-roof')).toContain('None is chosen for this job, so none is shown.')
  })

  it('is the chosen share of what was measured; pieces to order go up to whole ones', () => {
    // Test vector G9: 2,600 sq ft at 13.5 by 12 in take 2,311.11 tiles, 2,312 whole ones; a tenth more is 2,542.2, so 2,543.
    const flat = slope('A', 2600 / 13.5, { pitchRise: 0 })
    const packet = packetOf([flat])
    expect(cellsOf(tableNamed(packet, 'The measured roof'))).toEqual([
      ['Measured, as in the table of facets', '2,600', '26.00', '2,311'],
      ['Allowance of 10 %, chosen by the contractor', '260', '2.60', '231'],
    ])
    expect(sectionText(packet, 'property-and-roof')).toContain(
      'With it 2,543 tiles are to be ordered, without it 2,312, both up to whole ones.',
    )
  })
})
