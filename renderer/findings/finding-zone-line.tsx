import { useMemo } from 'react'
import type { Finding } from '../../app/evidence/finding.ts'
import { findingZone, findingZoneWords } from '../../app/roof/zones/finding-zone.ts'
import { ZoneLacks } from '../plan/zones/zone-lacks.tsx'
import { useRoofZones } from '../state/roof-zones.ts'

/** The zone that a finding's pin lies in, or what is missing before that can be said. */
export function FindingZoneLine({ finding }: { finding: Finding }) {
  const zones = useRoofZones()
  const words = useMemo(() => findingZoneWords(findingZone(finding, zones)), [finding, zones])
  return (
    <section aria-label="Zone">
      {zones.kind === 'drawn' ? (
        <p>
          <strong>Zone.</strong> {words}
        </p>
      ) : (
        <ZoneLacks zones={zones} />
      )}
    </section>
  )
}
