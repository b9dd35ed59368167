import { describe, expect, it } from 'vitest'
import { readMetar } from './metar-report.ts'
import { peakInstant, reportInstant } from './metar-time.ts'
import { fromKnots } from './speed.ts'

function wind(groups: string) {
  const read = readMetar(`KXYZ 081353Z ${groups}`)
  if (read.kind === 'refused') throw new Error(read.sentence)
  return read
}

const mph = (kt: number | null) => (kt === null ? null : Number(fromKnots(kt, 'mph').toFixed(2)))

describe('wind groups of a METAR', () => {
  // FAA AIM, section on METAR, and a US Navy manual for 27025G40KT; mph computed from 1 kt = 1852 m/h and 1 mi = 1609.344 m.
  it.each([
    ['13008KT', 130, 9.21, null],
    ['08032G45KT', 80, 36.82, 51.79],
    ['VRB04KT', null, 4.6, null],
    ['00000KT', null, 0, null],
    ['210103G130KT', 210, 118.53, 149.6],
    ['32012G22KT 280V350', 320, 13.81, 25.32],
    ['27025G40KT', 270, 28.77, 46.03],
  ])('%s', (text, ...expected) => {
    const read = wind(text)
    expect([read.fromDeg, mph(read.meanKt), mph(read.gustKt)]).toEqual(expected)
  })

  it('keeps the range that a varying direction has', () => {
    expect(wind('32012G22KT 280V350').between).toEqual({ fromDeg: 280, toDeg: 350 })
  })

  it('reads peak winds with and without the hour (FAA AIM)', () => {
    expect(wind('27010KT RMK AO2 PK WND 28045/1955').peak).toEqual({ fromDeg: 280, kt: 45, hour: 19, minute: 55 })
    expect(wind('27010KT RMK AO2 PK WND 34050/38').peak).toEqual({ fromDeg: 340, kt: 50, hour: null, minute: 38 })
  })

  it('marks a speed above the range of the report, and does not use one without a unit', () => {
    expect(wind('240P99KT').meanKt).toBe(99)
    expect(wind('240P99KT').doubts).toEqual(['above-range'])
    expect(wind('26026G40 240V300')).toMatchObject({ fromDeg: 260, meanKt: null, gustKt: null, doubts: ['no-unit'] })
  })

  it('takes no wind from a trend that was expected only', () => {
    expect(wind('23012KT 9999 TEMPO 26015G45KT').gustKt).toBeNull()
  })

  it.each([
    ['TAF KXYZ 081130Z 0812/0912 13018G28KT', 'This is a forecast (TAF), not an observation.'],
    ['KXYZ 081353Z NIL', 'KXYZ sent no report for this time (NIL).'],
    ['KXYZ 081353Z 10SM CLR', 'The report of KXYZ has no wind group.'],
    ['KXYZ 321353Z 10010KT', '"321353Z" is not a day and time in UTC such as 081353Z.'],
  ])('refuses %s', (text, sentence) => {
    expect(readMetar(text)).toEqual({ kind: 'refused', sentence })
  })
})

describe('when a report was made', () => {
  const iso = (ms: number) => new Date(ms).toISOString().slice(0, 16)

  it('is the day nearest to the date given, over the ends of months and years', () => {
    const at = { day: 31, hour: 23, minute: 54 }
    expect(iso(reportInstant(at, '2026-11-04'))).toBe('2026-10-31T23:54')
    expect(iso(reportInstant(at, '2027-01-02'))).toBe('2026-12-31T23:54')
    expect(iso(reportInstant({ day: 1, hour: 0, minute: 5 }, '2026-12-31'))).toBe('2027-01-01T00:05')
    expect(iso(reportInstant({ day: 30, hour: 6, minute: 0 }, '2027-02-10'))).toBe('2027-01-30T06:00')
  })

  it('puts the minutes of a peak in the hour before when they are not reached yet', () => {
    const report = Date.UTC(2026, 10, 5, 0, 12)
    expect(iso(peakInstant({ hour: null, minute: 38 }, report))).toBe('2026-11-04T23:38')
    expect(iso(peakInstant({ hour: 23, minute: 58 }, report))).toBe('2026-11-04T23:58')
    expect(iso(peakInstant({ hour: 0, minute: 4 }, report))).toBe('2026-11-05T00:04')
  })
})
