import { describe, expect, it } from 'vitest'
import { shownTime } from './shown-time.ts'

const at = (time: string, zone = 'America/New_York', date = '2026-03-14') => shownTime({ time, date, zone })

describe('what a clock in a photo shows', () => {
  it('is read with and without seconds, on 24 hours or 12', () => {
    const expected = { ok: true, atMs: Date.parse('2026-03-14T18:32:10Z') }
    for (const time of ['14:32:10', ' 2:32:10 pm', '2:32:10 p.m.', '02:32:10PM']) expect(at(time)).toEqual(expected)
    expect(at('12:05 am')).toEqual({ ok: true, atMs: Date.parse('2026-03-14T04:05:00Z') })
    expect(at('12:05 pm')).toEqual({ ok: true, atMs: Date.parse('2026-03-14T16:05:00Z') })
  })

  it('is in the zone that is chosen', () => {
    expect(at('18:32', 'UTC')).toEqual({ ok: true, atMs: Date.parse('2026-03-14T18:32:00Z') })
  })

  it.each(['', '25:00', '14:60', '13:00 pm', '0:30 am', '14', 'noon'])('can’t be "%s"', (time) => {
    expect(at(time)).toMatchObject({ ok: false })
  })

  it('needs a date of the calendar', () => {
    expect(at('14:32', 'UTC', '2026-02-30')).toMatchObject({ ok: false })
  })
})
