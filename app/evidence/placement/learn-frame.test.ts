import { describe, expect, it } from 'vitest'
import { aFacet } from '../../../tests/builders/records.ts'
import { photoIdSchema } from '../../job/ids.ts'
import type { PlanFrame, PlanPoint } from '../../job/places.ts'
import { planToGeo } from '../../roof/plan-frame.ts'
import { frameSentence } from './frame-words.ts'
import { corrected, learnFrames } from './learn-frame.ts'
import type { PlacementInput } from './placement-input.ts'
import { fitSimilarity } from './similarity.ts'

const frame: PlanFrame = { upAzimuthDeg: 0, anchor: { latDeg: 27.95, lonDeg: -82.45 } }
const facet = aFacet({
  outline: [
    { xFt: 0, yFt: 0 },
    { xFt: 80, yFt: 0 },
    { xFt: 80, yFt: 60 },
    { xFt: 0, yFt: 60 },
  ],
})
const pins = [0, 1, 2].flatMap((x) => [0, 1, 2, 3].map((y) => ({ xFt: 5 + 35 * x, yFt: 3 + 18 * y })))

/** Photos pinned where they were taken, whose positions are off as given. */
function pinned(count: number, positionOf: (pin: PlanPoint) => PlanPoint): PlacementInput {
  const taken = pins.slice(0, count).map((pin, at) => ({ id: photoIdSchema.parse(`p${at}`), pin }))
  return {
    facets: [facet],
    frame,
    photos: taken.map(({ id, pin }) => {
      const geo = planToGeo(positionOf(pin), frame)
      return {
        id,
        cameraId: null,
        instantMs: null,
        position: geo === null ? null : { ...geo, altitudeM: null, errorM: 5 },
        direction: null,
      }
    }),
    confirmed: taken.map(({ id, pin }) => ({ photoId: id, place: facet.id, pin })),
  }
}

const FT = 1 / 0.3048

describe('what is learned of how positions lie on the plan', () => {
  it('finds a shift from pinned photos and takes it off again', () => {
    const shift = { xFt: 6 * FT * Math.SQRT1_2, yFt: 6 * FT * Math.SQRT1_2 }
    const [learned] = learnFrames(pinned(12, (p) => ({ xFt: p.xFt + shift.xFt, yFt: p.yFt + shift.yFt })))
    if (learned === undefined) throw new Error('Nothing was learned.')
    expect(learned.shift.xFt).toBeCloseTo(shift.xFt, 1)
    expect(learned.shift.yFt).toBeCloseTo(shift.yFt, 1)
    expect(learned.typicalResidualFt).toBeLessThan(0.1)
    const back = corrected({ xFt: 10 + shift.xFt, yFt: 20 + shift.yFt }, learned)
    expect(Math.hypot(back.xFt - 10, back.yFt - 20)).toBeLessThan(0.2)
    expect(frameSentence(learned, 0)).toBe(
      'Positions are shifted 6 m to the north-east; learned from 12 confirmed photos, residual 0.0 m.',
    )
    // On a sheet whose up is east, the same shift on the sheet is one to the south-east.
    expect(frameSentence(learned, 90)).toContain('to the south-east')
  })

  it('does not follow one wild position', () => {
    let left = 11
    const [learned] = learnFrames(pinned(12, (p) => (left-- === 0 ? { xFt: p.xFt + 400, yFt: p.yFt } : p)))
    expect(Math.hypot(learned?.shift.xFt ?? 99, learned?.shift.yFt ?? 99)).toBeLessThan(3)
    expect(Math.min(...(learned?.residuals.map(({ weight }) => weight) ?? [1]))).toBeLessThan(0.02)
  })

  it('says nothing of fewer than 3 photos, and no turn of fewer than 8', () => {
    expect(learnFrames(pinned(2, (p) => p))).toEqual([])
    expect(learnFrames(pinned(5, (p) => p))[0]?.turn).toEqual({ kind: 'refused', because: 'too-few-photos' })
  })

  it('recovers a turn and shift in closed form, as worked by hand', () => {
    // A quarter turn counter-clockwise takes (1, 0) to (0, 1) and (0, 1) to (-1, 0); then 5 to the right.
    const pairs = [
      { from: { x: 1, y: 0 }, to: { x: 5, y: 1 }, weight: 1 },
      { from: { x: 0, y: 1 }, to: { x: 4, y: 0 }, weight: 2 },
      { from: { x: -1, y: 0 }, to: { x: 5, y: -1 }, weight: 1 },
    ]
    const fit = fitSimilarity(pairs, 'shift-and-turn')
    expect(fit?.turnRad).toBeCloseTo(Math.PI / 2, 12)
    expect(fit?.shift.x).toBeCloseTo(5, 12)
    expect(fit?.shift.y).toBeCloseTo(0, 12)
  })
})
