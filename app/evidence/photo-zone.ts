import type { Job } from '../job/job.ts'
import type { GeoPoint } from '../job/places.ts'
import type { JobSheet } from '../job/sheet.ts'
import type { PhotoFile } from './photo.ts'
import { zoneAt } from './zone-at.ts'

/** Where a photo was taken, as far as anything says: its own position, else the house's, else the plan's anchor; or null. */
export function placeOfPhoto({ position }: Pick<PhotoFile, 'position'>, { sheet, frame }: Job): GeoPoint | null {
  return position ?? sheet.property.position ?? frame.anchor
}

/** The zones that a photo's local time may be in, best first: that of its place, then the job's; IANA names or null. */
export function zonesOfPhoto(
  { position }: Pick<PhotoFile, 'position'>,
  { property }: JobSheet,
): { readonly placeZone: string | null; readonly jobZone: string | null } {
  const place = position ?? property.position
  return {
    placeZone: place === null ? null : zoneAt(place),
    jobZone: property.timeZone === '' ? null : property.timeZone,
  }
}

/** The zone that a photo's local time is read in where its camera wrote no offset. */
export function zoneOfPhoto(file: Pick<PhotoFile, 'position'>, sheet: JobSheet): string | null {
  const { placeZone, jobZone } = zonesOfPhoto(file, sheet)
  return placeZone ?? jobZone
}
