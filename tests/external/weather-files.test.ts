import { existsSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { z } from 'zod'
import { readMetar } from '../../app/weather/metar-report.ts'
import { type ReadingChoices, readingChoicesSchema } from '../../app/weather/reading-choices.ts'
import { readStationFile, type UnderstoodFile } from '../../app/weather/read-station-file.ts'
import { fromKnots, type SpeedUnit } from '../../app/weather/speed.ts'
import { stationFileOf } from '../../main/library/reading/station-file.ts'

/** Real observations, with values that other programs read in them; where each comes from stands in SOURCES.md there. */
const FOLDER = fileURLToPath(new URL('../../../shared/samples/weather/', import.meta.url))

function read(name: string, choices: z.input<typeof readingChoicesSchema> = {}): UnderstoodFile {
  return readStationFile(stationFileOf(readFileSync(`${FOLDER}${name}`)), readingChoicesSchema.parse(choices))
}

const eastern: ReadingChoices['timeBasis'] = { kind: 'fixed-offset', offsetMinutes: -300 }
const central: ReadingChoices['timeBasis'] = { kind: 'fixed-offset', offsetMinutes: -360 }

function highestGust({ observations }: UnderstoodFile, unit: SpeedUnit) {
  const [top] = observations.toSorted((a, b) => (b.gustKt ?? -1) - (a.gustKt ?? -1))
  return { value: fromKnots(top?.gustKt ?? Number.NaN, unit), at: new Date(top?.atMs ?? 0).toISOString() }
}

const casesSchema = z.object({
  cases: z.array(
    z.object({
      raw: z.string(),
      kind: z.enum(['metar', 'taf', 'nil']),
      expected: z
        .object({
          station: z.string(),
          day: z.number(),
          hour: z.number(),
          minute: z.number(),
          windDirection: z.number().nullable(),
          windSpeedKt: z.number().nullable(),
          windGustKt: z.number().nullable(),
          variableFrom: z.number().nullable(),
          variableTo: z.number().nullable(),
          peakWind: z.object({
            direction: z.number(),
            speedKt: z.number(),
            hour: z.number().nullable(),
            minute: z.number(),
          }),
        })
        .partial()
        .optional(),
    }),
  ),
})

describe.skipIf(!existsSync(FOLDER))('real station files', () => {
  it('reads the wind of every METAR as two independent decoders do', () => {
    const { cases } = casesSchema.parse(JSON.parse(readFileSync(`${FOLDER}metar-cases.json`, 'utf8')))
    expect(cases.length).toBeGreaterThan(40)
    for (const { raw, kind, expected } of cases) {
      const wind = readMetar(raw)
      if (kind !== 'metar') {
        expect([raw, wind.kind]).toEqual([raw, 'refused'])
        continue
      }
      if (wind.kind !== 'report' || expected === undefined) throw new Error(`not read: ${raw}`)
      // Calm is written 00000; the decoders call that direction 0, here it is none.
      const windDirection = wind.fromDeg ?? (wind.meanKt === 0 ? 0 : null)
      const ours = {
        station: wind.station,
        day: wind.day,
        hour: wind.hour,
        minute: wind.minute,
        windDirection,
        windSpeedKt: rounded(wind.meanKt),
        windGustKt: rounded(wind.gustKt),
        variableFrom: wind.between?.fromDeg ?? null,
        variableTo: wind.between?.toDeg ?? null,
        ...(wind.peak === null
          ? {}
          : {
              peakWind: {
                direction: wind.peak.fromDeg,
                speedKt: wind.peak.kt,
                hour: wind.peak.hour,
                minute: wind.peak.minute,
              },
            }),
      }
      // Where the two decoders differ from each other the field is not among the expected ones.
      expect({ raw, ...ours }).toMatchObject({ raw, ...expected })
    }
  })

  it('takes a bulletin apart: doubles once, contradictions marked, damaged reports refused by line', () => {
    const file = read('iem__METAR-collective.txt', { nearDate: '2015-06-08' })
    expect(file.kind).toBe('metar')
    expect(file.problems.map(({ sentence }) => sentence)).toEqual([
      'The report of QQQQ has no wind group.',
      '"O81354Z" is not a day and time in UTC such as 081353Z.',
      '"1QQQ" is not a station\'s four letters.',
    ])
    const of = (station: string) => file.observations.filter((one) => one.station === station)
    expect(of('KMIA')).toHaveLength(1)
    expect(of('KAMW')).toHaveLength(1)
    expect(file.merged).toBe(2)
    expect(of('KALO').map(({ meanKt }) => meanKt)).toEqual([49, 16, 27])
    expect(of('KALO').every(({ doubts }) => doubts.includes('contradicted'))).toBe(true)
    // The remark says 02:02 in a report of 14:03.
    expect(of('KMIA')[0]?.peak?.atMs).toBe(Date.UTC(2015, 5, 8, 2, 2))
    expect(of('KMIA')[0]?.doubts).toContain('peak-long-before')
  })

  it('reads through stray characters and a report that goes on on the next line', () => {
    const file = read('iem__METAR-badchars.txt', { nearDate: '2015-01-03' })
    expect(file.problems).toEqual([])
    expect(file.observations.map(({ station }) => station)).toEqual(['HKJK', 'HRYR', 'HUEN'])
    expect(file.observations[1]?.between).toEqual({ fromDeg: 150, toDeg: 210 })
  })

  it('dates the 30th before the 1st when a bulletin crosses the end of a month', () => {
    const file = read('iem__METAR-first.txt', { nearDate: '2015-07-01' })
    expect(file.observations.map(({ station, atMs }) => [station, new Date(atMs).toISOString()])).toEqual([
      ['KALO', '2015-07-01T00:01:00.000Z'],
      ['KSPS', '2015-06-30T23:52:00.000Z'],
    ])
    expect(file.observations[0]?.peak?.atMs).toBe(Date.UTC(2015, 5, 30, 20, 25))
  })

  it('proves mph and local standard time of climatological data, version 1', () => {
    const file = read('lcd-v1-KATL-2020-a.csv', { unit: 'mph', timeBasis: eastern })
    expect(file.provenUnit).toBe('mph')
    expect(file.provenTimeBasis).toEqual(eastern)
    expect(file.proofs.join(' ')).toContain('1.150')
    expect(file.cautions.filter((words) => words.startsWith('You chose'))).toEqual([])
    const top = highestGust(file, 'mph')
    expect(top.value).toBeCloseTo(39, 6)
    expect(top.at).toBe('2020-01-05T00:52:00.000Z')
    expect(file.observations.filter(({ gustKt }) => gustKt !== null).length + file.merged).toBeGreaterThanOrEqual(109)
    const [day] = file.dailyPeaks.toSorted((a, b) => b.kt - a.kt)
    expect(fromKnots(day?.kt ?? 0, 'mph')).toBeCloseTo(42, 6)
    expect([day?.date, day?.fromDeg]).toEqual(['2020-01-04', 310])
  })

  it('proves m/s of version 2, which has the same column names', () => {
    const file = read('lcd-v2-KLNK-a.csv', { unit: 'm/s', timeBasis: central })
    expect(file.provenUnit).toBe('m/s')
    expect(file.provenTimeBasis).toEqual(central)
    expect(file.stations[0]?.position).toEqual({ latDeg: 40.8508, lonDeg: -96.7475 })
    const top = highestGust(file, 'm/s')
    expect(top.value).toBeCloseTo(18, 6)
    expect(top.at).toBe('2023-01-12T08:54:00.000Z')
  })

  it('warns when the wrong unit or time is chosen for climatological data', () => {
    const file = read('lcd-v2-KLNK-a.csv', { unit: 'mph', timeBasis: { kind: 'utc' } })
    expect(file.cautions).toContain("You chose mph, but the file's own figures say m/s.")
    expect(file.cautions).toContain("The chosen time is not the one that the file's own reports prove.")
  })

  it('reads integrated surface data as a table, without a place that is none', () => {
    const file = read('isd-csv-WXPOD7026-2017-02-12.csv')
    expect(file.kind).toBe('isd-table')
    expect(file.stations[0]?.position).toBeNull()
    expect(file.observations.length + file.merged + file.problems.length).toBe(517)
    const top = highestGust(file, 'm/s')
    expect(top.value).toBeCloseTo(12.4, 6)
    expect(top.at).toBe('2017-02-13T07:39:00.000Z')
  })

  it('reads integrated surface data in fixed columns', () => {
    const file = read('isd-fixed-ENJA-19880101.txt')
    expect(file.kind).toBe('isd-lines')
    expect(file.observations).toHaveLength(56)
    expect(file.observations.filter(({ meanKt }) => meanKt === null)).toHaveLength(1)
    const [top] = file.observations.toSorted((a, b) => (b.meanKt ?? 0) - (a.meanKt ?? 0))
    expect(fromKnots(top?.meanKt ?? 0, 'm/s')).toBeCloseTo(23.6, 6)
    expect([top?.fromDeg, new Date(top?.atMs ?? 0).toISOString()]).toEqual([330, '1988-01-02T21:00:00.000Z'])
    expect(file.stations[0]?.position).toEqual({ latDeg: 70.933, lonDeg: -8.667 })
    expect(read('isd-fixed-024130-2016.txt').observations.length).toBeGreaterThan(300)
  })

  it('refuses bulletins that hold no observation of a station', () => {
    expect(read('iem__LSR-LSRTAE.txt').kind).toBe('storm-reports')
    expect(read('iem__TCPAT1.txt').lacks).not.toEqual([])
    expect(read('iem__CLI-CLIMBS.txt').lacks).not.toEqual([])
  })
})

function rounded(kt: number | null): number | null {
  return kt === null ? null : Math.round(kt * 10) / 10
}
