import { describe, expect, it } from 'vitest'
import { calibrationGaps, judgedWalks, shareRight, type Condition, type Judged } from './accuracy.ts'
import { CONDITIONS, seedsFrom, TEST } from './walks.ts'

// Never used for fitting, and other houses than those that were.
const SEEDS = seedsFrom(700_001, 12)
const known = new Map<Condition, readonly Judged[]>()

/** The walks of a condition, judged once. */
function judged(condition: Condition): readonly Judged[] {
  const found = known.get(condition) ?? judgedWalks(condition, TEST, SEEDS)
  known.set(condition, found)
  return found
}
describe('suggested facets on simulated walks over houses of ten facets', () => {
  it('are right first time for 17 in 20 photos with positions 5 m off, once the 12 photos asked for are placed', () => {
    expect(shareRight(judged(CONDITIONS.learned))).toBeGreaterThanOrEqual(0.85)
  })

  it('are right first time for 4 in 5 photos after a systematic offset of 6 m, once 12 are placed', () => {
    expect(shareRight(judged(CONDITIONS.offset))).toBeGreaterThanOrEqual(0.8)
  })

  it('are hardly worse for that offset than without it', () => {
    expect(shareRight(judged(CONDITIONS.offset))).toBeGreaterThanOrEqual(shareRight(judged(CONDITIONS.learned)) - 0.03)
    expect(shareRight(judged(CONDITIONS.offset))).toBeGreaterThan(shareRight(judged(CONDITIONS.unconfirmed)) + 0.1)
  })

  it('are right first time for 7 in 10 photos without any position, from narration and sequence', () => {
    expect(shareRight(judged(CONDITIONS.spoken))).toBeGreaterThanOrEqual(0.7)
  })

  it('gain more from 12 photos that were asked for than from 12 drawn by chance, which serve 3 photos in 4', () => {
    const byChance = shareRight(judged(CONDITIONS.learnedByChance))
    expect(shareRight(judged(CONDITIONS.learned))).toBeGreaterThan(byChance + 0.03)
    expect(byChance).toBeGreaterThanOrEqual(0.75)
  })

  it('are right first time for 3 photos in 4 of a sparse walk', () => {
    expect(shareRight(judged(CONDITIONS.sparse))).toBeGreaterThanOrEqual(0.75)
  })

  it('are as sure as they are right, within 10 points on the mean', () => {
    const { learned, offset, spoken, sparse } = CONDITIONS
    for (const condition of [learned, offset, spoken, sparse]) {
      expect(calibrationGaps(judged(condition), 50).mean).toBeLessThanOrEqual(10)
    }
  })
})
