import { describe, expect, it } from 'vitest'
import { facetsOf, gable, hip } from '../../../tests/builders/whole-roofs.ts'
import type { Pin } from '../../evidence/finding.ts'
import { facetIdSchema } from '../../job/ids.ts'
import { findingZone, findingZoneWords, shortZone } from './finding-zone.ts'
import { jobZones, type ZonedProperty } from './job-zones.ts'

const property: ZonedProperty = { windEdition: '7-16', meanRoofHeightFt: 15, leastWidthFt: null }
const facets = facetsOf(gable(60, 40, 6))
/** 60 by 40, eaves at y 0 and 40, ridge at 20, zones 4 ft wide. */
const zones = jobZones({ facets, upAzimuthDeg: 0, property })
const p = (xFt: number, yFt: number) => ({ xFt, yFt })
const wordsOf = (pin: Pin | null, facetId: string | null = null) =>
  findingZoneWords(findingZone({ pin, facetId: facetId === null ? null : facetIdSchema.parse(facetId) }, zones))
const point = (xFt: number, yFt: number): Pin => ({ kind: 'point', at: p(xFt, yFt) })

describe('the zone of a finding', () => {
  it.each([
    { x: 30, y: 10, words: 'Field' },
    { x: 30, y: 2, words: 'Edge, along the eave' },
    { x: 2, y: 10, words: 'Edge, along the rake' },
    { x: 2, y: 2, words: 'Corner, where eave and rake meet' },
    { x: 30, y: 18, words: 'Ridge or hip, along the ridge' },
  ])('by a point at $x, $y: $words', ({ x, y, words }) => {
    expect(wordsOf(point(x, y))).toBe(words)
  })

  it('near a border says which border, because a pin is put down by hand', () => {
    expect(wordsOf(point(30, 4.4))).toBe('Field, within 6 in of the border to edge')
    expect(wordsOf(point(30, 3.6))).toBe('Edge, along the eave, within 6 in of the border to field')
    expect(wordsOf(point(30, 4.6))).toBe('Field')
    expect(shortZone(findingZone({ pin: point(30, 4.4), facetId: null }, zones))).toBe('Field / edge')
  })

  it('near the ridge between two slopes stands on no border: both sides are ridge', () => {
    expect(wordsOf(point(30, 20))).toBe('Ridge or hip, along the ridge')
  })

  it('of an area has shares: 8 by 6 ft at the eave, 4 of the 6 ft in the edge', () => {
    const area: Pin = { kind: 'area', points: [p(20, 0), p(28, 0), p(28, 6), p(20, 6)] }
    expect(wordsOf(area)).toBe('Edge 67 %, field 33 %')
  })

  it('of an area that hangs off the roof says how much does', () => {
    const area: Pin = { kind: 'area', points: [p(20, -2), p(28, -2), p(28, 2), p(20, 2)] }
    expect(wordsOf(area)).toBe('Edge 50 %, off the drawn zones 50 %')
  })

  it('of a line along the ridge is the ridge, though it runs on the border of two facets', () => {
    expect(wordsOf({ kind: 'line', points: [p(10, 20), p(50, 20)] })).toBe('Ridge or hip, along the ridge')
  })

  it('of an area over one zone of two slopes is that zone', () => {
    const area: Pin = { kind: 'area', points: [p(20, 18), p(28, 18), p(28, 22), p(20, 22)] }
    expect(wordsOf(area)).toBe('Ridge or hip, along the ridge')
  })

  it('is not guessed without a pin, nor off the roof', () => {
    expect(wordsOf(null)).toBe('No pin on the plan, so its zone is not known.')
    expect(wordsOf(point(-20, 5))).toBe('The pin lies off the roof or on a facet whose zones are not drawn.')
    expect(shortZone(findingZone({ pin: null, facetId: null }, zones))).toBe('not known')
  })

  it('at a line between two facets goes by the facet that the finding names', () => {
    // In the hip roof's lower left corner two facets meet, and both have an eave corner there.
    const hipZones = jobZones({ facets: facetsOf(hip(60, 40, 5)), upAzimuthDeg: 0, property })
    const named = (facetId: string, at: Pin) =>
      findingZone({ pin: at, facetId: facetIdSchema.parse(facetId) }, hipZones)
    expect(named('facet-0', point(1, 1))).toMatchObject({ kind: 'in', part: 'eave-corner' })
    // A facet that the point is not on has no say.
    expect(named('facet-2', point(30, 2))).toMatchObject({ kind: 'in', part: 'eave', zone: 'edge' })
  })
})

describe('the zones of a job', () => {
  it('name the fields of the job sheet that they lack', () => {
    const bare = { windEdition: null, meanRoofHeightFt: null, leastWidthFt: null }
    const lacking = jobZones({ facets, upAzimuthDeg: 0, property: bare })
    expect(lacking).toMatchObject({
      kind: 'lacking',
      lacks: [{ field: 'property.windEdition' }, { field: 'property.meanRoofHeightFt' }],
    })
    expect(findingZoneWords(findingZone({ pin: point(30, 10), facetId: null }, lacking))).toBe(
      'To work out zones, enter the edition of the wind standard and the mean roof height on the job sheet.',
    )
  })

  it('take the least width between walls where it was entered, and the plan’s where not', () => {
    const walls = jobZones({ facets, upAzimuthDeg: 0, property: { ...property, leastWidthFt: 36 } })
    expect(walls).toMatchObject({ kind: 'drawn', width: { leastDimensionFt: 36, widthFt: 3.6 } })
    expect(zones).toMatchObject({ kind: 'drawn', width: { leastDimensionFt: 40, widthFt: 4 } })
  })

  it('are the same object for the same facets and the same sheet, and others when either changes', () => {
    const once = jobZones({ facets, upAzimuthDeg: 0, property })
    expect(jobZones({ facets, upAzimuthDeg: 0, property: { ...property } })).toBe(once)
    expect(jobZones({ facets: [...facets], upAzimuthDeg: 0, property })).not.toBe(once)
    expect(jobZones({ facets, upAzimuthDeg: 0, property: { ...property, meanRoofHeightFt: 8 } })).toMatchObject({
      width: { meanRoofHeightFt: 8 },
    })
  })

  it('of the 2022 edition are drawn without a number, and say where to take them from', () => {
    const later = jobZones({ facets, upAzimuthDeg: 0, property: { ...property, windEdition: '7-22' } })
    const pieces =
      later.kind === 'drawn' ? later.facets.flatMap((facet) => (facet.kind === 'drawn' ? facet.pieces : [])) : []
    expect(pieces.length).toBeGreaterThan(4)
    expect(pieces.every(({ number }) => number.kind === 'not-built-in')).toBe(true)
  })
})
