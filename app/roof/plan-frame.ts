import type { GeoPoint, PlanFrame, PlanPoint } from '../job/places.ts'
import { radians, wrapDegrees } from './angles.ts'

const FOOT_M = 0.3048
/** WGS84: semi-major axis in metres, first eccentricity squared. */
const A_M = 6378137
const E2 = 0.00669437999014

/** Unit vector on the sheet (x right, y up) of a true azimuth. */
export function sheetDirection(azimuthDeg: number, upAzimuthDeg: number): { readonly x: number; readonly y: number } {
  const turn = radians(azimuthDeg - upAzimuthDeg)
  return { x: Math.sin(turn), y: Math.cos(turn) }
}

/** True azimuth of a direction on the sheet, degrees. */
export function azimuthOf(direction: { readonly x: number; readonly y: number }, upAzimuthDeg: number): number {
  return wrapDegrees((Math.atan2(direction.x, direction.y) * 180) / Math.PI + upAzimuthDeg)
}

/**
 * Metres per degree at a latitude on the WGS84 ellipsoid: meridian and prime-vertical radii of curvature times one degree.
 * At 27.95 N: 110818.645 m and 98407.232 m.
 */
export function degreeLengthsM(latDeg: number): { readonly latM: number; readonly lonM: number } {
  const lat = radians(latDeg)
  const w = 1 - E2 * Math.sin(lat) ** 2
  const perDegree = Math.PI / 180
  return {
    latM: ((A_M * (1 - E2)) / w ** 1.5) * perDegree,
    lonM: (A_M / Math.sqrt(w)) * Math.cos(lat) * perDegree,
  }
}

/** Where a point on the earth lies on the plan, feet; null when the plan has no anchor. Good to millimetres over a property. */
export function geoToPlan(point: GeoPoint, frame: PlanFrame): PlanPoint | null {
  if (frame.anchor === null) return null
  const { latM, lonM } = degreeLengthsM(frame.anchor.latDeg)
  const eastFt = (halfTurn(point.lonDeg - frame.anchor.lonDeg) * lonM) / FOOT_M
  const northFt = ((point.latDeg - frame.anchor.latDeg) * latM) / FOOT_M
  const east = sheetDirection(90, frame.upAzimuthDeg)
  const north = sheetDirection(0, frame.upAzimuthDeg)
  return { xFt: eastFt * east.x + northFt * north.x, yFt: eastFt * east.y + northFt * north.y }
}

/** Where a point of the plan lies on the earth; null when the plan has no anchor. */
export function planToGeo(point: PlanPoint, frame: PlanFrame): GeoPoint | null {
  if (frame.anchor === null) return null
  const { latM, lonM } = degreeLengthsM(frame.anchor.latDeg)
  const east = sheetDirection(90, frame.upAzimuthDeg)
  const north = sheetDirection(0, frame.upAzimuthDeg)
  const eastFt = point.xFt * east.x + point.yFt * east.y
  const northFt = point.xFt * north.x + point.yFt * north.y
  return {
    latDeg: frame.anchor.latDeg + (northFt * FOOT_M) / latM,
    lonDeg: halfTurn(frame.anchor.lonDeg + (eastFt * FOOT_M) / lonM),
  }
}

/** Degrees of longitude brought into -180 to 180, so that a plan can lie across the line where they jump. */
function halfTurn(deg: number): number {
  if (deg >= -180 && deg <= 180) return deg
  const wrapped = wrapDegrees(deg)
  return wrapped > 180 ? wrapped - 360 : wrapped
}
