import type { Draft } from '../../app/narration/draft.ts'

/** The fields of a draft whose words are told apart, in the order in which they win where words serve two. */
export const wordFields = ['component', 'condition', 'extent', 'measurement', 'place', 'degree', 'opinion'] as const
export type WordField = (typeof wordFields)[number]

export const wordFieldLabels = {
  component: 'Component',
  condition: 'Condition',
  extent: 'How much',
  measurement: 'Measured',
  place: 'Place',
  degree: 'Degree',
  opinion: 'Opinion',
} as const satisfies Record<WordField, string>

/** A stretch of a cue's text, and the field that was read from it. */
export interface TextPiece {
  readonly text: string
  readonly field: WordField | null
}

/** Cuts a cue's text where fields of its drafts begin and end. */
export function textPieces(text: string, cue: number, drafts: readonly Draft[]): readonly TextPiece[] {
  const fieldAt: (WordField | null)[] = Array.from(text, () => null)
  const length = text.length
  for (const field of wordFields.toReversed()) {
    for (const range of drafts.flatMap((draft) => rangesOf(draft, field))) {
      if (range.cue !== cue) continue
      for (let at = range.from; at < Math.min(range.to, length); at += 1) fieldAt[at] = field
    }
  }
  const pieces: { text: string; field: WordField | null }[] = []
  for (let at = 0; at < length; at += 1) {
    const field = fieldAt[at] ?? null
    const last = pieces.at(-1)
    if (last !== undefined && last.field === field) last.text += text.charAt(at)
    else pieces.push({ text: text.charAt(at), field })
  }
  return pieces
}

function rangesOf(draft: Draft, field: WordField): Draft['spoken']['from'] {
  switch (field) {
    case 'component':
      return draft.component.from
    case 'condition':
      return draft.condition.from
    case 'extent':
      return draft.extent?.from ?? []
    case 'measurement':
      return draft.measurements.flatMap(({ from }) => from)
    case 'place':
      return draft.place?.from ?? []
    case 'degree':
      return draft.degree?.from ?? []
    case 'opinion':
      return draft.opinion?.from ?? []
  }
}
