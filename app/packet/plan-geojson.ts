import type { CaseFile } from '../evidence/case-file.ts'
import { findingLabel, type Finding, type Pin } from '../evidence/finding.ts'
import type { GeoPoint, PlanFrame, PlanPoint } from '../job/places.ts'
import { facetGeometry } from '../roof/facet-geometry.ts'
import type { Facet } from '../roof/facet.ts'
import { planToGeo } from '../roof/plan-frame.ts'
import { whatWords } from './finding-words.ts'

/** Longitude and latitude, degrees WGS84, as GeoJSON (RFC 7946) orders them. */
type Position = readonly [lonDeg: number, latDeg: number]

type Geometry =
  | { readonly type: 'Point'; readonly coordinates: Position }
  | { readonly type: 'LineString'; readonly coordinates: readonly Position[] }
  | { readonly type: 'Polygon'; readonly coordinates: readonly (readonly Position[])[] }

interface Feature {
  readonly type: 'Feature'
  readonly id: string
  readonly geometry: Geometry
  readonly properties: Readonly<Record<string, string | number | null>>
}

/** A GeoJSON document (RFC 7946) of a roof plan. */
export interface PlanGeoJson {
  readonly type: 'FeatureCollection'
  readonly features: readonly Feature[]
}

/**
 * Facets and finding pins on the earth, through the local tangent plane at the plan's anchor. Null when the plan is not
 * anchored: a plan whose place is not known has none to give.
 */
export function planGeoJson({ job, facets, findings }: CaseFile): PlanGeoJson | null {
  const { frame } = job
  if (frame.anchor === null) return null
  const place = placer(frame, frame.anchor)
  return {
    type: 'FeatureCollection',
    features: [
      ...facets.map((facet) => facetFeature(facet, place)),
      ...findings.flatMap((finding) => (finding.pin === null ? [] : [pinFeature(finding, finding.pin, place)])),
    ],
  }
}

type Place = (point: PlanPoint) => Position

/** Seven decimals are about a centimetre. */
function placer(frame: PlanFrame, anchor: GeoPoint): Place {
  const rounded = (deg: number) => Number(deg.toFixed(7))
  return (point) => {
    const { lonDeg, latDeg } = planToGeo(point, frame) ?? anchor
    return [rounded(lonDeg), rounded(latDeg)]
  }
}

function facetFeature(facet: Facet, place: Place): Feature {
  const { pitchLabel, areaSqFt, planAreaSqFt } = facetGeometry(facet)
  return {
    type: 'Feature',
    id: `facet-${facet.letter}`,
    geometry: { type: 'Polygon', coordinates: [ring(facet.outline, place)] },
    properties: {
      kind: 'facet',
      label: facet.letter,
      name: facet.name,
      pitch: pitchLabel,
      faces_deg: facet.downslopeAzimuthDeg,
      plan_area_sq_ft: Math.round(planAreaSqFt),
      area_sq_ft: Math.round(areaSqFt),
      inspected_percent: facet.inspected.percent,
    },
  }
}

function pinFeature(finding: Finding, pin: Pin, place: Place): Feature {
  const label = findingLabel(finding.number)
  return {
    type: 'Feature',
    id: label,
    geometry: pinGeometry(pin, place),
    properties: { kind: 'finding', label, what: whatWords(finding), finding_kind: finding.kind },
  }
}

function pinGeometry(pin: Pin, place: Place): Geometry {
  switch (pin.kind) {
    case 'point':
      return { type: 'Point', coordinates: place(pin.at) }
    case 'line':
      return { type: 'LineString', coordinates: pin.points.map(place) }
    case 'area':
      return { type: 'Polygon', coordinates: [ring(pin.points, place)] }
  }
}

/** A closed outer ring, counter-clockwise as RFC 7946 asks. */
function ring(outline: readonly PlanPoint[], place: Place): readonly Position[] {
  const open = outline.map(place)
  const turned = signedArea(open) < 0 ? [...open].reverse() : open
  const [first] = turned
  return first === undefined ? [] : [...turned, first]
}

function signedArea(points: readonly Position[]): number {
  const [origin] = points
  if (origin === undefined) return 0
  return points.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = points[(i + 1) % points.length] ?? origin
    return sum + (x - origin[0]) * (nextY - origin[1]) - (nextX - origin[0]) * (y - origin[1])
  }, 0)
}
