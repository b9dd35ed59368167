import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { LONG_GAP_MS, stripScale } from './strip-scale.ts'

const MINUTE = 60_000
const START = Date.UTC(2026, 2, 14, 14, 0)
const at = (...minutes: number[]) => minutes.map((minute) => START + minute * MINUTE)
const whole = (instants: readonly number[], widthPx = 1000) => stripScale(instants, { widthPx, window: null })

describe('stripScale', () => {
  it('draws one stretch of work evenly from edge to edge', () => {
    const scale = whole(at(0, 10, 20, 30))
    expect(scale.breaks).toEqual([])
    expect(scale.spans).toHaveLength(1)
    const [a, b, c, d] = at(0, 10, 20, 30).map((moment) => scale.xOf(moment)) as [number, number, number, number]
    expect(b - a).toBeCloseTo(c - b, 6)
    expect(c - b).toBeCloseTo(d - c, 6)
    expect(a).toBeGreaterThan(0)
    expect(d).toBeLessThan(1000)
  })

  it('draws a gap of more than 20 minutes short, and one of exactly 20 minutes in full', () => {
    expect(whole(at(0, 20)).breaks).toEqual([])
    const scale = whole(at(0, 5, 26, 30))
    expect(scale.breaks).toHaveLength(1)
    const [gap] = scale.breaks
    expect((gap?.toX ?? 0) - (gap?.fromX ?? 0)).toBe(30)
    // 21 minutes, less the air of 20 seconds on either side.
    expect(gap?.gapMs).toBe(21 * MINUTE - 40_000)
  })

  it('gives an overnight gap no more room than a lunch break', () => {
    const scale = whole(at(0, 15, 30, 75, 90, 24 * 60, 24 * 60 + 15))
    const widths = scale.breaks.map((gap) => Math.round(gap.toX - gap.fromX))
    expect(widths).toEqual([30, 30])
  })

  it('zooms to a window, and breaks inside it only', () => {
    const scale = stripScale(at(0, 30, 60, 70), {
      widthPx: 1000,
      window: { fromMs: START + 58 * MINUTE, toMs: START + 72 * MINUTE },
    })
    expect(scale.breaks).toEqual([])
    expect(scale.xOf(START + 58 * MINUTE)).toBe(0)
    expect(scale.xOf(START + 72 * MINUTE)).toBe(1000)
    expect(scale.xOf(START)).toBe(0)
  })

  it('keeps a lone photo wide enough to hit beside an hour of others', () => {
    const scale = whole([...at(...Array.from({ length: 60 }, (_, minute) => minute)), ...at(600)])
    const lone = scale.spans.at(-1)
    expect((lone?.toX ?? 0) - (lone?.fromX ?? 0)).toBeGreaterThanOrEqual(18)
  })

  it('has nothing to show without instants', () => {
    const scale = whole([])
    expect(scale.spans).toEqual([])
    expect(scale.xOf(START)).toBe(0)
  })

  it('never changes the order of moments, stays on the strip, and leads back from place to time', () => {
    const moments = fc.array(fc.integer({ min: START, max: START + 3 * 24 * 60 * MINUTE }), {
      minLength: 1,
      maxLength: 60,
    })
    fc.assert(
      fc.property(moments, fc.integer({ min: 200, max: 3000 }), (instants, widthPx) => {
        const scale = whole(instants, widthPx)
        const sorted = instants.toSorted((a, b) => a - b)
        const places = sorted.map((moment) => scale.xOf(moment))
        for (const [index, x] of places.entries()) {
          expect(x).toBeGreaterThanOrEqual((places[index - 1] ?? 0) - 1e-6)
          expect(x).toBeLessThanOrEqual(widthPx + 1e-6)
          const back = scale.instantOf(x)
          expect(Math.abs(back - (sorted[index] ?? 0))).toBeLessThan(2)
        }
        const gaps = sorted.slice(1).filter((moment, index) => moment - (sorted[index] ?? 0) > LONG_GAP_MS)
        expect(scale.breaks).toHaveLength(gaps.length)
      }),
    )
  })
})
