import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { calendarDateSchema, timeZoneSchema } from './calendar.ts'

const isDate = (text: string) => calendarDateSchema.safeParse(text).success
const isZone = (name: string) => timeZoneSchema.safeParse(name).success

describe('a calendar date', () => {
  it.each(['2026-03-14', '2028-02-29', '2000-02-29', '2026-04-30', '2026-12-31', '1900-01-01'])('%s is one', (text) => {
    expect(calendarDateSchema.parse(text)).toBe(text)
  })

  it.each([
    // Leap years by the Gregorian rule: 2026, 1900 and 2100 are none.
    '2026-02-29',
    '1900-02-29',
    '2100-02-29',
    '2026-02-30',
    '2026-04-31',
    '2026-13-01',
    '2026-00-10',
    '2026-01-00',
    '2026-3-14',
    '14.03.2026',
    '2026-03-14T00:00',
    '+002026-03-14',
    '20260314',
    '',
    ' 2026-03-14',
  ])('%j is none', (text) => {
    expect(isDate(text)).toBe(false)
  })

  it('agrees with the JavaScript calendar on any year, month and day', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1000, max: 9999 }), fc.nat(13), fc.nat(32), (year, month, day) => {
        const text = `${year}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`
        const made = new Date(Date.UTC(year, month - 1, day))
        expect(isDate(text)).toBe(made.getUTCMonth() === month - 1 && made.getUTCDate() === day)
      }),
    )
  })

  it('says how to write one', () => {
    expect(calendarDateSchema.safeParse('30 Feb').error?.issues[0]?.message).toBe(
      'This is not a date in the calendar. Write it as year-month-day, for example 2026-03-14.',
    )
  })
})

describe('a time zone (names of the IANA time zone database)', () => {
  it.each([
    'America/New_York',
    'America/Argentina/Buenos_Aires',
    'America/Port-au-Prince',
    'Etc/GMT+5',
    'UTC',
    'EST5EDT',
    'PST8PDT',
  ])('%s is known', (name) => {
    expect(isZone(name)).toBe(true)
  })

  it.each([
    'Mars/Olympus',
    'New York',
    '+02:00',
    '-05:00',
    'Z',
    '',
    'America/',
    '/America',
    'America/New_York[u-ca=iso8601]',
  ])('%j is not', (name) => {
    expect(isZone(name)).toBe(false)
  })

  it('is known wherever the machine itself knows it', () => {
    expect(Intl.supportedValuesOf('timeZone').filter((name) => !isZone(name))).toEqual([])
  })
})
