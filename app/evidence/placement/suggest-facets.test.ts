import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { aFacet } from '../../../tests/builders/records.ts'
import { photoIdSchema } from '../../job/ids.ts'
import { planToGeo } from '../../roof/plan-frame.ts'
import type { PlanFrame } from '../../job/places.ts'
import type { PlacementInput, PlacementPhoto } from './placement-input.ts'
import { suggestFacets } from './suggest-facets.ts'

const frame: PlanFrame = { upAzimuthDeg: 30, anchor: { latDeg: 27.95, lonDeg: -82.45 } }
const band = (letter: string, fromFt: number, downslopeAzimuthDeg: number) =>
  aFacet({
    letter,
    downslopeAzimuthDeg,
    outline: [
      { xFt: 0, yFt: fromFt },
      { xFt: 60, yFt: fromFt },
      { xFt: 60, yFt: fromFt + 30 },
      { xFt: 0, yFt: fromFt + 30 },
    ],
  })
const facets = [band('A', 0, 210), band('B', 30, 30)]
const [a, b] = facets

function photo(number: number, given: Partial<PlacementPhoto> & { readonly yFt?: number } = {}): PlacementPhoto {
  const { yFt, ...rest } = given
  const geo = yFt === undefined ? null : planToGeo({ xFt: 30, yFt }, frame)
  return {
    id: photoIdSchema.parse(`photo-${number}`),
    cameraId: null,
    instantMs: number * 15_000,
    position: geo === null ? null : { ...geo, altitudeM: null, errorM: 3 },
    direction: null,
    ...rest,
  }
}

const suggest = (photos: readonly PlacementPhoto[], more: Partial<PlacementInput> = {}) =>
  suggestFacets({ facets, frame, photos, confirmed: [], ...more })
const best = (suggestions: ReturnType<typeof suggest>) => suggestions.map(({ ranking }) => ranking[0]?.place)

describe('facets suggested of photos', () => {
  it('are those that the positions lie on', () => {
    const walk = [4, 6, 8, 7, 5, 52, 55, 53, 56, 54].map((yFt, at) => photo(at + 1, { yFt }))
    expect(best(suggest(walk))).toEqual([...Array(5).fill(a?.id), ...Array(5).fill(b?.id)])
  })

  it('are the confirmed ones where somebody confirmed, whatever the position says', () => {
    const walk = [photo(1, { yFt: 5 }), photo(2, { yFt: 55 })]
    const [first] = suggest(walk, {
      confirmed: [{ photoId: walk[0]?.id ?? photoIdSchema.parse('x'), place: b?.id ?? 'ground', pin: null }],
    })
    expect(first).toMatchObject({ isConfirmed: true })
    expect(first?.ranking[0]).toEqual({ place: b?.id, probability: 1 })
  })

  it('follow photos of the same minute that somebody confirmed, without any position', () => {
    const walk = [photo(1), photo(2), photo(3)]
    const confirmed = walk
      .slice(0, 1)
      .map(({ id }) => ({ photoId: id, place: a?.id ?? ('ground' as const), pin: null }))
    expect(best(suggest(walk, { confirmed }))).toEqual([a?.id, a?.id, a?.id])
  })

  it('follow what was said, without any position', () => {
    const walk = [photo(1), photo(2)]
    const hints = walk
      .slice(0, 1)
      .map(({ id }) => ({ photoId: id, weights: [{ place: b?.id ?? ('ground' as const), weight: 1 }] }))
    expect(best(suggest(walk, { hints }))[0]).toBe(b?.id)
  })

  it('are none without a facet or a photo', () => {
    expect(suggest([photo(1, { yFt: 5 })], { facets: [] })).toEqual([])
    expect(suggest([])).toEqual([])
  })

  it('come for every photo with probabilities that add up to 1, whatever is missing or odd', () => {
    const odd = fc.record({
      yFt: fc.option(fc.double({ min: -2000, max: 2000, noNaN: true }), { nil: undefined }),
      instantMs: fc.option(fc.integer({ min: 0, max: 3_600_000 }), { nil: null }),
      errorM: fc.constantFrom(null, 0.001, 3, 5000),
      azimuthDeg: fc.option(fc.double({ min: 0, max: 359.9, noNaN: true }), { nil: null }),
    })
    fc.assert(
      fc.property(fc.array(odd, { minLength: 1, maxLength: 12 }), (wishes) => {
        const photos = wishes.map(({ yFt, instantMs, errorM, azimuthDeg }, at) => {
          const made = photo(at + 1, { instantMs, ...(yFt === undefined ? {} : { yFt }) })
          const direction = azimuthDeg === null ? null : { azimuthDeg, reference: 'magnetic' as const }
          return { ...made, direction, position: made.position === null ? null : { ...made.position, errorM } }
        })
        const found = suggest(photos)
        expect(found.map(({ photoId }) => photoId)).toEqual(photos.map(({ id }) => id))
        for (const { ranking } of found) {
          expect(ranking.reduce((sum, { probability }) => sum + probability, 0)).toBeCloseTo(1, 9)
          expect(ranking.every(({ probability }) => probability >= 0)).toBe(true)
        }
      }),
      { numRuns: 60 },
    )
  })

  it('stand when the plan lies nowhere on the earth', () => {
    const found = suggest([photo(1, { yFt: 5 })], { frame: { upAzimuthDeg: 0, anchor: null } })
    expect(found[0]?.ranking).toHaveLength(3)
  })
})
