import { EmptyState } from '../ui/empty-state.tsx'

/** Tallies, pattern, share of work and repair. */
export function AssessmentWorkspace() {
  return <EmptyState title="Assessment" sentence="Draw the roof and write findings first." />
}
