import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type ReadingChoices, readingChoicesSchema } from './reading-choices.ts'
import { readStationFile } from './read-station-file.ts'
import { fromKnots } from './speed.ts'
import { readWrittenTime } from './written-time.ts'

const header = ['time', 'dir', 'speed', 'gust']

function file(rows: readonly (readonly string[])[], titles = header) {
  return {
    text: [titles.join(','), ...rows.map((row) => row.join(','))].join('\n'),
    table: { header: titles, rows: rows.map((cells, index) => ({ line: index + 2, cells })) },
  }
}

function choices(given: Partial<ReadingChoices> = {}): ReadingChoices {
  return {
    ...readingChoicesSchema.parse({
      columns: { time: 'time', direction: 'dir', mean: 'speed', gust: 'gust' },
      stationCode: 'PIER',
    }),
    ...given,
  }
}

describe('a table with columns that a person chose', () => {
  it('names every row that can not be read, and keeps the others', () => {
    const read = readStationFile(
      file([
        ['2026-11-04 20:00', '200', '25', '41'],
        ['4 November', '200', '25', '41'],
        ['2026-11-04 21:00', '200', '25,5', '41'],
        ['2026-11-04 22:00', '410', '25', '41'],
        ['2026-11-04 23:00', '200'],
        ['2026-11-04 23:30', 'VRB', '3', 'M'],
      ]),
      choices(),
    )
    expect(read.observations).toHaveLength(2)
    expect(read.problems).toEqual([
      { line: 3, sentence: '"4 November" is not a date and time.' },
      { line: 4, sentence: 'The mean wind "25,5" is not a figure. If commas stand for decimals, say so above.' },
      { line: 5, sentence: 'A direction of 410 degrees is none.' },
      { line: 6, sentence: 'The row has 2 cells; the header names 4.' },
    ])
    expect(read.observations[1]).toMatchObject({ isVariable: true, fromDeg: null, gustKt: null })
  })

  it('says what is still to be chosen, and which column is not there', () => {
    const bare = readStationFile(file([['2026-11-04 20:00', '200', '25', '41']]), readingChoicesSchema.parse({}))
    expect(bare.lacks).toHaveLength(3)
    const wrong = choices({ columns: { station: null, time: 'time', direction: null, mean: 'wind', gust: null } })
    expect(readStationFile(file([]), wrong).lacks).toContain('The file has no column "wind".')
  })

  it('reads decimal commas when they are said to be there', () => {
    const read = readStationFile(
      file([['04.11.2026 20:00', '200', '12,9', '']]),
      choices({ hasDecimalComma: true, unit: 'm/s' }),
    )
    expect(fromKnots(read.observations[0]?.meanKt ?? 0, 'm/s')).toBeCloseTo(12.9, 9)
  })

  it('sees metres per second that are called knots', () => {
    const written = Array.from({ length: 16 }, (_, index) => ((index + 3) * 0.514444).toFixed(1))
    const rows = written.map((speed, index) => [`2026-11-04 ${String(index).padStart(2, '0')}:00`, '200', speed, ''])
    const read = readStationFile(file(rows), choices({ unit: 'kt' }))
    expect(read.provenUnit).toBe('m/s')
    expect(read.cautions).toContain("You chose kt, but the file's own figures say m/s.")
  })

  it('draws no conclusion from whole knots or whole mph', () => {
    const rows = Array.from({ length: 20 }, (_, kt) => ['2026-11-04 10:00', '200', String(kt + 3), ''])
    expect(readStationFile(file(rows), choices()).provenUnit).toBeNull()
    const mph = rows.map(([time = '', from = '', kt], at) => [
      time,
      from,
      String(Math.round((Number(kt) + at) * 1.150779)),
      '',
    ])
    expect(readStationFile(file(mph), choices()).provenUnit).toBeNull()
  })

  it('marks a gust below the mean wind and a speed that no station records', () => {
    const read = readStationFile(
      file([
        ['2026-11-04 20:00', '200', '40', '20'],
        ['2026-11-04 21:00', '200', '40', '300'],
      ]),
      choices(),
    )
    expect(read.observations.map(({ doubts }) => doubts)).toEqual([['gust-below-mean'], ['implausible']])
  })

  it('takes only the days asked for and says how many rows it passed over', () => {
    const rows = [3, 4, 5].map((day) => [`2026-11-0${day} 20:00`, '200', '25', '41'])
    const read = readStationFile(file(rows), choices({ fromDate: '2026-11-04', toDate: '2026-11-04' }))
    expect([read.observations.length, read.outsideDays]).toEqual([1, 2])
  })
})

describe('a written time', () => {
  const at = (text: string, basis: ReadingChoices['timeBasis'] = { kind: 'utc' }) => {
    const read = readWrittenTime(text, basis)
    return read === null ? null : new Date(read.atMs).toISOString().slice(0, 16)
  }

  it('is read in the forms that stations write', () => {
    expect(at('2026-11-04T23:53:00Z')).toBe('2026-11-04T23:53')
    expect(at('202611042353')).toBe('2026-11-04T23:53')
    expect(at('11/04/2026 11:53 PM')).toBe('2026-11-04T23:53')
    expect(at('11/04/2026 12:05 AM')).toBe('2026-11-04T00:05')
    expect(at('04.11.2026 23:53')).toBe('2026-11-04T23:53')
    expect(at('2026-02-30 10:00')).toBeNull()
    expect(at('11/04/2026 13:53 PM')).toBeNull()
  })

  it('is local standard time by a fixed offset, and local time by zone with daylight saving', () => {
    const standard = { kind: 'fixed-offset', offsetMinutes: -300 } as const
    const zone = { kind: 'zone', zone: 'America/New_York' } as const
    expect(at('2026-07-04 12:00', standard)).toBe('2026-07-04T17:00')
    expect(at('2026-07-04 12:00', zone)).toBe('2026-07-04T16:00')
    // Clocks go back on 1 November 2026 at 02:00: half past one comes twice.
    expect(readWrittenTime('2026-11-01 01:30', zone)?.isUncertain).toBe(true)
    expect(readWrittenTime('2026-11-01 03:30', zone)?.isUncertain).toBe(false)
  })
})

describe('any text', () => {
  it('is answered without an exception, every row accounted for', () => {
    const unaccounted = (rows: readonly (readonly string[])[], stray: string) => {
      const table = file(rows)
      const read = readStationFile({ ...table, text: `${stray}\n${table.text}` }, choices({ nearDate: '2026-11-04' }))
      const found = read.observations.length + read.merged + read.problems.length + read.outsideDays
      return read.kind === 'table' ? rows.length - found : 0
    }
    const anyRows = fc.array(fc.array(fc.string(), { maxLength: 6 }), { maxLength: 20 })
    fc.assert(
      fc.property(anyRows, fc.string(), (rows, stray) => unaccounted(rows, stray) === 0),
      { numRuns: 200 },
    )
    expect(unaccounted([['2026-11-04 20:00', '200', '25', '41'], ['?']], '')).toBe(0)
  })
})
