import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { aFacet, aFinding, aPhoto } from '../../tests/builders/records.ts'
import type { PlanFrame, PlanPoint } from '../job/places.ts'
import { drawPlan, labelPoint } from './draw-plan.ts'
import { containsPoint } from './polygon.ts'

const outlineOf = (...corners: readonly (readonly [number, number])[]): PlanPoint[] =>
  corners.map(([xFt, yFt]) => ({ xFt, yFt }))
const rectangle = (w: number, h: number) => outlineOf([0, 0], [w, 0], [w, h], [0, h])

const frame: PlanFrame = { upAzimuthDeg: 0, anchor: { latDeg: 27.95, lonDeg: -82.4572 } }
const nothing = { facets: [], findings: [], photos: [], frame, frontAzimuthDeg: null }

describe('the plan of a job with nothing drawn yet', () => {
  it('is an empty sheet of 60 by 60 ft round the origin', () => {
    expect(drawPlan(nothing)).toEqual({
      bounds: { minXFt: -30, minYFt: -30, maxXFt: 30, maxYFt: 30 },
      upAzimuthDeg: 0,
      frontAzimuthDeg: null,
      doorAt: null,
      facets: [],
      edges: [],
      pins: [],
      cameras: [],
    })
  })
})

describe('facets on the plan', () => {
  it('have their letter well inside, their pitch in words and an arrow downhill on the sheet', () => {
    const facet = aFacet({ letter: 'B', outline: rectangle(40, 20), pitchRise: 5, downslopeAzimuthDeg: 180 })
    const [drawn] = drawPlan({ ...nothing, facets: [facet], frame: { ...frame, upAzimuthDeg: 90 } }).facets
    expect(drawn).toMatchObject({ id: facet.id, letter: 'B', outline: facet.outline, pitchLabel: '5:12' })
    // With east at the top of the sheet, south is to the right.
    expect(drawn?.downhill.x).toBeCloseTo(1, 12)
    expect(drawn?.downhill.y).toBeCloseTo(0, 12)
  })

  it('bring their edges with them', () => {
    const facet = aFacet({ outline: rectangle(40, 20), downslopeAzimuthDeg: 180 })
    expect(drawPlan({ ...nothing, facets: [facet] }).edges.map((edge) => edge.kind)).toEqual([
      'eave',
      'rake',
      'top-edge',
      'rake',
    ])
  })

  it('set the bounds, with 4 ft round them', () => {
    const facet = aFacet({ outline: rectangle(40, 20) })
    expect(drawPlan({ ...nothing, facets: [facet] }).bounds).toEqual({ minXFt: -4, minYFt: -4, maxXFt: 44, maxYFt: 24 })
  })
})

describe('the place of a letter', () => {
  it('is farthest from the sides: the middle of a square, the wide part of an L', () => {
    const { xFt, yFt } = labelPoint(rectangle(20, 20))
    expect(Math.hypot(xFt - 10, yFt - 10)).toBeLessThan(0.2)
    const ell = labelPoint(outlineOf([0, 0], [40, 0], [40, 24], [10, 24], [10, 60], [0, 60]))
    expect(containsPoint(rectangle(40, 24), ell)).toBe(true)
  })

  it('is inside outlines that turn round a hollow, and inside narrow or small ones', () => {
    const hollow = outlineOf([0, 0], [30, 0], [30, 30], [0, 30], [0, 28], [28, 28], [28, 2], [0, 2])
    const sliver = outlineOf([0, 0], [30, 30], [60, 0], [60, 0.08], [30, 30.08], [0, 0.08])
    const small = outlineOf([0, 0], [0.09, 0], [0.09, 0.02], [0.02, 0.02], [0.02, 0.09], [0, 0.09])
    for (const outline of [hollow, sliver, small]) expect(containsPoint(outline, labelPoint(outline))).toBe(true)
  })

  it('is inside any outline that runs round a middle', () => {
    const spokes = fc.array(fc.integer({ min: 1, max: 1000 }), { minLength: 3, maxLength: 16 })
    fc.assert(
      fc.property(spokes, fc.constantFrom(0.001, 0.05, 1), (lengths, scale) => {
        const outline = lengths.map((length, i): PlanPoint => {
          const angle = (2 * Math.PI * i) / lengths.length
          return { xFt: length * scale * Math.cos(angle), yFt: length * scale * Math.sin(angle) }
        })
        expect(containsPoint(outline, labelPoint(outline))).toBe(true)
      }),
      { numRuns: 300 },
    )
  })
})

