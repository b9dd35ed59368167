import { describe, expect, it } from 'vitest'
import { corners, outlineOf, ringOf } from '../../../tests/builders/outlines.ts'
import { buildRoofs } from './build-roofs.ts'
import { roofFaultSentence } from './roof-faults.ts'
import { slopeFactor } from '../slope.ts'

const house = { ...outlineOf('0,0 40,0 40,30 0,30', 6), eaveHeightFt: 18 }

describe('parts of a house at different heights', () => {
  it('each have a roof of their own; where the lower one ends at the wall there is a step', () => {
    const garage = { ...outlineOf('40,5 60,5 60,25 40,25', [4, 4, 4, 0]), eaveHeightFt: 9 }
    const result = buildRoofs([house, garage])
    expect(result).toMatchObject({ ok: true, roofs: [{ facets: { length: 4 } }, { facets: { length: 3 } }] })
    const steps = result.ok ? result.steps : []
    // The garage's ridge runs to the wall: two rakes of 10 ft run lie against it.
    expect(steps).toHaveLength(2)
    for (const step of steps) {
      expect(step).toMatchObject({ lower: 1, higher: 0, from: { xFt: 40 }, to: { xFt: 40 } })
      expect(step.planLengthFt).toBeCloseTo(10, 9)
      expect(step.trueLengthFt).toBeCloseTo(10 * slopeFactor(4), 9)
    }
  })

  it('step only along the shared part of a wall, and not between equal heights', () => {
    const porch = { ...outlineOf('30,-8 50,-8 50,0 30,0', [3, 0, 0, 0]), eaveHeightFt: 8 }
    const steps = (heightFt: number) => {
      const result = buildRoofs([porch, { ...house, eaveHeightFt: heightFt }])
      return result.ok ? result.steps.map(({ from, to, planLengthFt }) => [from.xFt, to.xFt, planLengthFt]) : []
    }
    expect(steps(18)).toEqual([[40, 30, 10]])
    expect(steps(8)).toEqual([])
  })

  it('may stand in a courtyard of another', () => {
    const around = {
      outer: ringOf(corners('0,0 60,0 60,60 0,60'), 6),
      courtyards: [ringOf(corners('20,20 40,20 40,40 20,40'), 6)],
    }
    const inside = outlineOf('25,25 35,25 35,35 25,35', 6)
    expect(buildRoofs([around, inside]).ok).toBe(true)
    expect(buildRoofs([inside, around]).ok).toBe(true)
  })

  it.each([
    ['run into each other', '30,10 50,10 50,20 30,20'],
    ['lie in each other', '10,10 20,10 20,20 10,20'],
    ['are the same', '0,0 40,0 40,30 0,30'],
    ['share three walls', '20,0 40,0 40,30 20,30'],
  ])('are a fault that names both when they %s', (_what, second) => {
    const result = buildRoofs([house, outlineOf(second, 4)])
    const found = result.ok ? [] : result.faults
    expect(found.map(({ outline, fault }) => `${outline}: ${roofFaultSentence(fault)}`).join()).toContain(
      '2: This outline and outline 1 cover the same place',
    )
  })

  it('faults of one outline carry its number', () => {
    const result = buildRoofs([house, outlineOf('50,0 60,0', 4)])
    expect(result.ok ? [] : result.faults).toEqual([{ outline: 2, fault: { kind: 'too-few-corners', ring: 0 } }])
  })
})
