import { describe, expect, it } from 'vitest'
import { hipFactorPerPlanFoot, hipFactorPerRunFoot, pitchLabel, slopeFactor } from './slope.ts'

/**
 * x:12, slope factor, hip factor per foot of run, hip factor per foot of its own plan length.
 * Source: general construction-handbook slope tables, whose rule is S = sqrt(1 + p^2), H = sqrt(2 + p^2), H' = H / sqrt(2);
 * the handbooks print three decimals, these rows are the same rule carried to five.
 */
const handbook = [
  { rise: 2, s: 1.01379, perRun: 1.424, perPlan: 1.00692 },
  { rise: 3, s: 1.03078, perRun: 1.43614, perPlan: 1.0155 },
  { rise: 4, s: 1.05409, perRun: 1.45297, perPlan: 1.0274 },
  { rise: 5, s: 1.08333, perRun: 1.47432, perPlan: 1.0425 },
  { rise: 6, s: 1.11803, perRun: 1.5, perPlan: 1.06066 },
  { rise: 7, s: 1.1577, perRun: 1.5298, perPlan: 1.08173 },
  { rise: 8, s: 1.20185, perRun: 1.56347, perPlan: 1.10554 },
  { rise: 9, s: 1.25, perRun: 1.60078, perPlan: 1.13192 },
  { rise: 10, s: 1.30171, perRun: 1.64148, perPlan: 1.1607 },
  { rise: 11, s: 1.35657, perRun: 1.68531, perPlan: 1.1917 },
  { rise: 12, s: 1.41421, perRun: 1.73205, perPlan: 1.22474 },
  { rise: 13, s: 1.47432, perRun: 1.78146, perPlan: 1.25968 },
  { rise: 14, s: 1.53659, perRun: 1.83333, perPlan: 1.29636 },
  { rise: 15, s: 1.60078, perRun: 1.88746, perPlan: 1.33463 },
  { rise: 16, s: 1.66667, perRun: 1.94365, perPlan: 1.37437 },
  { rise: 17, s: 1.73405, perRun: 2.00174, perPlan: 1.41544 },
  { rise: 18, s: 1.80278, perRun: 2.06155, perPlan: 1.45774 },
]

describe('the handbook table of slope factors', () => {
  it.each(handbook)('$rise:12 has S $s, H $perRun per foot of run and $perPlan per foot of plan', (row) => {
    const { rise, s, perRun, perPlan } = row
    expect(slopeFactor(rise)).toBeCloseTo(s, 5)
    expect(hipFactorPerRunFoot(rise)).toBeCloseTo(perRun, 5)
    expect(hipFactorPerPlanFoot(rise)).toBeCloseTo(perPlan, 5)
  })

  it('is what handbooks print to three decimals: 4:12 is 1.054 and 1.453, 6:12 is 1.118', () => {
    expect(slopeFactor(4).toFixed(3)).toBe('1.054')
    expect(hipFactorPerRunFoot(4).toFixed(3)).toBe('1.453')
    expect(slopeFactor(6).toFixed(3)).toBe('1.118')
  })

  it('multiplies different lengths by its two hip factors: they differ by the square root of two (geometry)', () => {
    for (const { rise } of handbook)
      expect(hipFactorPerRunFoot(rise) / hipFactorPerPlanFoot(rise)).toBeCloseTo(Math.SQRT2, 12)
  })

  it('holds at 0:12, where nothing slopes: S is 1, H is the square root of two (geometry)', () => {
    expect(slopeFactor(0)).toBe(1)
    expect(hipFactorPerRunFoot(0)).toBeCloseTo(1.41421, 5)
    expect(hipFactorPerPlanFoot(0)).toBeCloseTo(1, 12)
  })

  it('gives the area change that a pitch read wrongly by one brings: +3.55 % and -3.10 % at 6:12 (geometry)', () => {
    expect(slopeFactor(7) / slopeFactor(6)).toBeCloseTo(1.0355, 4)
    expect(slopeFactor(5) / slopeFactor(6)).toBeCloseTo(0.969, 4)
  })
})

describe('a pitch in words', () => {
  it('is written as the trade writes it', () => {
    expect(pitchLabel(5)).toBe('5:12')
    expect(pitchLabel(4.5)).toBe('4.5:12')
    expect(pitchLabel(0)).toBe('0:12')
  })

  it('says 5:12 for a slope of 22.62 degrees (trigonometry: rise = 12 tan)', () => {
    expect(pitchLabel(12 * Math.tan((22.62 * Math.PI) / 180))).toBe('5:12')
  })

  it('rounds to hundredths, once, for reading', () => {
    expect(pitchLabel(4.333333)).toBe('4.33:12')
  })
})
