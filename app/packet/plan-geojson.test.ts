import { describe, expect, it } from 'vitest'
import { aCaseFile } from '../../tests/builders/case-file.ts'
import { aFacet, aFinding, aJob } from '../../tests/builders/records.ts'
import { planGeoJson } from './plan-geojson.ts'

const anchor = { latDeg: 27.95, lonDeg: -82.45 }
/** One degree at 27.95 N on WGS84: latitude 110,818.6 m, longitude 98,407.2 m (computed from the published constants). */
const DEGREE_LAT_FT = 110_818.6 / 0.3048
const DEGREE_LON_FT = 98_407.2 / 0.3048

function pinAt(xFt: number, yFt: number, upAzimuthDeg: number) {
  const job = aJob({ frame: { anchor, upAzimuthDeg } })
  const finding = aFinding({ number: 1, pin: { kind: 'point', at: { xFt, yFt } } })
  return planGeoJson(aCaseFile({ job, findings: [finding] }))?.features[0]?.geometry.coordinates
}

describe('plan.geojson', () => {
  it('is not made for a plan that is not anchored', () => {
    expect(planGeoJson(aCaseFile({ facets: [aFacet()] }))).toBeNull()
  })

  it('puts a north-up plan’s x to the east and y to the north, in true size', () => {
    expect(pinAt(DEGREE_LON_FT / 1000, 0, 0)).toEqual([expect.closeTo(-82.449, 6), expect.closeTo(27.95, 6)])
    expect(pinAt(0, DEGREE_LAT_FT / 1000, 0)).toEqual([expect.closeTo(-82.45, 6), expect.closeTo(27.951, 6)])
  })

  it('turns with the sheet: up the sheet is east when up is azimuth 90', () => {
    expect(pinAt(0, DEGREE_LON_FT / 1000, 90)).toEqual([expect.closeTo(-82.449, 6), expect.closeTo(27.95, 6)])
  })

  it('closes rings and runs them counter-clockwise, whichever way they were drawn (RFC 7946, 3.1.6)', () => {
    const job = aJob({ frame: { anchor } })
    const facet = aFacet()
    const reversed = aFacet({ outline: [...facet.outline].reverse() })
    const all = planGeoJson(aCaseFile({ job, facets: [facet, reversed] }))?.features ?? []
    const features = all.filter(({ properties }) => properties['kind'] === 'facet')
    expect(features).toHaveLength(2)
    for (const { geometry } of features) {
      if (geometry.type !== 'Polygon') throw new Error('A facet is a polygon.')
      const [ring = []] = geometry.coordinates
      expect(ring).toHaveLength(5)
      expect(ring.at(-1)).toEqual(ring[0])
      const twiceArea = ring.slice(1).reduce((sum, [x, y], i) => {
        const [x0, y0] = ring[i] ?? [x, y]
        return sum + (x0 - anchor.lonDeg) * (y - anchor.latDeg) - (x - anchor.lonDeg) * (y0 - anchor.latDeg)
      }, 0)
      expect(twiceArea).toBeGreaterThan(0)
    }
  })

  it('has the front door as a point, and the front as a line that runs out from the roof the way the front faces', () => {
    const property = { frontAzimuthDeg: 90, doorAt: { xFt: DEGREE_LON_FT / 1000, yFt: 0 } }
    const job = aJob({ frame: { anchor }, sheet: { property } })
    const outline = [
      { xFt: -10, yFt: -10 },
      { xFt: 10, yFt: -10 },
      { xFt: 10, yFt: 10 },
    ]
    const features = planGeoJson(aCaseFile({ job, facets: [aFacet({ outline })] }))?.features ?? []
    const [facet, door, front] = features
    expect(facet?.properties).toMatchObject({ kind: 'facet', name: expect.stringMatching(/./) })
    expect(door).toMatchObject({ id: 'front-door', properties: { kind: 'front-door' } })
    expect(door?.geometry.coordinates).toEqual([expect.closeTo(-82.449, 6), expect.closeTo(27.95, 6)])
    expect(front).toMatchObject({ id: 'front', geometry: { type: 'LineString' }, properties: { faces_deg: 90 } })
    const eastOf = (ft: number) => [expect.closeTo(anchor.lonDeg + ft / DEGREE_LON_FT, 6), expect.closeTo(27.95, 6)]
    expect(front?.geometry.coordinates).toEqual([eastOf(10), eastOf(20)])
  })

  it('draws line and area pins as lines and polygons', () => {
    const job = aJob({ frame: { anchor } })
    const points = [
      { xFt: 0, yFt: 0 },
      { xFt: 10, yFt: 0 },
      { xFt: 10, yFt: 10 },
    ]
    const findings = [
      aFinding({ pin: { kind: 'line', points } }),
      aFinding({ pin: { kind: 'area', points } }),
      aFinding(),
    ]
    const types = planGeoJson(aCaseFile({ job, findings }))?.features.map(({ geometry }) => geometry.type)
    expect(types).toEqual(['LineString', 'Polygon'])
  })
})
