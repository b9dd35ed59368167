import { describe, expect, it } from 'vitest'
import { facetIdSchema, findingIdSchema } from '../job/ids.ts'
import { readCsvReadings } from './csv-readings.ts'

const named = {
  facets: [{ id: facetIdSchema.parse('facet-a'), letter: 'A' }],
  findings: [{ id: findingIdSchema.parse('finding-7'), number: 7 }],
}
const read = (...table: readonly (readonly string[])[]) => readCsvReadings(table, named)

describe('a file of readings', () => {
  it('is taken by its titles, units in titles included', () => {
    const { rows, notes } = read(
      ['Facet', 'Lift (in)', 'force_lbf', 'Area', 'time', 'finding', 'colour'],
      ['a', '2 1/4', '24', 'Edge', '2026-11-12 10:40', 'F-7', 'brown'],
    )
    expect(rows[0]).toMatchObject({
      line: 2,
      needs: 'nothing',
      reading: {
        facetId: 'facet-a',
        liftIn: 2.25,
        forceLbf: 24,
        area: 'edge',
        method: 'gauge',
        takenAt: '2026-11-12T10:40',
        findingId: 'finding-7',
      },
    })
    expect(notes).toEqual(['Not used: colour.'])
  })

  it('converts the unit of a title, and says so', () => {
    const { rows } = read(['lift mm', 'force N'], ['50,8', '155.6878'])
    expect(rows[0]?.reading?.liftIn).toBeCloseTo(2, 10)
    expect(rows[0]?.reading?.forceLbf).toBeCloseTo(35, 4)
    expect(rows[0]?.messages).toEqual(['Converted from 50,8 mm.', 'Converted from 155.6878 N.'])
  })

  it('asks before it turns kilograms into pounds', () => {
    const { rows } = read(['lift', 'force kgf'], ['2', '15.9'])
    expect(rows[0]).toMatchObject({ needs: 'kilograms-confirmed' })
    expect(rows[0]?.reading?.forceTyped).toBe('15.9 kgf')
  })

  it('refuses a row for each fault, with the fault', () => {
    const { rows } = read(
      ['facet', 'lift', 'force', 'area', 'time'],
      ['A', '-1', '20', '', ''],
      ['Q', '1', '20', '', ''],
      ['A', '', '', '', ''],
      ['A', '1', 'strong', 'middle', '12/11/26'],
    )
    expect(rows.map(({ needs, reading }) => [needs, reading])).toEqual(rows.map(() => ['mending', null]))
    expect(rows.map(({ messages }) => messages.length)).toEqual([1, 1, 1, 3])
    expect(rows[0]?.messages[0]).toContain('cannot be negative')
    expect(rows[1]?.messages[0]).toBe('There is no facet "Q" on the plan.')
  })

  it('keeps readings without a force as such when the column is missing, and says so', () => {
    const { rows, notes } = read(['facet', 'lift'], ['A', '3'])
    expect(rows[0]?.reading).toMatchObject({ liftIn: 3, forceLbf: null, method: 'by-hand' })
    expect(notes[0]).toContain('No column is called force')
  })

  it('takes nothing from a file without titles', () => {
    const { rows, notes } = read(['A', '2', '24'])
    expect(rows).toEqual([])
    expect(notes[0]).toContain('first line')
  })
})
