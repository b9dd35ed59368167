import type { CoveringGroup } from '../evidence/catalog/entries.ts'
import type { CoveringClass } from '../job/sheet.ts'
import type { FacetId } from '../job/ids.ts'
import type { Cue } from './cue.ts'
import type { Draft } from './draft.ts'
import { type NamedHouse, placeResolver } from './places/resolve-place.ts'
import { readSentence } from './reading/read-sentence.ts'
import type { Reading } from './reading/reading.ts'
import { spokenSentences } from './words/spoken-words.ts'

/** A change of place in the narration: from here on, things are there. */
export interface SaidWhere {
  readonly cue: number
  /** From the start of the recording. */
  readonly startMs: number
  readonly words: string
  /** Likeliest first; empty where the words don't lead to the plan. */
  readonly facetIds: readonly FacetId[]
  /** True when the speaker is on the ground. */
  readonly isGround: boolean
}

/** What a narration says: drafts of findings in the order in which they were spoken, and where the speaker was. */
export interface NarrationReading {
  readonly drafts: readonly Draft[]
  readonly places: readonly SaidWhere[]
}

/** What the reading is done against: the house's plan, and its covering. */
export interface ReadAgainst {
  readonly house: NamedHouse
  readonly covering: CoveringClass
}

const GROUPS = {
  'concrete-tile': 'tile',
  'clay-tile': 'tile',
  'asphalt-shingle': 'shingle',
  'metal-panel': 'metal',
  other: 'tile',
  'not-stated': 'tile',
} as const satisfies Record<CoveringClass, CoveringGroup>

/**
 * Reads narration for findings. A grammar of the trade's phrases: parts, conditions, counts, measures, degrees and places in
 * everyday words, put together by clauses; negation, questions, plans, hearsay and what is taken back give no draft; causes
 * and comparisons stay opinion text. The same cues against the same house always give the same drafts.
 *
 * @param cues in order of their start
 */
export function readNarration(cues: readonly Cue[], against: ReadAgainst): NarrationReading {
  const work = readingNarration(cues, against)
  for (;;) {
    const step = work.next()
    if (step.done === true) return step.value
  }
}

/** What `readNarration` does, a sentence at a time, for those who have other things to do meanwhile. */
export function* readingNarration(
  cues: readonly Cue[],
  { house, covering }: ReadAgainst,
): Generator<void, NarrationReading> {
  const reading: Reading = {
    cues,
    resolver: placeResolver(house),
    group: GROUPS[covering],
    heard: new Map(),
    drafts: [],
    places: [],
    part: null,
    isOnePart: false,
    lastEdge: null,
    place: null,
    last: null,
    sentence: 0,
  }
  for (const sentence of spokenSentences(cues)) {
    reading.sentence += 1
    readSentence(reading, sentence)
    yield
  }
  return { drafts: reading.drafts.flatMap(({ draft }) => (draft === null ? [] : [draft])), places: reading.places }
}
