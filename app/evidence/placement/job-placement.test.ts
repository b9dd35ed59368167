import { describe, expect, it } from 'vitest'
import { aFacet, aFinding, aJob, aPhoto } from '../../../tests/builders/records.ts'
import { placementOfJob } from './job-placement.ts'

describe('what placement looks at in a job', () => {
  it('hears spoken places, but not for a photo of a finding that says its facet already', () => {
    const facets = [aFacet(), aFacet()]
    const [shown, other] = [aPhoto(), aPhoto()]
    const finding = aFinding({ facetId: facets[0]?.id ?? null, photos: [{ photoId: shown.id, role: 'close' }] })
    const said = [shown, other].map(({ id }) => ({ photoId: id, weights: [{ place: 'ground' as const, weight: 1 }] }))
    const { hints } = placementOfJob({ job: aJob(), facets, photos: [shown, other], findings: [finding] }, said)
    expect(hints).toEqual([
      { photoId: shown.id, weights: [{ place: finding.facetId, weight: 1 }] },
      { photoId: other.id, weights: [{ place: 'ground', weight: 1 }] },
    ])
  })
})
