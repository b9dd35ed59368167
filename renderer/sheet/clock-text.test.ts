import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { clockText, readClock } from './clock-text.ts'

const MINUTE = 60_000
const HOUR = 60 * MINUTE
const DAY = 24 * HOUR

describe('readClock', () => {
  it.each([
    ['+7 min 0 s', 7 * MINUTE],
    ['7 min', 7 * MINUTE],
    ['7m', 7 * MINUTE],
    ['-1 h 2 min 3 s', -(HOUR + 2 * MINUTE + 3000)],
    ['− 1h2m', -(HOUR + 2 * MINUTE)],
    ['90 s', 90_000],
    ['1.5 h', 90 * MINUTE],
    ['+1 d 3 h', DAY + 3 * HOUR],
    ['+00:07:00', 7 * MINUTE],
    ['-12:00:00', -12 * HOUR],
    ['7:30', 7 * MINUTE + 30_000],
    ['0.25 s', 250],
    ['', 0],
    ['0', 0],
  ])('reads "%s"', (text, ms) => {
    expect(readClock(text)).toEqual({ ok: true, value: ms })
  })

  it.each(['seven', '7', '7 parsecs', '7 s 2 h', '2 h 2 h', '1:75:00', '+-7 min'])(
    'refuses "%s" and shows how to write it',
    (text) => {
      const typed = readClock(text)
      expect(typed.ok).toBe(false)
      if (!typed.ok) expect(typed.error).toContain('+7 min 0 s')
    },
  )

  it('refuses more than 40 years', () => {
    expect(readClock('+20000 d').ok).toBe(false)
    expect(readClock('+14600 d')).toEqual({ ok: true, value: 14_600 * DAY })
  })
})

describe('clockText', () => {
  it('writes corrections as people do', () => {
    expect(clockText(7 * MINUTE)).toBe('+7 min 0 s')
    expect(clockText(-(HOUR + 3000))).toBe('-1 h 0 min 3 s')
    expect(clockText(0)).toBe('')
  })

  it('is read back as the same correction', () => {
    fc.assert(
      fc.property(fc.integer({ min: -40 * 365 * DAY, max: 40 * 365 * DAY }), (ms) => {
        expect(readClock(clockText(ms))).toEqual({ ok: true, value: ms })
      }),
    )
  })
})
