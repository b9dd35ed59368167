import type { CaseFile } from '../evidence/case-file.ts'
import { findingLabel, type Finding, type Pin } from '../evidence/finding.ts'
import type { GeoPoint, PlanFrame, PlanPoint } from '../job/places.ts'
import { facetGeometry } from '../roof/facet-geometry.ts'
import type { Facet } from '../roof/facet.ts'
import { facetName, houseOf } from '../roof/house.ts'
import { zonePieces } from '../roof/zones/edge-zones.ts'
import { findingZone, findingZoneWords } from '../roof/zones/finding-zone.ts'
import { jobZones, type JobZones } from '../roof/zones/job-zones.ts'
import type { JobSheet } from '../job/sheet.ts'
import { planToGeo, sheetDirection } from '../roof/plan-frame.ts'
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
  const { frame, sheet } = job
  if (frame.anchor === null) return null
  const place = placer(frame, frame.anchor)
  const house = houseOf(facets, frame, sheet.property)
  const zones = jobZones({ facets, upAzimuthDeg: frame.upAzimuthDeg, property: sheet.property })
  return {
    type: 'FeatureCollection',
    features: [
      ...facets.map((facet) => facetFeature(facet, facetName(facet, house), place)),
      ...frontFeatures(job.sheet.property, { facets, frame, place }),
      ...(zones.kind === 'drawn' ? zoneFeatures(zones, facets, place) : []),
      ...findings.flatMap((finding) =>
        finding.pin === null ? [] : [pinFeature(finding, { pin: finding.pin, place, zones })],
      ),
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

function facetFeature(facet: Facet, name: string, place: Place): Feature {
  const { pitchLabel, areaSqFt, planAreaSqFt } = facetGeometry(facet)
  return {
    type: 'Feature',
    id: `facet-${facet.letter}`,
    geometry: { type: 'Polygon', coordinates: [ring(facet.outline, place)] },
    properties: {
      kind: 'facet',
      label: facet.letter,
      name,
      pitch: pitchLabel,
      faces_deg: facet.downslopeAzimuthDeg,
      plan_area_sq_ft: Math.round(planAreaSqFt),
      area_sq_ft: Math.round(areaSqFt),
      inspected_percent: facet.inspected.percent,
    },
  }
}

/** The pieces of each facet that lie in one zone; a piece of several polygons is several features. */
function zoneFeatures(zones: JobZones, facets: readonly Facet[], place: Place): readonly Feature[] {
  if (zones.kind !== 'drawn') return []
  const letters = new Map(facets.map(({ id, letter }) => [id, letter]))
  return zonePieces(zones).flatMap(({ facetId, zone, part, region }) =>
    region.map(({ outer, holes }, i): Feature => {
      const letter = letters.get(facetId) ?? ''
      return {
        type: 'Feature',
        id: `zone-${letter}-${part}-${i + 1}`,
        geometry: {
          type: 'Polygon',
          coordinates: [ring(outer, place), ...holes.map((hole) => [...ring(hole, place)].reverse())],
        },
        properties: { kind: 'zone', label: zone, part, facet: letter, edition: zones.edition },
      }
    }),
  )
}

/** How far the line that says which way the front faces runs out from the roof, feet. */
const FRONT_OFF_ROOF_FT = 10

/** The front door as a point, and the way the front faces as a line out from the roof's middle. North needs no mark here. */
function frontFeatures(
  { frontAzimuthDeg, doorAt }: JobSheet['property'],
  { facets, frame, place }: { facets: readonly Facet[]; frame: PlanFrame; place: Place },
): readonly Feature[] {
  const door: readonly Feature[] =
    doorAt === null
      ? []
      : [
          {
            type: 'Feature',
            id: 'front-door',
            geometry: { type: 'Point', coordinates: place(doorAt) },
            properties: { kind: 'front-door', label: 'Front door' },
          },
        ]
  const corners = facets.flatMap(({ outline }) => outline)
  if (frontAzimuthDeg === null || corners.length === 0) return door
  const way = sheetDirection(frontAzimuthDeg, frame.upAzimuthDeg)
  const middle = { xFt: middleOf(corners.map(({ xFt }) => xFt)), yFt: middleOf(corners.map(({ yFt }) => yFt)) }
  const reachFt = Math.max(...corners.map(({ xFt, yFt }) => (xFt - middle.xFt) * way.x + (yFt - middle.yFt) * way.y))
  const out = (ft: number) => place({ xFt: middle.xFt + way.x * ft, yFt: middle.yFt + way.y * ft })
  const line: Geometry = { type: 'LineString', coordinates: [out(reachFt), out(reachFt + FRONT_OFF_ROOF_FT)] }
  const properties = { kind: 'front', label: 'Front', faces_deg: frontAzimuthDeg }
  return [...door, { type: 'Feature', id: 'front', geometry: line, properties }]
}

function middleOf(values: readonly number[]): number {
  return (Math.min(...values) + Math.max(...values)) / 2
}

interface PinOnEarth {
  readonly pin: Pin
  readonly place: Place
  readonly zones: JobZones
}

function pinFeature(finding: Finding, { pin, place, zones }: PinOnEarth): Feature {
  const label = findingLabel(finding.number)
  const zone = zones.kind === 'drawn' ? { zone: findingZoneWords(findingZone(finding, zones)) } : {}
  return {
    type: 'Feature',
    id: label,
    geometry: pinGeometry(pin, place),
    properties: { kind: 'finding', label, what: whatWords(finding), finding_kind: finding.kind, ...zone },
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
