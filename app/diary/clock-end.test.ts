import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { shippedRules } from '../rules/shipped-rules.ts'
import { clockEnd, type HolidayOn } from './clock-end.ts'
import { readClock } from './clock-reading.ts'

const noHoliday: HolidayOn = () => null
const holidays =
  (days: Readonly<Record<string, string>>): HolidayOn =>
  (date) =>
    days[date] ?? null

function clockRule(key: string) {
  const found = shippedRules.find((rule) => rule.key === key)
  if (found?.kind !== 'clock') throw new Error(`There is no clock ${key}.`)
  return found
}
const counted = (key: string, start: { date: string; time?: string; timeZone?: string }, holidayOn = noHoliday) =>
  clockEnd(clockRule(key).data, { time: null, timeZone: 'America/New_York', ...start }, holidayOn)

// Ends were counted by hand on a wall calendar, from the days that each row's source names.
describe('months and years (F.S. 627.70132(2): one year, 18 months from the date of loss)', () => {
  it.each([
    ['fl-notice', '2023-03-10', '2024-03-10'],
    // 29 February has no counterpart in 2025: the earlier reading, 28 February.
    ['fl-notice', '2024-02-29', '2025-02-28'],
    ['fl-old-notice', '2022-02-28', '2024-02-28'],
    ['fl-supplement', '2024-08-31', '2026-02-28'],
    ['fl-supplement', '2024-09-26', '2026-03-26'],
  ])('%s from %s runs to %s', (key, date, end) => {
    expect(counted(key, { date })).toMatchObject({ kind: 'day', date: end })
  })

  it('says which reading is taken where the month is shorter', () => {
    expect(counted('fl-notice', { date: '2024-02-29' })).toMatchObject({
      working: expect.arrayContaining([
        'February 2025 has no day 29; its last day is taken, the earlier of two readings.',
      ]),
    })
  })
})

describe('calendar days', () => {
  it.each([
    // F.S. 627.70131(3)(b): 30 days; October has 31.
    ['fl-inspect', '2026-10-15', '2026-11-14'],
    // La. R.S. 22:1892(A)(3): 14 days, across the leap day of 2028.
    ['la-start', '2028-02-20', '2028-03-05'],
  ])('%s from %s runs to %s', (key, date, end) => {
    expect(counted(key, { date })).toMatchObject({ kind: 'day', date: end })
  })

  it('names a last day on a weekend and does not move it', () => {
    // 14 November 2026 is a Saturday.
    expect(counted('fl-inspect', { date: '2026-10-15' })).toMatchObject({
      date: '2026-11-14',
      working: ['October 15, 2026 itself is not counted.', expect.stringContaining('a Saturday')],
    })
  })
})

describe('business days', () => {
  it('leave out Thanksgiving and the day after in Texas (Tex. Ins. Code 542.056: 15 business days)', () => {
    // From Friday 13 November 2026: 16 to 20 is 5, 23 to 25 is 8, 30 is 9, 1 to 4 December is 13, 7 and 8 make 15.
    const texas = holidays({ '2026-11-26': 'Thanksgiving Day', '2026-11-27': 'Day after Thanksgiving' })
    expect(counted('tx-decide', { date: '2026-11-13' }, texas)).toEqual({
      kind: 'day',
      date: '2026-12-08',
      working: [
        'November 13, 2026 itself is not counted.',
        'Saturdays and Sundays are left out.',
        'Left out as holidays: November 26, 2026 (Thanksgiving Day), November 27, 2026 (Day after Thanksgiving).',
      ],
    })
  })

  it('end two days earlier without the holidays', () => {
    expect(counted('tx-decide', { date: '2026-11-13' })).toMatchObject({ date: '2026-12-04' })
  })

  it('are, counted back from the end, as many as were asked for, and the end is one of them', () => {
    const day = fc.date({ min: new Date('2000-01-01'), max: new Date('2080-12-31'), noInvalidDate: true })
    const off = (date: string) => (Number(date.slice(8)) % 9 === 0 ? 'every ninth' : null)
    fc.assert(
      fc.property(day, fc.integer({ min: 1, max: 60 }), (from, count) => {
        const date = from.toISOString().slice(0, 10)
        const end = clockEnd({ trigger: 'x', count, unit: 'business-days' }, { date, time: null, timeZone: 'UTC' }, off)
        if (end.kind !== 'day') throw new Error('A day was expected.')
        const days: string[] = []
        for (let ms = Date.parse(date) + 86_400_000; ms <= Date.parse(end.date); ms += 86_400_000)
          days.push(new Date(ms).toISOString().slice(0, 10))
        const business = days.filter((one) => ![0, 6].includes(new Date(one).getUTCDay()) && off(one) === null)
        expect(business.length).toBe(count)
        expect(business.at(-1)).toBe(end.date)
      }),
    )
  })
})

