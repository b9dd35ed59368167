import { describe, expect, it } from 'vitest'
import { fieldSurveySchema } from '../fieldtest/survey.ts'
import { aCaseFile } from '../../tests/builders/case-file.ts'
import { aFacet, aFinding, aPhoto, aReading } from '../../tests/builders/records.ts'
import { safeCell } from './csv-cell.ts'
import { csvTables } from './csv-tables.ts'

/** Beginnings of cells that spreadsheets take for formulas: OWASP, "CSV Injection". */
describe('a cell for a spreadsheet', () => {
  it.each([
    '=1+1',
    '+1',
    '-1+1',
    '@SUM(A1)',
    '\t=1',
    '\r=1',
    '\n=1',
    ' =1',
    '-',
    '\uff1d1',
    '-12.5.3',
    '=HYPERLINK("x")',
  ])('can’t start a formula: %j', (text) => {
    expect(safeCell(text)).toBe(`'${text}`)
  })

  it.each(['-12.5', '12.5', '0', '-82.45678', 'P-007', 'two words', 'a=b', ''])('stays as it is: %j', (text) => {
    expect(safeCell(text)).toBe(text)
  })

  it('is empty for what is not known', () => {
    expect(safeCell(null)).toBe('')
    expect(safeCell(-12.5)).toBe('-12.5')
  })
})

describe('the tables of an evidence bundle', () => {
  const facet = aFacet({ letter: 'B' })
  const photo = aPhoto({
    number: 7,
    tags: { facetId: facet.id, caption: '=cmd()' },
    file: { position: { latDeg: 27.95, lonDeg: -82.45, altitudeM: null, errorM: 5 } },
  })
  const leftOut = aPhoto({ number: 8, tags: { leftOutBecause: 'blurred' } })
  const finding = aFinding({
    number: 12,
    facetId: facet.id,
    extent: { kind: 'at-least', count: 3 },
    photos: [{ photoId: photo.id, role: 'close' }],
  })
  const survey = fieldSurveySchema.parse({
    checks: [{ id: 'c1', facetId: facet.id, area: 'edge', checked: 20, loose: 1, note: '=1+1' }],
  })
  const reading = aReading({
    number: 4,
    facetId: facet.id,
    findingId: finding.id,
    photoIds: [photo.id],
    forceLbf: null,
  })
  const tables = csvTables(
    aCaseFile({ facets: [facet], photos: [leftOut, photo], findings: [finding], readings: [reading], survey }),
    [],
  )
  const cell = (name: string, row: number, title: string) => {
    const table = tables.find((candidate) => candidate.name === name)
    return table?.rows[row]?.[table.header.indexOf(title)]
  }

  it('are findings, photos, readings and quantities, with as many cells as titles in each row', () => {
    expect(tables.map(({ name }) => name)).toEqual([
      'findings.csv',
      'photos.csv',
      'readings.csv',
      'hand-checks.csv',
      'tallies.csv',
      'facets.csv',
      'edges.csv',
      'roof-totals.csv',
    ])
    for (const { header, rows } of tables) {
      expect(rows.length).toBeGreaterThan(0)
      for (const row of rows) expect(row).toHaveLength(header.length)
      expect(new Set(header).size).toBe(header.length)
    }
  })

  it('have hand checks line by line, no note of which can start a formula', () => {
    expect(cell('hand-checks.csv', 0, 'area')).toBe('edge')
    expect(cell('hand-checks.csv', 0, 'loose')).toBe('1')
    expect(cell('hand-checks.csv', 0, 'note')).toBe("'=1+1")
  })

  it('keep an extent honest beside its number', () => {
    expect(cell('findings.csv', 0, 'extent_kind')).toBe('at-least')
    expect(cell('findings.csv', 0, 'extent_value')).toBe('3')
    expect(cell('findings.csv', 0, 'extent_words')).toBe('at least 3 field tiles')
  })

  it('tie photos, findings and readings together by their labels', () => {
    expect(cell('findings.csv', 0, 'photos')).toBe('P-007 Close-up')
    expect(cell('photos.csv', 0, 'findings')).toBe('F-12')
    expect(cell('photos.csv', 0, 'facet')).toBe('B')
    expect(cell('readings.csv', 0, 'finding')).toBe('F-12')
    expect(cell('readings.csv', 0, 'photos')).toBe('P-007')
  })

  it('make typed text safe and leave numbers numbers', () => {
    expect(cell('photos.csv', 0, 'caption')).toBe("'=cmd()")
    expect(cell('photos.csv', 0, 'longitude_deg')).toBe('-82.45')
    expect(cell('photos.csv', 0, 'utc_offset_minutes')).toBe('-240')
    expect(cell('photos.csv', 0, 'local_time')).toMatch(/^2026-03-14T14:00:\d\d-04:00$/)
  })

  it('list photos that are left out, with the reason, and leave unknown figures empty', () => {
    expect(cell('photos.csv', 1, 'photo')).toBe('P-008')
    expect(cell('photos.csv', 1, 'left_out_because')).toBe('blurred')
    expect(cell('readings.csv', 0, 'force_lbf')).toBe('')
  })
})
