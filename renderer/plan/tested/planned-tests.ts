import { useMemo } from 'react'
import { readingLabel } from '../../../app/evidence/reading-label.ts'
import type { PlanPoint } from '../../../app/job/places.ts'
import { useJob } from '../../state/job-state.tsx'

/** Where tiles were lifted and squares were counted, as far as a person pinned them on the plan. */
export interface PlannedTests {
  readonly readings: readonly { readonly id: string; readonly label: string; readonly at: PlanPoint }[]
  readonly squares: readonly { readonly id: string; readonly at: PlanPoint }[]
}

/** The open job's pinned readings and test squares. */
export function usePlannedTests(): PlannedTests {
  const { readings, survey } = useJob()
  return useMemo(
    () => ({
      readings: readings.flatMap(({ id, number, at }) =>
        at === null ? [] : [{ id, label: readingLabel(number).slice(2), at }],
      ),
      squares: survey.squares.flatMap(({ id, at }) => (at === null ? [] : [{ id, at }])),
    }),
    [readings, survey],
  )
}
