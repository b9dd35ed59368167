import { describe, expect, it } from 'vitest'
import { rateWords } from './task-words.ts'

describe('rateWords', () => {
  it('says how many a second, or a minute when slow', () => {
    expect(rateWords({ done: 20, total: 120, leftMs: 8000, doing: 'Reading' })).toBe('12.5 a second')
    expect(rateWords({ done: 0, total: 2, leftMs: 12_000, doing: 'Reading' })).toBe('10 a minute')
  })

  it('says what is being done while the rate is not known', () => {
    expect(rateWords({ done: 0, total: 120, leftMs: null, doing: 'Reading the card' })).toBe('Reading the card')
  })
})
