import type { Facet } from '../../roof/facet.ts'
import type { PacketProblem } from '../../packet/problem.ts'
import type { CaseFile } from '../case-file.ts'
import { photoLabel } from '../photo.ts'
import { problem, type Check } from './check.ts'

/** Facets without an overview photo, with an unknown or unexplained inspected share, or with a letter that another one has. */
export const checkFacets: Check = (caseFile) => {
  if (caseFile.facets.length === 0) {
    return [
      problem('plan-empty', {
        weight: 'mend',
        sentence: 'The roof plan has no facets. Draw at least the slopes that were looked at.',
        place: { kind: 'plan' },
      }),
    ]
  }
  const seen = facetsWithOverview(caseFile)
  return caseFile.facets.flatMap((facet) => [
    ...sameLetter(facet, caseFile.facets),
    ...(seen.has(facet.id) ? [] : [noOverview(facet, caseFile)]),
    ...inspectedShare(facet),
  ])
}

function facetsWithOverview({ photos, findings }: CaseFile): ReadonlySet<string> {
  const included = photos.filter(({ tags }) => tags.leftOutBecause === null)
  const byId = new Map(included.map((photo) => [photo.id, photo]))
  const tagged = included.flatMap(({ tags }) =>
    tags.role === 'overview' && tags.facetId !== null ? [tags.facetId] : [],
  )
  const shown = findings.flatMap((finding) =>
    finding.photos.flatMap(({ photoId, role }) => {
      const photo = byId.get(photoId)
      if (photo === undefined || role !== 'overview') return []
      const facetId = photo.tags.facetId ?? finding.facetId
      return facetId === null ? [] : [facetId]
    }),
  )
  return new Set([...tagged, ...shown])
}

/** Any photo of the slope that plays no part yet may well be the overview that lacks. */
function noOverview(facet: Facet, { photos, findings }: CaseFile): PacketProblem {
  const ofFacet = new Set(
    findings
      .filter(({ facetId }) => facetId === facet.id)
      .flatMap((finding) => finding.photos.map((one) => one.photoId)),
  )
  const own = photos.filter(
    ({ id, tags }) => tags.leftOutBecause === null && (tags.facetId === facet.id || ofFacet.has(id)),
  )
  const candidate = own.find(({ tags }) => tags.role === null)
  const label = candidate === undefined ? '' : photoLabel(candidate.number)
  return problem('facet-no-overview', {
    weight: 'mend',
    sentence:
      own.length === 0
        ? `No photo shows facet ${facet.letter} at all. Tag those that do, one of them as an overview of the whole slope.`
        : `Facet ${facet.letter} has no overview photo. Tag one that shows the whole slope.`,
    place: { kind: 'facet', id: facet.id },
    fixes:
      candidate === undefined
        ? []
        : [
            {
              kind: 'tag-photo',
              label: `Make ${label} the overview of facet ${facet.letter}`,
              photoId: candidate.id,
              set: { role: 'overview' },
            },
          ],
  })
}

function sameLetter(facet: Facet, facets: readonly Facet[]): readonly PacketProblem[] {
  const first = facets.find(({ letter }) => letter.toLowerCase() === facet.letter.toLowerCase())
  if (first === undefined || first.id === facet.id) return []
  return [
    problem('facet-same-letter', {
      weight: 'blocking',
      sentence: `Two facets are called ${facet.letter}, so a reader can’t tell them apart. Rename one.`,
      place: { kind: 'facet', id: facet.id },
    }),
  ]
}

function inspectedShare({ id, letter, inspected }: Facet): readonly PacketProblem[] {
  const place = { kind: 'facet', id } as const
  if (inspected.percent === null) {
    const sentence = `It is not said how much of facet ${letter} was looked at. Without that, "nothing found" means nothing.`
    return [problem('facet-share-unknown', { weight: 'mend', sentence, place })]
  }
  if (inspected.percent < 100 && inspected.note.trim() === '') {
    const sentence = `${inspected.percent} % of facet ${letter} was looked at; say why not all of it.`
    return [problem('facet-share-no-reason', { weight: 'notice', sentence, place })]
  }
  return []
}
