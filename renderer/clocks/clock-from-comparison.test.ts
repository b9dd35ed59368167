import { describe, expect, it } from 'vitest'
import type { ClockComparison } from '../../app/evidence/camera.ts'
import { clockFromComparison } from './clock-from-comparison.ts'

const at = (cameraLocal: string, correctionMs: number): ClockComparison => ({
  by: 'clock-photo',
  photoId: null,
  cameraLocal,
  correctionMs,
  trueWords: '2026-03-14 14:32:10, UTC',
})
const uncorrected = { correctionMs: 0, why: '' }

describe('a clock after a comparison', () => {
  it('is off by what was found, with the reason that speaks for itself', () => {
    const found = at('2026-03-14T09:00:00', 420_000)
    expect(clockFromComparison(uncorrected, found, { together: true, why: ' ' })).toEqual({
      correctionMs: 420_000,
      why: 'Photo of a clock that showed 2026-03-14 14:32:10, UTC',
      comparisons: [found],
    })
  })

  it('runs in a line with the comparison made before, the earlier first', () => {
    const late = at('2026-03-14T15:00:00', 424_000)
    const early = at('2026-03-14T09:00:00', 420_000)
    const before = clockFromComparison(uncorrected, late, { together: true, why: '' })
    const after = clockFromComparison(before, early, { together: true, why: 'start and end' })
    expect(after).toEqual({ correctionMs: 420_000, why: 'start and end', comparisons: [early, late] })
    expect(clockFromComparison(before, early, { together: false, why: '' }).comparisons).toEqual([early])
  })

  it('makes no line of two comparisons at one moment', () => {
    const one = clockFromComparison(uncorrected, at('2026-03-14T09:00:00', 1000), { together: true, why: '' })
    const again = at('2026-03-14T09:00:00', 2000)
    expect(clockFromComparison(one, again, { together: true, why: '' }).comparisons).toEqual([again])
  })
})
