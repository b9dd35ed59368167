import { z } from 'zod'
import type { PlanPoint } from '../job/places.ts'
import type { Zone } from '../roof/zones/edition.ts'
import type { JobZones } from '../roof/zones/job-zones.ts'
import { zoneOf } from '../roof/zones/zone-of.ts'

/** Areas that a sample is drawn from, in the order of a table. They are the zones of the plan, in plain words. */
export const roofAreas = ['field', 'edge', 'corner', 'ridge'] as const satisfies readonly Zone[]
export const roofAreaSchema = z.enum(roofAreas)
export type RoofArea = z.output<typeof roofAreaSchema>

/** What an area is called. */
export const roofAreaLabels = {
  field: 'Field',
  edge: 'Edge',
  corner: 'Corner',
  ridge: 'Ridge or hip',
} as const satisfies Record<RoofArea, string>

/** The area of a place and where it comes from: the pin on drawn zones, or a person's choice. */
export type PlacedArea =
  | { readonly kind: 'by-pin'; readonly area: RoofArea }
  | { readonly kind: 'chosen'; readonly area: RoofArea }
  | { readonly kind: 'unknown' }

/** The area of a reading: by its pin where the zones are drawn there, else as a person chose it. */
export function areaOfReading(
  reading: { readonly at: PlanPoint | null; readonly area: RoofArea | null },
  zones: JobZones,
): PlacedArea {
  const piece = reading.at === null || zones.kind !== 'drawn' ? null : zoneOf(zones, reading.at)
  if (piece !== null) return { kind: 'by-pin', area: piece.zone }
  return reading.area === null ? { kind: 'unknown' } : { kind: 'chosen', area: reading.area }
}
