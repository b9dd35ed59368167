import type { Pin } from '../../evidence/finding.ts'
import type { PlanPoint } from '../../job/places.ts'
import { lengthFt } from '../polygon.ts'
import { zonePieces, type EdgeZones, type ZonePiece } from './edge-zones.ts'
import { zoneParts } from './edition.ts'
import { CuttingFailed, holdsPoint, overlapOf, regionAreaSqFt, stopsAlong, unite } from './region.ts'

/** A point this near a border lies on it: less than can be drawn. */
const ON_BORDER_FT = 1 / 96

/** Lines and areas that touch a zone by less than this share of themselves don't count as in it. */
const LEAST_SHARE = 0.001

/** A zone that a pin touches, and how much of the pin lies in it: 0 to 1; the shares of a pin that runs off the roof come to less than 1. */
export interface ZoneShare {
  readonly piece: ZonePiece
  readonly share: number
}

/**
 * The zone that a point of the plan lies in. A point on a border belongs to the piece that comes first in `zoneParts`,
 * which is the one that is watched more closely. Null off the roof and on facets whose zones are not drawn.
 */
export function zoneOf(zones: EdgeZones, point: PlanPoint): ZonePiece | null {
  const holding = zonePieces(zones).filter(({ region }) => holdsPoint(region, point, ON_BORDER_FT))
  const [first] = holding.toSorted((a, b) => zoneParts.indexOf(a.part) - zoneParts.indexOf(b.part))
  return first ?? null
}

/**
 * Every zone that a pin touches, the largest share first. Empty off the roof, on facets whose zones are not drawn, for
 * lines and areas without extent, and for an area whose outline can't be cut.
 */
export function zoneOfPin(zones: EdgeZones, pin: Pin): readonly ZoneShare[] {
  switch (pin.kind) {
    case 'point': {
      const piece = zoneOf(zones, pin.at)
      return piece === null ? [] : [{ piece, share: 1 }]
    }
    case 'line':
      return lineShares(zones, pin.points)
    case 'area':
      return areaShares(zones, pin.points)
  }
}

function areaShares(zones: EdgeZones, outline: readonly PlanPoint[]): readonly ZoneShare[] {
  try {
    const area = unite([outline])
    return shares(zones, regionAreaSqFt(area), ({ region }) => regionAreaSqFt(overlapOf(region, area)))
  } catch (error) {
    if (error instanceof CuttingFailed) return []
    throw error
  }
}

function shares(zones: EdgeZones, whole: number, inPiece: (piece: ZonePiece) => number): readonly ZoneShare[] {
  if (whole === 0) return []
  return zonePieces(zones)
    .map((piece) => ({ piece, share: inPiece(piece) / whole }))
    .filter(({ share }) => share >= LEAST_SHARE)
    .toSorted((a, b) => b.share - a.share)
}

function legsOf(points: readonly PlanPoint[]): readonly { readonly from: PlanPoint; readonly to: PlanPoint }[] {
  return points.slice(1).map((to, i) => ({ from: points[i] ?? to, to }))
}

/** Each stretch of a line between two borders lies in one piece, also where the line runs along the border of two facets. */
function lineShares(zones: EdgeZones, points: readonly PlanPoint[]): readonly ZoneShare[] {
  const borders = zonePieces(zones).flatMap(({ region }) => region)
  const inPiece = new Map<ZonePiece, number>()
  const legs = legsOf(points)
  for (const { from, to } of legs) {
    const at = (share: number): PlanPoint => ({
      xFt: from.xFt + share * (to.xFt - from.xFt),
      yFt: from.yFt + share * (to.yFt - from.yFt),
    })
    const stops = stopsAlong(borders, from, to)
    stops.slice(1).forEach((stop, i) => {
      const start = stops[i] ?? stop
      const piece = stop > start ? zoneOf(zones, at((start + stop) / 2)) : null
      if (piece !== null) inPiece.set(piece, (inPiece.get(piece) ?? 0) + (stop - start) * lengthFt(from, to))
    })
  }
  const whole = legs.reduce((sum, { from, to }) => sum + lengthFt(from, to), 0)
  return shares(zones, whole, (piece) => inPiece.get(piece) ?? 0)
}
