import { findingLabel, type Finding } from '../evidence/finding.ts'

/** A finding with its exact count. */
interface ExactFinding {
  readonly finding: Finding
  readonly count: number
}

/** Findings with an exact count, their sum, and those that have none. Only exact counts are ever added. */
export function countedTogether(findings: readonly Finding[]): {
  readonly exact: readonly ExactFinding[]
  readonly rest: readonly Finding[]
  readonly count: number
} {
  const exact = findings.flatMap((finding): ExactFinding[] =>
    finding.extent.kind === 'exactly' ? [{ finding, count: finding.extent.count }] : [],
  )
  return {
    exact,
    rest: findings.filter(({ extent }) => extent.kind !== 'exactly'),
    count: exact.reduce((sum, one) => sum + one.count, 0),
  }
}

/** One piece can show more than one condition: where findings of one part share a facet, that they differ is assumed. */
export function sameFacetWords(findings: readonly Finding[]): readonly string[] {
  const facetIds = [...new Set(findings.map(({ facetId }) => facetId))]
  return facetIds.flatMap((facetId) => {
    const these = findings.filter((finding) => finding.facetId === facetId)
    return these.length < 2
      ? []
      : [
          `${these.map(({ number }) => findingLabel(number)).join(' and ')} are on one facet and are taken as different pieces; correct the count where one piece shows both.`,
        ]
  })
}
