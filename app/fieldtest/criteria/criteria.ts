import type { FieldSurvey } from '../survey.ts'
import type { Criterion } from './criterion.ts'
import { protocolMechanical, protocolMortarAdhesive } from './florida-field-protocol.ts'
import { handLift } from './hand-lift.ts'

/** Criteria that come with the program, reviewed, in the order of a list. Own ones stand beside them, never in their place. */
export const shippedCriteria: readonly Criterion[] = [handLift, protocolMortarAdhesive, protocolMechanical]

/** Every criterion that a survey can choose: the shipped ones and its own. */
export function criteriaOf(survey: Pick<FieldSurvey, 'ownCriteria'>): readonly Criterion[] {
  const own = survey.ownCriteria.map((criterion): Criterion => ({
    ...criterion,
    key: ownKey(criterion.key),
    status: 'entered by the office',
    use: 'anyone',
  }))
  return [...shippedCriteria, ...own]
}

/** Key by which a survey chooses one of its own criteria; it can't meet a shipped one's. */
export function ownKey(key: string): string {
  return `own-${key}`
}

/** True when the survey says which approved agency tested, under which approval, and names its report. */
export function isAgencyTest({ agency }: Pick<FieldSurvey, 'agency'>): boolean {
  return [agency.name, agency.approval, agency.report].every((part) => part.trim() !== '')
}

/** The criterion that readings are held against. The protocol's need an approved agency; without one the hand-lift survey's rule stands. */
export function chosenCriterion(survey: Pick<FieldSurvey, 'ownCriteria' | 'agency' | 'criterionKey'>): Criterion {
  const found = criteriaOf(survey).find(({ key }) => key === survey.criterionKey)
  if (found === undefined || (found.use === 'approved-agency' && !isAgencyTest(survey))) return handLift
  return found
}
