import { describe, expect, it } from 'vitest'
import { bytesWords, countWords, durationWords } from './quantity-words.ts'

describe('bytesWords', () => {
  it.each([
    [0, '0 B'],
    [999, '999 B'],
    [820_400, '820 kB'],
    [4_600_000, '4.6 MB'],
    [1_200_000_000, '1.20 GB'],
  ])('says %i bytes as %s', (bytes, words) => {
    expect(bytesWords(bytes)).toBe(words)
  })
})

describe('durationWords', () => {
  it.each([
    [400, '0 s'],
    [45_000, '45 s'],
    [120_000, '2 min'],
    [130_000, '2 min 10 s'],
    [11_100_000, '3 h 5 min'],
    [187_200_000, '2 d 4 h'],
  ])('says %i ms as %s', (ms, words) => {
    expect(durationWords(ms)).toBe(words)
  })
})

describe('countWords', () => {
  it('counts one and many', () => {
    expect(countWords(1, 'photo')).toBe('1 photo')
    expect(countWords(12_500, 'photo')).toBe('12,500 photos')
    expect(countWords(2, 'entry', 'entries')).toBe('2 entries')
  })
})
