import { isAgencyTest, criteriaOf } from '../../fieldtest/criteria/criteria.ts'
import type { PacketProblem } from '../../packet/problem.ts'
import { problem, type Check } from './check.ts'

/** Hand checks that stand nowhere, and a criterion that the survey may not use. */
export const checkFieldTests: Check = ({ survey }) => {
  const problems: PacketProblem[] = []
  const add = (check: string, weight: PacketProblem['weight'], sentence: string) =>
    problems.push(problem(check, { weight, sentence, place: { kind: 'field-tests' } }))
  const unplaced = survey.checks.filter(({ facetId, area }) => facetId === null || area === null).length
  if (unplaced > 0) {
    add(
      'hand-check-place',
      'mend',
      `${unplaced} of ${survey.checks.length} hand checks have no facet or no area, so they count for none.`,
    )
  }
  if (survey.squares.some(({ facetId }) => facetId === null)) {
    add('test-square-facet', 'mend', 'A test square is on no facet, so its counts say nothing of any.')
  }
  const chosen = criteriaOf(survey).find(({ key }) => key === survey.criterionKey)
  if (chosen?.use === 'approved-agency' && !isAgencyTest(survey)) {
    add(
      'protocol-agency',
      'mend',
      'The Florida field protocol needs an approved agency with its approval and report. Until then readings are held against the hand-lift survey.',
    )
  }
  return problems
}
