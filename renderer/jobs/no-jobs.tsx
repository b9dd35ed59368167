import { Button } from '../ui/button.tsx'
import { EmptyState } from '../ui/empty-state.tsx'

interface NoJobsProps {
  readonly onNew: () => void
  readonly onSample: () => void
}

/** What an empty library says: how to start, and the sample. */
export function NoJobs({ onNew, onSample }: NoJobsProps) {
  return (
    <EmptyState
      title="No jobs yet"
      sentence="Drop a camera card's folder or its photos anywhere on this window to start a job. Originals are copied in and never changed."
    >
      <Button look="main" onPress={onNew}>
        New job
      </Button>
      <Button onPress={onSample}>Open a sample job</Button>
    </EmptyState>
  )
}
