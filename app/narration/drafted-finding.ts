import type { Finding } from '../evidence/finding.ts'
import { findingSchema } from '../evidence/finding.ts'
import type { NarrationId } from '../job/ids.ts'
import type { Draft } from './draft.ts'

/** What an accepted draft becomes, before it has a number. */
export type DraftedFinding = Omit<Finding, 'id' | 'number'>

const draftedSchema = findingSchema.omit({ id: true, number: true })

/**
 * The finding that a draft proposes. The observation is what was said, marked as spoken; opinions go to the note on cause
 * as spoken words, the cause itself stays not stated. A facet is filled in only where the words leave one.
 */
export function draftedFinding(draft: Draft, narrationId: NarrationId): DraftedFinding {
  const [facetId = null, ...others] = draft.place?.value.facetIds ?? []
  return draftedSchema.parse({
    kind: draft.kind,
    component: draft.component.value,
    condition: draft.condition.value,
    extent: draft.extent?.value ?? { kind: 'not-stated' },
    degree: draft.degree?.value ?? '',
    observation: `${spoken(draft.spoken.value, 7800)}${isCrackPathOpen(draft) ? ` ${CRACK_PATH_OPEN}` : ''}`,
    crackPath: draft.crackPath,
    measurements: draft.measurements.map(({ value }) => value).slice(0, 100),
    cause: { note: draft.opinion === null ? '' : spoken(draft.opinion.value, 3900) },
    facetId: others.length === 0 ? facetId : null,
    placeWords: (draft.place?.value.words ?? '').slice(0, 400),
    spoken: draft.cues.map((cue) => ({ narrationId, cue })),
  })
}

/** What a finding says of a crack whose direction nobody named. */
const CRACK_PATH_OPEN = 'The words do not say how the crack runs.'

/** True where a crack was spoken of without its path, so that its name in the catalog is only the likeliest. */
export function isCrackPathOpen({ condition, crackPath, otherConditions }: Draft): boolean {
  return condition.value === 'diagonal-crack' && crackPath === null && otherConditions.length > 0
}

/** Words as they were spoken, marked as such. */
function spoken(words: string, most: number): string {
  return `As spoken: “${words.slice(0, most)}”`
}
