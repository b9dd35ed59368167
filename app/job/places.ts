import { z } from 'zod'

/** A point on the roof plan, feet from the plan's origin: x to the right, y up the sheet. */
export const planPointSchema = z.object({
  xFt: z.number().min(-10_000).max(10_000),
  yFt: z.number().min(-10_000).max(10_000),
})
export type PlanPoint = z.output<typeof planPointSchema>

/** A point on the earth, WGS84 degrees, north and east positive. */
export const geoPointSchema = z.object({
  latDeg: z.number().min(-90).max(90),
  lonDeg: z.number().min(-180).max(180),
})
export type GeoPoint = z.output<typeof geoPointSchema>

/** Degrees clockwise from true north, 0 up to but not including 360. */
export const azimuthDegSchema = z.number().min(0).lt(360)

/** How the plan sheet lies on the earth. */
export const planFrameSchema = z.object({
  /** Azimuth of the sheet's "up" direction. 0 when the plan is drawn north-up. */
  upAzimuthDeg: azimuthDegSchema.default(0),
  /** Where the plan's origin is, when known. */
  anchor: geoPointSchema.nullable().default(null),
})
export type PlanFrame = z.output<typeof planFrameSchema>
