import type { Page } from 'playwright-core'
import type { ServedLibrary } from '../serve-library.ts'

/** What the steps of the work share: one window on one library. */
export interface Work {
  readonly page: Page
  readonly served: ServedLibrary
  /** The camera's card. */
  readonly card: string
  /** Where downloads and unpacked bundles go. */
  readonly desktop: string
}

/** The work at hand, once it has begun. */
export type AtWork = () => Work
