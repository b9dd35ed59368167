import { describe, expect, it } from 'vitest'
import { changedWords } from './changed-words.ts'

/** On this machine's own clock, as the words are. */
const local = (...parts: [number, number, number, number, number]) => new Date(...parts).getTime()

describe('changedWords', () => {
  const now = local(2026, 2, 14, 18, 0)
  it.each([
    [local(2026, 2, 14, 9, 5), 'today 09:05'],
    [local(2026, 2, 12, 9, 20), '12 Mar 09:20'],
    [local(2025, 10, 4, 23, 59), '4 Nov 2025'],
  ])('says %i as %s', (at, words) => {
    expect(changedWords(at, now)).toBe(words)
  })
})
