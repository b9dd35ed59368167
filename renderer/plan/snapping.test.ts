import { describe, expect, it } from 'vitest'
import type { PlanPoint } from '../../app/job/places.ts'
import { snapPoint, type Snap } from './snapping.ts'
import type { PlanLine } from './sheet-geometry.ts'

const at = (xFt: number, yFt: number): PlanPoint => ({ xFt, yFt })

function snap(
  pointer: PlanPoint,
  from: PlanPoint | null,
  more: { corners?: PlanPoint[]; levels?: PlanPoint[]; sides?: PlanLine[]; stepFt?: number | null } = {},
): Snap {
  return snapPoint(pointer, from, {
    targets: { corners: more.corners ?? [], levels: more.levels ?? [], sides: more.sides ?? [] },
    settings: { reachFt: 0.5, stepFt: more.stepFt === undefined ? 0.5 : more.stepFt },
  })
}

describe('snapping a drawn point', () => {
  it('takes an existing corner within reach, as the very same point', () => {
    const corner = at(10.123456, 4.654321)
    const snapped = snap(at(10.4, 4.5), at(0, 0), { corners: [at(11.5, 4.5), corner] })
    expect(snapped).toEqual({ at: corner, to: 'corner' })
    expect(snapped.at).toBe(corner)
  })

  it('leaves a corner alone that is out of reach', () => {
    expect(snap(at(10.4, 4.5), null, { corners: [at(12, 4.5)] }).to).toBe('free')
  })

  it('holds a side to 90 degrees and a whole step', () => {
    expect(snap(at(0.3, 24.2), at(0, 0))).toEqual({ at: at(0, 24), to: 'direction' })
    expect(snap(at(-17.9, 0.4), at(0, 0))).toEqual({ at: at(-18, 0), to: 'direction' })
  })

  it('holds a side to 45 degrees: both ways equally far', () => {
    const snapped = snap(at(10.1, 9.8), at(0, 0), { stepFt: null })
    expect(snapped.to).toBe('direction')
    expect(snapped.at.xFt).toBeCloseTo(snapped.at.yFt, 3)
  })

  it('lets a side run free between the held directions', () => {
    expect(snap(at(20, 9), at(0, 0))).toEqual({ at: at(20, 9), to: 'free' })
  })

  it('stops a held side at the side it meets', () => {
    const wall: PlanLine = { from: at(30, -10), to: at(30, 10) }
    expect(snap(at(29.7, 0.2), at(0, 0), { sides: [wall] })).toEqual({ at: at(30, 0), to: 'side' })
  })

  it('stops a held side level with a corner, so that a rectangle closes square', () => {
    expect(snap(at(0.2, 20.2), at(24.25, 20), { levels: [at(0, 0)] })).toEqual({ at: at(0, 20), to: 'aligned' })
  })

  it('takes the nearest place of a side when no held direction is meant', () => {
    const slanted: PlanLine = { from: at(0, 10), to: at(40, 30) }
    const snapped = snap(at(10, 15.3), at(0, 0), { sides: [slanted] })
    // The foot of the perpendicular from (10, 15.3) on the line y = 10 + x / 2.
    expect(snapped.to).toBe('side')
    expect(snapped.at.xFt).toBeCloseTo(10 + 0.3 * 0.4, 2)
    expect(snapped.at.yFt).toBeCloseTo(10 + snapped.at.xFt / 2, 2)
  })

  it('puts a first corner on the grid', () => {
    expect(snap(at(3.3, 7.8), null)).toEqual({ at: at(3.5, 8), to: 'free' })
    expect(snap(at(3.3, 7.8), null, { stepFt: null })).toEqual({ at: at(3.3, 7.8), to: 'free' })
  })
})
