import type { PacketProblem } from '../../packet/problem.ts'
import { readingLabel } from '../reading-label.ts'
import { problem, type Check } from './check.ts'

/** Readings that can't be weighed: lift or force not recorded, or on no facet. */
export const checkReadings: Check = ({ readings, facets }) =>
  readings.flatMap((reading) => {
    const label = readingLabel(reading.number)
    const place = { kind: 'reading', id: reading.id } as const
    const problems: PacketProblem[] = []
    const add = (check: string, weight: PacketProblem['weight'], sentence: string) =>
      problems.push(problem(check, { weight, sentence, place }))
    if (reading.forceLbf === null) {
      add('reading-no-force', 'mend', `${label} has no force, so its lift can’t be weighed.`)
    }
    if (reading.liftIn === null) add('reading-no-lift', 'mend', `${label} has no lift.`)
    if (reading.facetId === null) {
      add('reading-no-facet', 'notice', `${label} is on no facet.`)
    } else if (!facets.some(({ id }) => id === reading.facetId)) {
      add(
        'reading-facet-gone',
        'blocking',
        `${label} is on a facet that is no longer on the plan. Choose its facet again.`,
      )
    }
    return problems
  })
