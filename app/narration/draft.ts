import type { ComponentKey, ConditionKey } from '../evidence/catalog/keys.ts'
import type { Extent, Finding, FindingKind, Measurement } from '../evidence/finding.ts'
import type { FacetId } from '../job/ids.ts'
import type { SpokenRange } from './words/spoken-words.ts'

/** A field of a draft, and the words that it was read from; none where the field goes without saying. */
export interface Read<T> {
  readonly value: T
  readonly from: readonly SpokenRange[]
}

/** Where something was said to be. */
export interface DraftPlace {
  /** As spoken. */
  readonly words: string
  /** Facets that the words can mean, likeliest first. Only one of them is a reading; several are a question. */
  readonly facetIds: readonly FacetId[]
}

/** What a piece of narration seems to report. A person accepts, edits or drops it; nothing in it is a finding before. */
export interface Draft {
  /** The words by which the draft is known again when the same narration is read anew. */
  readonly key: string
  /** When its first words were said, from the start of the recording. */
  readonly startMs: number
  readonly kind: FindingKind
  readonly component: Read<ComponentKey>
  /** Other parts that the same words can name. */
  readonly otherComponents: readonly ComponentKey[]
  readonly condition: Read<ConditionKey>
  /** Other conditions that the same words can stand for. */
  readonly otherConditions: readonly ConditionKey[]
  readonly extent: Read<Extent> | null
  readonly degree: Read<string> | null
  readonly crackPath: Finding['crackPath']
  readonly measurements: readonly Read<Measurement>[]
  readonly place: Read<DraftPlace> | null
  /** What was said of causes and comparisons; never a fact. */
  readonly opinion: Read<string> | null
  /** The sentences it comes from, word for word. */
  readonly spoken: Read<string>
  /** Its cues in order. */
  readonly cues: readonly number[]
}
