import { useCallback } from 'react'
import type { Facet } from '../../app/roof/facet.ts'
import { facetName, houseOf } from '../../app/roof/house.ts'
import { jobZones, type JobZones } from '../../app/roof/zones/job-zones.ts'
import { useJob } from './job-state.tsx'

/** The facets as they were last asked for, and what zones and names see of them. */
let held: { readonly text: string; readonly facets: readonly Facet[] } = { text: '', facets: [] }

/** The same list for as long as shapes, slopes and names are the same: every edit of the job brings all facets anew. */
function steady(facets: readonly Facet[]): readonly Facet[] {
  const text = JSON.stringify(
    facets.map(({ id, letter, name, outline, pitchRise, downslopeAzimuthDeg }) => [
      id,
      letter,
      name,
      outline,
      pitchRise,
      downslopeAzimuthDeg,
    ]),
  )
  if (held.text !== text) held = { text, facets }
  return held.facets
}

/** The edge zones of the open job, or what they lack. Worked out once for each state of the roof. */
export function useRoofZones(): JobZones {
  const { facets, job } = useJob()
  return jobZones({
    facets: steady(facets),
    upAzimuthDeg: job.frame.upAzimuthDeg,
    property: job.sheet.property,
  })
}

/** The name of a facet: as a person gave it, else the plain words for where it is. */
export function useFacetName(): (facet: Facet) => string {
  const { facets, job } = useJob()
  const { frame, sheet } = job
  const all = steady(facets)
  return useCallback((facet) => facetName(facet, houseOf(all, frame, sheet.property)), [all, frame, sheet.property])
}
