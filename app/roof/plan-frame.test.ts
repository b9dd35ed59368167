import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { PlanFrame } from '../job/places.ts'
import { azimuthOf, degreeLengthsM, geoToPlan, planToGeo, sheetDirection } from './plan-frame.ts'

const FOOT_M = 0.3048
const anchor = { latDeg: 27.95, lonDeg: -82.4572 }
const feet = fc.integer({ min: -500_000, max: 500_000 }).map((thousandths) => thousandths / 1000)
const azimuth = fc.integer({ min: 0, max: 35_999 }).map((hundredths) => hundredths / 100)

describe('length of a degree on the earth', () => {
  it('is 110818.645 m north and 98407.232 m east at 27.95 N (WGS84 constants, worked in double precision)', () => {
    const { latM, lonM } = degreeLengthsM(27.95)
    expect(latM).toBeCloseTo(110818.645, 3)
    expect(lonM).toBeCloseTo(98407.232, 3)
  })

  it('is a 360th of the equator there: 2 pi 6378137 m (WGS84 semi-major axis)', () => {
    expect(degreeLengthsM(0).lonM * 360).toBeCloseTo(2 * Math.PI * 6378137, 3)
  })
})

describe('directions on the sheet', () => {
  it.each([
    [0, { right: 90, up: 0 }],
    [90, { right: 180, up: 90 }],
    [180, { right: 270, up: 180 }],
    [215.5, { right: 305.5, up: 215.5 }],
    [359, { right: 89, up: 359 }],
  ])('with up at %f degrees are known by their azimuths, clockwise from north', (upAzimuthDeg, { right, up }) => {
    expect(sheetDirection(up, upAzimuthDeg).x).toBeCloseTo(0, 12)
    expect(sheetDirection(up, upAzimuthDeg).y).toBeCloseTo(1, 12)
    expect(sheetDirection(right, upAzimuthDeg).x).toBeCloseTo(1, 12)
    expect(sheetDirection(right, upAzimuthDeg).y).toBeCloseTo(0, 12)
    expect(azimuthOf({ x: 1, y: 0 }, upAzimuthDeg)).toBeCloseTo(right, 9)
    expect(azimuthOf({ x: 0, y: 1 }, upAzimuthDeg)).toBeCloseTo(up, 9)
  })

  it('turn into azimuths and back', () => {
    fc.assert(
      fc.property(azimuth, azimuth, (azimuthDeg, upAzimuthDeg) => {
        const apart = Math.abs(azimuthOf(sheetDirection(azimuthDeg, upAzimuthDeg), upAzimuthDeg) - azimuthDeg)
        expect(Math.min(apart, 360 - apart)).toBeLessThan(1e-9)
      }),
    )
  })
})

describe('the plan on the earth', () => {
  it('has the anchor at its origin and north where the sheet says', () => {
    const northUp: PlanFrame = { upAzimuthDeg: 0, anchor }
    expect(geoToPlan(anchor, northUp)).toEqual({ xFt: 0, yFt: 0 })
    const north = geoToPlan({ latDeg: 27.951, lonDeg: -82.4572 }, northUp)
    expect(north?.xFt).toBeCloseTo(0, 6)
    expect((north?.yFt ?? 0) * FOOT_M).toBeCloseTo(110.818645, 3)
    // On a sheet whose up direction is east, north is to the left.
    const eastUp = geoToPlan({ latDeg: 27.951, lonDeg: -82.4572 }, { upAzimuthDeg: 90, anchor })
    expect((eastUp?.xFt ?? 0) * FOOT_M).toBeCloseTo(-110.818645, 3)
    expect(eastUp?.yFt).toBeCloseTo(0, 6)
  })

  it('agrees with a geodesic of 7970.914 m at 290.2718 degrees to 0.02 % and 0.05 degrees (Karney/Vincenty methods on WGS84, worked)', () => {
    const frame: PlanFrame = { upAzimuthDeg: 0, anchor: { latDeg: 27.9506, lonDeg: -82.4572 } }
    const there = geoToPlan({ latDeg: 27.9755, lonDeg: -82.5332 }, frame) ?? { xFt: NaN, yFt: NaN }
    const distanceM = Math.hypot(there.xFt, there.yFt) * FOOT_M
    expect(Math.abs(distanceM / 7970.914 - 1)).toBeLessThan(0.0002)
    expect(Math.abs(azimuthOf({ x: there.xFt, y: there.yFt }, 0) - 290.2718)).toBeLessThan(0.05)
  })

  it('takes any point of the plan to the earth and back to where it was, at any up direction', () => {
    fc.assert(
      fc.property(
        fc.record({ xFt: feet, yFt: feet }),
        azimuth,
        fc.record({ latDeg: fc.integer({ min: -70, max: 70 }), lonDeg: fc.integer({ min: -180, max: 180 }) }),
        ({ xFt, yFt }, upAzimuthDeg, place) => {
          const frame: PlanFrame = { upAzimuthDeg, anchor: place }
          const geo = planToGeo({ xFt, yFt }, frame)
          expect(Math.abs(geo?.lonDeg ?? NaN)).toBeLessThanOrEqual(180)
          const back = geo === null ? null : geoToPlan(geo, frame)
          expect(back?.xFt).toBeCloseTo(xFt, 5)
          expect(back?.yFt).toBeCloseTo(yFt, 5)
        },
      ),
    )
  })

  it('lies across the line where longitude jumps from 180 to -180', () => {
    const frame: PlanFrame = { upAzimuthDeg: 0, anchor: { latDeg: -17, lonDeg: 179.9999 } }
    const east = geoToPlan({ latDeg: -17, lonDeg: -179.9999 }, frame)
    expect((east?.xFt ?? 0) * FOOT_M).toBeCloseTo(0.0002 * degreeLengthsM(-17).lonM, 6)
    expect(planToGeo({ xFt: 100, yFt: 0 }, frame)?.lonDeg).toBeLessThan(-179.99)
  })

  it('is nowhere while the plan has no anchor', () => {
    expect(geoToPlan(anchor, { upAzimuthDeg: 0, anchor: null })).toBeNull()
    expect(planToGeo({ xFt: 0, yFt: 0 }, { upAzimuthDeg: 0, anchor: null })).toBeNull()
  })
})
