import { describe, expect, it } from 'vitest'
import { areaFigure, squaresFigure } from './areas.ts'
import { directionWords } from './directions.ts'
import { bytesFigure, shortHash } from './files.ts'
import { feetInches } from './lengths.ts'
import { correctionWords, dateWords, instantWords, offsetWords, photoClockWords, photoTimeWords } from './times.ts'

describe('times', () => {
  const at = Date.UTC(2026, 2, 14, 18, 32, 7)

  it('give local time, offset and what the offset rests on', () => {
    const time = { basis: 'camera-offset', offsetMinutes: -240, correctionMs: 0, instantMs: at } as const
    expect(photoTimeWords(time)).toBe('March 14, 2026, 14:32:07 -04:00 (offset written by the camera)')
    expect(photoTimeWords({ ...time, basis: 'place-zone' })).toMatch(/\(time zone of the place\)$/)
    expect(photoClockWords(time)).toBe('14:32:07 -04:00')
  })

  it('say when they are not known', () => {
    const time = { basis: 'unknown', offsetMinutes: null, correctionMs: 0, instantMs: null } as const
    expect(photoTimeWords(time)).toBe('time not known')
    expect(photoClockWords(time)).toBe('-')
  })

  it('follow daylight saving of the zone (IANA zone data: New York moved to -04:00 on March 8, 2026)', () => {
    expect(instantWords(Date.UTC(2026, 2, 8, 6, 59, 59), 'America/New_York')).toBe('March 8, 2026, 01:59:59 -05:00')
    expect(instantWords(Date.UTC(2026, 2, 8, 7, 0, 0), 'America/New_York')).toBe('March 8, 2026, 03:00:00 -04:00')
  })

  it.each([
    [-240, '-04:00'],
    [330, '+05:30'],
    [0, '+00:00'],
    [-210, '-03:30'],
  ])('an offset of %i minutes is %s', (minutes, words) => {
    expect(offsetWords(minutes)).toBe(words)
  })

  it.each([
    [3_612_000, '+1 h 00 min 12 s'],
    [-3000, '-3 s'],
    [90_000, '+1 min 30 s'],
    [-86_400_000, '-1 day 0 h 00 min 00 s'],
  ])('a correction of %i ms is %s', (ms, words) => {
    expect(correctionWords(ms)).toBe(words)
  })

  it('give calendar dates in words', () => {
    expect(dateWords('2026-03-04')).toBe('March 4, 2026')
  })
})

describe('figures', () => {
  it.each([
    [14.5, '14 ft 6 in'],
    [11.99, '12 ft 0 in'],
    [0.04, '0 ft 0 in'],
    [100, '100 ft 0 in'],
  ])('%f ft is %s', (ft, words) => {
    expect(feetInches(ft)).toBe(words)
  })

  it('give areas to a square foot and squares to a hundredth', () => {
    expect(areaFigure(1240.4)).toBe('1,240')
    expect(squaresFigure(12.4)).toBe('12.40')
    expect(squaresFigure(6.4999)).toBe('6.50')
  })

  it('name the nearest of eight winds', () => {
    expect(directionWords(135)).toBe('south-east (135°)')
    expect(directionWords(359.7)).toBe('north (0°)')
    expect(directionWords(338)).toBe('north (338°)')
    expect(directionWords(337)).toBe('north-west (337°)')
  })

  it('shorten a digest to its first 12 digits', () => {
    expect(shortHash('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad')).toBe('ba7816bf8f01')
    expect(bytesFigure(4_000_123)).toBe('4,000,123')
  })
})
