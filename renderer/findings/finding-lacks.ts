import type { JobSnapshot } from '../../app/contract/jobs.ts'
import { conditions } from '../../app/evidence/catalog/conditions.ts'
import type { PhotoRole } from '../../app/evidence/catalog/keys.ts'
import { checkFindings } from '../../app/evidence/coverage/findings.ts'
import { findingSchema, type MeasureKey } from '../../app/evidence/finding.ts'
import type { FindingId } from '../../app/job/ids.ts'
import { type FindingDraft, findingOfDraft } from './finding-draft.ts'

/** What a form still lacks before a reader would be content. */
export interface FindingLacks {
  /** As the packet's problem list would say it, without the finding's number. */
  readonly sentences: readonly string[]
  /** Photo roles that the condition asks for and no attached photo has. */
  readonly roles: readonly PhotoRole[]
  /** Measurements that the condition asks for and no row has. */
  readonly measures: readonly MeasureKey[]
}

/** Stands in for the identity of a finding that is not saved yet. */
const UNSAVED = 'unsaved'

/** Checks a form as the packet's problem list will, and against what the catalog asks of its condition. */
export function findingLacks(draft: FindingDraft, id: FindingId | null, job: JobSnapshot): FindingLacks {
  const asked = draft.condition === null ? null : conditions[draft.condition]
  const roles = new Set(draft.photos.map(({ role }) => role))
  const measured = new Set(draft.measurements.map(({ what }) => what))
  return {
    sentences: problemSentences(draft, id, job),
    roles: asked?.photoRoles.filter((role) => !roles.has(role) && !(role === 'close' && roles.has('scale'))) ?? [],
    measures: asked?.measures.filter((measure) => !measured.has(measure)) ?? [],
  }
}

function problemSentences(draft: FindingDraft, id: FindingId | null, job: JobSnapshot): readonly string[] {
  const saved = findingOfDraft(draft)
  if ('faults' in saved) return []
  const finding = findingSchema.parse({ ...saved.finding, id: id ?? UNSAVED, number: 1 })
  return checkFindings({ ...job, findings: [finding] }).map(({ sentence }) => sentence.replace(/^F-1 /, ''))
}
