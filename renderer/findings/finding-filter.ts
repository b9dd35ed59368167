import { type Finding, findingLabel, type FindingKind } from '../../app/evidence/finding.ts'
import type { FacetId } from '../../app/job/ids.ts'
import { howMuchWords, whatWords } from '../../app/packet/finding-words.ts'

/** Which findings the table shows. Every condition that is set must hold. */
export interface FindingFilter {
  readonly kind: FindingKind | null
  readonly facet: FacetId | null
  readonly onlyLacking: boolean
  /** Words that must stand in the number, the catalog's words, the observation or the place. */
  readonly words: string
}

/** The filter that shows every finding. */
export const EVERY_FINDING: FindingFilter = { kind: null, facet: null, onlyLacking: false, words: '' }

/** The findings that a filter lets through. */
export function filteredFindings(
  findings: readonly Finding[],
  filter: FindingFilter,
  lacks: ReadonlyMap<string, number>,
): readonly Finding[] {
  const words = filter.words
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '')
  return findings.filter(
    (finding) =>
      (filter.kind === null || finding.kind === filter.kind) &&
      (filter.facet === null || finding.facetId === filter.facet) &&
      (!filter.onlyLacking || lacks.has(finding.id)) &&
      words.every((word) => textOf(finding).includes(word)),
  )
}

function textOf(finding: Finding): string {
  const { number, observation, placeWords } = finding
  return [findingLabel(number), whatWords(finding), howMuchWords(finding), observation, placeWords]
    .join(' ')
    .toLowerCase()
}