describe('pins on the plan', () => {
  it('carry the number of their finding; damage is filled, everything else is open', () => {
    const pin = { kind: 'point', at: { xFt: 3, yFt: 4 } } as const
    const findings = [
      aFinding({ number: 12, kind: 'damage', pin }),
      aFinding({ number: 13, kind: 'sound', condition: 'sound', pin }),
      aFinding({ number: 14 }),
    ]
    const { pins } = drawPlan({ ...nothing, findings })
    expect(pins.map(({ label, filled, markerAt }) => ({ label, filled, markerAt }))).toEqual([
      { label: '12', filled: true, markerAt: { xFt: 3, yFt: 4 } },
      { label: '13', filled: false, markerAt: { xFt: 3, yFt: 4 } },
    ])
  })

  it('have the marker of a line halfway along it, round its bends', () => {
    const points = outlineOf([0, 0], [10, 0], [10, 30])
    const { pins } = drawPlan({ ...nothing, findings: [aFinding({ pin: { kind: 'line', points } })] })
    expect(pins[0]).toMatchObject({ kind: 'line', points, markerAt: { xFt: 10, yFt: 10 } })
  })

  it('have the marker of a line without length where it stands', () => {
    const points = outlineOf([7, 7], [7, 7])
    const { pins } = drawPlan({ ...nothing, findings: [aFinding({ pin: { kind: 'line', points } })] })
    expect(pins[0]?.markerAt).toEqual({ xFt: 7, yFt: 7 })
  })

  it('have the marker of an area inside it', () => {
    const points = outlineOf([0, 0], [12, 0], [12, 4], [4, 4], [4, 12], [0, 12])
    const { pins } = drawPlan({ ...nothing, findings: [aFinding({ pin: { kind: 'area', points } })] })
    expect(containsPoint(points, pins[0]?.markerAt ?? { xFt: NaN, yFt: NaN })).toBe(true)
  })

  it('widen the bounds when they stand off the roof, however many corners they have together', () => {
    const points = Array.from({ length: 200 }, (_, i) => ({ xFt: i, yFt: 0 }))
    const finding = aFinding({ pin: { kind: 'line', points } })
    const { bounds } = drawPlan({ ...nothing, findings: Array.from({ length: 1500 }, () => finding) })
    expect(bounds).toEqual({ minXFt: -4, minYFt: -4, maxXFt: 203, maxYFt: 4 })
  })
})

describe('cameras on the plan', () => {
  const position = { latDeg: 27.9501, lonDeg: -82.4572, altitudeM: null, errorM: null }

  it('stand where the photo says it was taken and look where it says it looked', () => {
    const photo = aPhoto({ number: 7, file: { position, direction: { azimuthDeg: 90, reference: 'true' } } })
    const [camera] = drawPlan({ ...nothing, photos: [photo] }).cameras
    expect(camera).toMatchObject({ photoId: photo.id, label: 'P-007' })
    expect(camera?.at.xFt).toBeCloseTo(0, 6)
    // A ten-thousandth of a degree north at 27.95 N is 11.0818645 m (WGS84).
    expect((camera?.at.yFt ?? 0) * 0.3048).toBeCloseTo(11.0818645, 4)
    expect(camera?.looking?.x).toBeCloseTo(1, 12)
  })

  it('look nowhere when the photo names no direction', () => {
    expect(drawPlan({ ...nothing, photos: [aPhoto({ file: { position } })] }).cameras[0]?.looking).toBeNull()
  })

  it('are left off without a position or without an anchor, and never widen the sheet', () => {
    const far = aPhoto({ file: { position: { ...position, latDeg: 0, lonDeg: 0 } } })
    expect(drawPlan({ ...nothing, photos: [aPhoto()] }).cameras).toEqual([])
    expect(drawPlan({ ...nothing, photos: [far], frame: { ...frame, anchor: null } }).cameras).toEqual([])
    expect(drawPlan({ ...nothing, photos: [far] }).bounds).toEqual(drawPlan(nothing).bounds)
  })
})
