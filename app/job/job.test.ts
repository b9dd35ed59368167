import { describe, expect, it } from 'vitest'
import { jobIdSchema } from './ids.ts'
import { jobNumberSchema } from './job.ts'
import { azimuthDegSchema, geoPointSchema, planFrameSchema, planPointSchema } from './places.ts'
import { emptyJobSheet, jobSheetSchema } from './sheet.ts'

describe('a job number', () => {
  it.each(['2026-0001', '7', 'Smith 12_b', 'A.1', 'Żółw-3', '٢٠٢٦-١', '屋根 4'])('can be %s', (number) => {
    expect(jobNumberSchema.parse(number)).toBe(number)
  })

  it('loses spaces round it, and is the same however an accented letter was typed', () => {
    expect(jobNumberSchema.parse('  2026-1 ')).toBe('2026-1')
    expect(jobNumberSchema.parse('Caf\u0065\u0301-1')).toBe('Caf\u00e9-1')
  })

  it.each([
    ['', 'A job number is needed.'],
    ['   ', 'A job number is needed.'],
    ['x'.repeat(41), 'A job number has at most 40 characters.'],
    ['-1', 'A job number starts with a letter or digit'],
    ['../up', 'A job number starts with a letter or digit'],
    ['2026/1', 'A job number starts with a letter or digit'],
    ['2026\\1', 'A job number starts with a letter or digit'],
    ['2026\n1', 'A job number starts with a letter or digit'],
    ['.hidden', 'A job number starts with a letter or digit'],
  ])('cannot be %j, and the reason is said', (number, reason) => {
    expect(jobNumberSchema.safeParse(number).error?.issues[0]?.message).toContain(reason)
  })
})

describe('an identity', () => {
  it('is short and safe in a path or an address', () => {
    expect(jobIdSchema.parse('0b9f-A_1')).toBe('0b9f-A_1')
    for (const text of ['', 'a b', '../x', 'a/b', 'x'.repeat(65), 'é'])
      expect(jobIdSchema.safeParse(text).success).toBe(false)
  })
})

describe('places', () => {
  it('are finite numbers in range', () => {
    expect(geoPointSchema.safeParse({ latDeg: 90, lonDeg: -180 }).success).toBe(true)
    for (const point of [
      { latDeg: 90.1, lonDeg: 0 },
      { latDeg: 0, lonDeg: 181 },
      { latDeg: NaN, lonDeg: 0 },
      { latDeg: 0, lonDeg: Infinity },
    ])
      expect(geoPointSchema.safeParse(point).success).toBe(false)
    expect(planPointSchema.safeParse({ xFt: 10_001, yFt: 0 }).success).toBe(false)
  })

  it('have directions from 0 up to but not including 360', () => {
    expect([0, 359.99].map((deg) => azimuthDegSchema.safeParse(deg).success)).toEqual([true, true])
    expect([-0.1, 360].map((deg) => azimuthDegSchema.safeParse(deg).success)).toEqual([false, false])
  })

  it('start north-up and without an anchor', () => {
    expect(planFrameSchema.parse({})).toEqual({ upAzimuthDeg: 0, anchor: null })
  })
})

describe('a job sheet', () => {
  it('can be empty: nothing stated is not an error, and reads back as it was written', () => {
    const sheet = emptyJobSheet()
    expect(sheet.covering.class).toBe('not-stated')
    expect(sheet.loss.date).toBeNull()
    expect(jobSheetSchema.parse(JSON.parse(JSON.stringify(sheet)))).toEqual(sheet)
  })

  it('keeps what was stated beside what was not', () => {
    const sheet = jobSheetSchema.parse({ owner: { name: 'Ada Owner' }, loss: { date: '2026-03-10' } })
    expect(sheet.owner).toEqual({ name: 'Ada Owner', phone: '', email: '' })
    expect(sheet.loss).toEqual({ date: '2026-03-10', cause: 'not-stated', description: '' })
  })

  it.each([
    ['a date that is none', { loss: { date: '2026-02-30' } }],
    ['a zone that is none', { property: { timeZone: 'Mars/Olympus' } }],
    ['an exposure of nothing', { covering: { exposureIn: 0 } }],
    ['a half year', { covering: { installedYear: 1999.5 } }],
    ['a front that faces 360 degrees', { property: { frontAzimuthDeg: 360 } }],
  ])('refuses %s', (_what, sheet) => {
    expect(jobSheetSchema.safeParse(sheet).success).toBe(false)
  })
})
