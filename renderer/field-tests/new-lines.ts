import type { HandCheck, TestSquare } from '../../app/fieldtest/survey.ts'
import { newLineId } from './new-line-id.ts'

/** A hand check to fill in, on the place of the one before it. */
export function newHandCheck(before: HandCheck | undefined): HandCheck {
  const { facetId = null, area = null, by = '' } = before ?? {}
  return { id: newLineId(), facetId, area, checked: 0, loose: 0, tested: 0, by, photoIds: [], note: '' }
}

/** A test square to fill in, on the facet of the one before it. */
export function newTestSquare(before: TestSquare | undefined): TestSquare {
  return { id: newLineId(), facetId: before?.facetId ?? null, at: null, counts: [], photoIds: [], note: '' }
}
