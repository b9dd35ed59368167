import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { blockHouses, ringOf, starHouses, tangledHouses } from '../builders/outlines.ts'
import { aFinding } from '../builders/records.ts'
import { at, DOWN, facetsOf, gable, hip, type Face } from '../builders/whole-roofs.ts'
import { drawPlan } from '../../app/roof/draw-plan.ts'
import type { Facet } from '../../app/roof/facet.ts'
import type { PlanPoint } from '../../app/job/places.ts'
import { azimuthOf } from '../../app/roof/plan-frame.ts'
import type { PlanDrawing } from '../../app/roof/plan-drawing.ts'
import { containsPoint } from '../../app/roof/polygon.ts'
import { buildRoof } from '../../app/roof/skeleton/build-roof.ts'
import { boxesOverlap } from '../../renderer/plan/lengths/boxes.ts'
import { planLabels, type PlanLabels } from '../../renderer/plan/lengths/plan-labels.ts'

function drawn(facets: readonly Facet[], pinAt: readonly { xFt: number; yFt: number }[] = []): PlanDrawing {
  const findings = pinAt.map((place) => aFinding({ pin: { kind: 'point', at: place } }))
  return drawPlan({ facets, findings, photos: [], frame: { upAzimuthDeg: 0, anchor: null }, frontAzimuthDeg: null })
}
const plan = (faces: readonly Face[]) => drawn(facetsOf(faces))

/** Pairs of labels, or of a label and a pin, that overlap. */
function overlaps({ facets, lengths }: PlanLabels, drawing: PlanDrawing, scale: number): number {
  const pins = drawing.pins.map(({ markerAt }) => ({
    x: markerAt.xFt * scale,
    y: -markerAt.yFt * scale,
    halfWidth: 10.5,
    halfHeight: 10.5,
  }))
  const labels = [...facets, ...lengths].map(({ box }) => box)
  const among = labels.flatMap((a, i) => labels.slice(i + 1).filter((b) => boxesOverlap(a, b)))
  return among.length + labels.flatMap((a) => pins.filter((b) => boxesOverlap(a, b))).length
}

/** The roof over an outline, every edge an eave of 5:12; null where none can be built. */
function roofOver([outer = [], ...courtyards]: readonly (readonly PlanPoint[])[]): readonly Facet[] | null {
  const outline = { outer: ringOf(outer, 5), courtyards: courtyards.map((ring) => ringOf(ring, 5)), eaveHeightFt: 0 }
  const built = buildRoof(outline)
  if (!built.ok) return null
  const faces = built.roof.facets.map((facet): Face => ({
    corners: facet.outline.map(({ xFt, yFt }) => [xFt, yFt]),
    pitch: facet.pitchRise,
    down: azimuthOf(facet.downhill, 0),
  }))
  return facetsOf(faces)
}

describe('the lengths of a roof’s outside', () => {
  it('are those of the house: the two rakes of a gable wall are one length', () => {
    const { lengths } = planLabels(plan(gable(40, 24, 5)), 12, { lengths: true, marks: [] })
    expect(lengths.map(({ text }) => text).toSorted()).toEqual(['24′ 0″', '24′ 0″', '40′ 0″', '40′ 0″'])
  })

  it('stand outside, beside their edges', () => {
    const drawing = plan(hip(40, 24, 5))
    const { lengths } = planLabels(drawing, 12, { lengths: true, marks: [] })
    expect(lengths).toHaveLength(4)
    for (const { at: place } of lengths) {
      const point = { xFt: place.x / 12, yFt: -place.y / 12 }
      expect(drawing.facets.some(({ outline }) => containsPoint(outline, point))).toBe(false)
    }
  })

  it('go as the plan gets smaller, the shorter ones first, until none is left', () => {
    const long = plan(hip(160, 24, 5))
    const shownAt = (scale: number) =>
      planLabels(long, scale, { lengths: true, marks: [] }).lengths.map(({ text }) => text)
    expect(shownAt(3)).toHaveLength(4)
    // At 0.9 pixels a foot the words are longer than the sides of 24 ft, but not than those of 160 ft.
    expect(new Set(shownAt(0.9))).toEqual(new Set(['160′ 0″']))
    expect(shownAt(0.15)).toEqual([])
  })

  it('can be switched off', () => {
    expect(planLabels(plan(gable(40, 24, 5)), 12, { lengths: false, marks: [] }).lengths).toEqual([])
  })
})

describe('the letters of facets', () => {
  it('stand inside their facets while there is room', () => {
    const drawing = plan(hip(40, 24, 5))
    for (const { facet, at: place, leadsTo } of planLabels(drawing, 12, { lengths: true, marks: [] }).facets) {
      expect(leadsTo).toBeNull()
      expect(containsPoint(facet.outline, { xFt: place.x / 12, yFt: -place.y / 12 })).toBe(true)
    }
  })

  it('stand off the roof beside a sliver, with a line that leads into it', () => {
    const sliver: Face = { corners: at('0,-0.6 40,-0.6 40,0 0,0'), pitch: 5, down: DOWN }
    const drawing = plan([...gable(40, 24, 5), sliver])
    const [led] = planLabels(drawing, 10, { lengths: true, marks: [] }).facets.filter(({ leadsTo }) => leadsTo !== null)
    expect(led?.facet.outline).toEqual(drawing.facets[2]?.outline)
    expect(led?.leadsTo?.y).toBeCloseTo(3, 6)
  })

  it('never overlap each other, lengths or pins, on any roof at any zoom', () => {
    const rings = fc.oneof(
      blockHouses({ unitCells: false }),
      starHouses.map((ring) => [ring]),
      tangledHouses(fc.nat(60)).map((ring) => [ring]),
    )
    const spot = fc.record({ xFt: fc.integer({ min: -10, max: 60 }), yFt: fc.integer({ min: -10, max: 60 }) })
    let roofs = 0
    fc.assert(
      fc.property(rings, fc.array(spot, { maxLength: 4 }), (house, pins) => {
        const facets = roofOver(house)
        if (facets === null) return
        roofs += 1
        const drawing = drawn(facets, pins)
        for (const scale of [0.5, 2, 5, 12, 40]) {
          expect(overlaps(planLabels(drawing, scale, { lengths: true, marks: [] }), drawing, scale)).toBe(0)
        }
      }),
      { numRuns: 80 },
    )
    expect(roofs).toBeGreaterThan(30)
  })
})