describe('hours (C.R.S. 6-22-104: 72 hours)', () => {
  // IANA zone data: Denver goes from -07:00 to -06:00 on 8 March 2026 and back on 1 November 2026, each at 02:00.
  it.each([
    ['2026-06-02', '10:00', Date.UTC(2026, 5, 5, 16)],
    ['2026-03-06', '10:00', Date.UTC(2026, 2, 9, 17)],
    ['2026-10-30', '10:00', Date.UTC(2026, 10, 2, 16)],
  ])('from %s %s elapse whole, also over a change of clocks', (date, time, atMs) => {
    expect(counted('co-rescind', { date, time, timeZone: 'America/Denver' })).toMatchObject({ kind: 'instant', atMs })
  })

  it('stand at another time of day after a change of clocks, and say so', () => {
    const end = counted('co-rescind', { date: '2026-10-30', time: '10:00', timeZone: 'America/Denver' })
    expect(end).toMatchObject({
      words: 'November 2, 2026, 09:00:00 -07:00 (America/Denver)',
      working: [expect.stringContaining('72 hours elapse'), expect.stringContaining('clocks change in between')],
    })
  })

  it('are not counted from a day alone', () => {
    expect(counted('co-rescind', { date: '2026-10-30' })).toEqual({ kind: 'needs-time' })
  })
})

describe('a clock in words', () => {
  const readings = shippedRules.flatMap((rule) =>
    rule.kind === 'clock'
      ? [
          readClock(
            rule,
            {
              id: 'a',
              ruleKey: rule.key,
              start: { date: '2026-03-10', time: '09:00', timeZone: 'America/Denver' },
              note: '',
            },
            noHoliday,
          ),
        ]
      : [],
  )

  it('always begins with the condition, and always has caution, source, status and date with it', () => {
    expect(readings.length).toBeGreaterThan(20)
    for (const { sentence, cautions, basis } of readings) {
      expect(sentence).toMatch(/^If this statute applies: /)
      expect(cautions[0]).toContain('General information, not legal advice')
      expect(basis).toMatch(/Status: .+; as of November 25, 2026\.$/)
    }
  })

  it('never says that anybody is late, in default or owes something', () => {
    const words = readings.map((reading) => JSON.stringify(reading)).join('\n')
    expect(words).not.toMatch(/\b(late|overdue|expired|missed|owes?|owed|must pay|in default|bad faith)\b/i)
  })

  it('says which days count as business days, and that the law may see it in another way', () => {
    const texas = readings.find(({ asked }) => asked.ruleKey === 'tx-decide')
    expect(texas?.cautions.at(-1)).toMatch(
      /Monday to Friday.*date-holidays has for US-TX.*may define them in another way/,
    )
  })

  it('says so when the day lies before the rule', () => {
    const rule = clockRule('fl-cancel')
    const start = { date: '2024-06-30', time: null, timeZone: 'America/New_York' }
    const { cautions } = readClock(rule, { id: 'a', ruleKey: rule.key, start, note: '' }, noHoliday)
    expect(cautions.at(-1)).toBe('The rule as it was seen holds from July 1, 2024; the day given lies outside of that.')
  })
})
