import type { CoveringGroup } from '../../evidence/catalog/entries.ts'
import type { ComponentKey } from '../../evidence/catalog/keys.ts'
import type { Cue } from '../cue.ts'
import type { Draft, DraftPlace, Read } from '../draft.ts'
import type { PlaceResolver } from '../places/resolve-place.ts'
import type { SaidWhere } from '../read-narration.ts'
import type { Sign } from '../words/condition-words.ts'
import type { SpokenRange, SpokenWord } from '../words/spoken-words.ts'
import type { Span } from './quantities.ts'

/** A draft in the making; null once it was taken back. */
export interface HeldDraft {
  draft: Draft | null
  readonly sign: Sign
  /** Number of the sentence that spoke of it last. */
  sentence: number
  /** End of the cue that spoke of it last. */
  endMs: number
}

/** How far the reading is, and what earlier sentences leave to the next. */
export interface Reading {
  readonly cues: readonly Cue[]
  readonly resolver: PlaceResolver
  readonly group: CoveringGroup
  /** What misheard words were taken for. */
  readonly heard: Map<string, string | null>
  readonly drafts: HeldDraft[]
  readonly places: SaidWhere[]
  part: ComponentKey | null
  /** True when that part was spoken of as one piece, which "it" then means. */
  isOnePart: boolean
  lastEdge: 'ridge' | 'hip' | null
  place: Read<DraftPlace> | null
  /** The draft spoken of last. */
  last: HeldDraft | null
  sentence: number
}

/** Where words stand in their cues: one range for each cue that they touch. */
export function rangesOf(words: readonly SpokenWord[], spans: readonly Span[]): readonly SpokenRange[] {
  const ranges: { cue: number; from: number; to: number }[] = []
  for (const { at, length } of spans.toSorted((a, b) => a.at - b.at)) {
    let open: { cue: number; from: number; to: number } | null = null
    for (const word of words.slice(at, at + length)) {
      if (open === null || open.cue !== word.cue) {
        open = { cue: word.cue, from: word.from, to: word.to }
        ranges.push(open)
      } else open.to = Math.max(open.to, word.to)
    }
  }
  return ranges.filter(
    (range, i) => ranges.findIndex((other) => other.cue === range.cue && other.from === range.from) === i,
  )
}

/** The text of ranges, joined. */
export function textOf(cues: readonly Cue[], ranges: readonly SpokenRange[]): string {
  return ranges.map(({ cue, from, to }) => cues[cue]?.text.slice(from, to) ?? '').join(' ')
}
