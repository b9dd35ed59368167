import type { Finding } from '../evidence/finding.ts'
import type { FindingId } from '../job/ids.ts'
import type { Zone } from '../roof/zones/edition.ts'
import { findingZone } from '../roof/zones/finding-zone.ts'
import type { JobZones } from '../roof/zones/job-zones.ts'

interface Known {
  readonly place: string
  readonly zone: Zone | null
}

/** Looking a pin up takes a while, and every edit of a job asks for all pins again. */
const known = new WeakMap<JobZones, Map<FindingId, Known>>()

/** The zone that a finding lies in, or most of it; null where its pin does not say. Looked up once for each place of the pin. */
export function zoneOfFinding(finding: Pick<Finding, 'id' | 'pin' | 'facetId'>, zones: JobZones): Zone | null {
  const held = known.get(zones) ?? new Map<FindingId, Known>()
  known.set(zones, held)
  const place = JSON.stringify([finding.facetId, finding.pin])
  const before = held.get(finding.id)
  if (before?.place === place) return before.zone
  const zone = mostly(finding, zones)
  held.set(finding.id, { place, zone })
  return zone
}

function mostly(finding: Pick<Finding, 'pin' | 'facetId'>, zones: JobZones): Zone | null {
  const found = findingZone(finding, zones)
  if (found.kind === 'in') return found.zone
  return found.kind === 'shared' ? (found.shares[0]?.zone ?? null) : null
}
