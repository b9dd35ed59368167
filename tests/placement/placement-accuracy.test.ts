import { describe, expect, it } from 'vitest'
import { calibrationGaps, judgedWalks, shareRight, type Condition, type Judged } from './accuracy.ts'
import { CONDITIONS, seedsFrom, TEST } from './walks.ts'

// Never used for fitting, and other houses than those that were.
const SEEDS = seedsFrom(700_001, 18)
const known = new Map<Condition, readonly Judged[]>()

/** The walks of a condition, judged once. */
function judged(condition: Condition): readonly Judged[] {
  const found = known.get(condition) ?? judgedWalks(condition, TEST, SEEDS)
  known.set(condition, found)
  return found
}

describe('suggested facets on simulated walks over houses of ten facets', () => {
  it('are right first time for 7 in 10 photos without any position, from narration and sequence', () => {
    expect(shareRight(judged(CONDITIONS.spoken))).toBeGreaterThanOrEqual(0.7)
  })

  it('are hardly worse for a systematic offset of 6 m, once 12 photos are confirmed', () => {
    expect(shareRight(judged(CONDITIONS.offset))).toBeGreaterThanOrEqual(shareRight(judged(CONDITIONS.learned)) - 0.03)
    expect(shareRight(judged(CONDITIONS.offset))).toBeGreaterThan(shareRight(judged(CONDITIONS.unconfirmed)) + 0.03)
  })

  it('are right first time for 7 in 10 photos with positions 5 m off', () => {
    expect(shareRight(judged(CONDITIONS.learned))).toBeGreaterThanOrEqual(0.7)
    expect(shareRight(judged(CONDITIONS.fresh))).toBeGreaterThanOrEqual(0.75)
  })

  // What the project asks for and the method does not reach yet. A test that begins to fail here has become a success.
  it.fails('are right first time for 85 % with positions 5 m off', () => {
    expect(shareRight(judged(CONDITIONS.learned))).toBeGreaterThanOrEqual(0.85)
  })
  it.fails('are right first time for 80 % after a systematic offset of 6 m', () => {
    expect(shareRight(judged(CONDITIONS.offset))).toBeGreaterThanOrEqual(0.8)
  })

  it('are as sure as they are right, within 10 points on the mean', () => {
    for (const condition of [CONDITIONS.learned, CONDITIONS.fresh, CONDITIONS.offset, CONDITIONS.spoken]) {
      expect(calibrationGaps(judged(condition), 60).mean).toBeLessThanOrEqual(10)
    }
  })
})
