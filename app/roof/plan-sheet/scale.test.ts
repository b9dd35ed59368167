import { describe, expect, it } from 'vitest'
import { largestScale, scaleBarFt } from './scale.ts'

const room = { width: 436, height: 500 }

describe('the scale of a plan', () => {
  it('is the largest named one at which the plan fits', () => {
    // 40 ft at 1/8 in to the foot are 5 in = 360 pt; at 3/16 in they would be 7.5 in = 540 pt.
    expect(largestScale({ width: 40, height: 30 }, room, 'us')).toEqual({ name: '1/8 in = 1 ft', ptPerFt: 9 })
    // 4 ft at an inch to the foot are 4 in = 288 pt.
    expect(largestScale({ width: 4, height: 4 }, room, 'us')).toEqual({ name: '1 in = 1 ft', ptPerFt: 72 })
  })

  it('goes on to engineer scales for large roofs', () => {
    expect(largestScale({ width: 130, height: 60 }, room, 'us').name).toBe('1 in = 30 ft')
    expect(largestScale({ width: 900, height: 100 }, room, 'us').name).toBe('1 in = 200 ft')
  })

  it('is a ratio on A4: at 1 : 100 a foot, 304.8 mm, is 3.048 mm long', () => {
    const scale = largestScale({ width: 40, height: 30 }, room, 'metric')
    expect(scale.name).toBe('1 : 100')
    expect((scale.ptPerFt / 72) * 25.4).toBeCloseTo(3.048, 9)
    // 60 ft are 18.288 m, at 1 : 125 146.3 mm = 414.7 pt; at 1 : 100 they would be 518.4 pt.
    expect(largestScale({ width: 60, height: 30 }, room, 'metric').name).toBe('1 : 125')
  })

  it('is the smallest there is for what fits at none', () => {
    expect(largestScale({ width: 1e6, height: 10 }, room, 'us').name).toBe('1 in = 5000 ft')
  })
})

describe('the scale bar', () => {
  it('is a round number of feet that fits its width', () => {
    expect(scaleBarFt({ ptPerFt: 9, name: '' }, 150)).toBe(10)
    expect(scaleBarFt({ ptPerFt: 6.75, name: '' }, 150)).toBe(20)
    expect(scaleBarFt({ ptPerFt: 3.6, name: '' }, 150)).toBe(40)
  })
})
