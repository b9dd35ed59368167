import type { FindingId, JobId } from '../../app/job/ids.ts'
import type { FindingDraft } from './finding-draft.ts'

/** A form that was left with changes, and what it started with. */
export interface HeldForm {
  readonly id: FindingId | null
  readonly start: FindingDraft
  readonly draft: FindingDraft
}

const held = new Map<JobId, HeldForm>()

/** Keeps a job's changed form while its person looks at another workspace; null when there is nothing to keep. */
export function holdForm(jobId: JobId, form: HeldForm | null): void {
  if (form === null) held.delete(jobId)
  else held.set(jobId, form)
}

/** The form that was left with changes in a job; null when there is none. */
export function heldForm(jobId: JobId): HeldForm | null {
  return held.get(jobId) ?? null
}
