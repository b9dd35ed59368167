import type { OtherTest } from './survey.ts'

/** What each kind of other test is called. */
export const otherTestLabels = {
  moisture: 'Moisture',
  core: 'Core',
  'cut-test': 'Cut test',
  other: 'Other',
} as const satisfies Record<OtherTest['kind'], string>
