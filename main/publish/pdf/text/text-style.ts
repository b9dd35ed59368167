import type { Inline } from '../../../../app/packet/document.ts'
import type { Face } from './font-files.ts'

/** How a piece of text is set. */
export interface TextStyle {
  readonly sizePt: number
  /** From base line to base line. */
  readonly leadingPt: number
  readonly face: Face
  readonly colour: string
}

export const INK = '#1C1C1C'
export const QUIET = '#5A5A5A'
/** Links, and the hairline under them: dark enough to read in grey. */
const LINK = '#0B4F7D'
export const HAIRLINE = '#BDBDBD'
export const CAUTION = '#B34A00'
export const WATERMARK = '#EFEFEF'

/** Every size of type in a packet, points. Body within 9.5 to 10.5, nothing under 8. */
export const TYPE = {
  h1: { sizePt: 19, leadingPt: 24, face: 'strong', colour: INK },
  h2: { sizePt: 13, leadingPt: 17, face: 'strong', colour: INK },
  h3: { sizePt: 10.5, leadingPt: 14, face: 'strong', colour: INK },
  lead: { sizePt: 12, leadingPt: 17, face: 'regular', colour: INK },
  body: { sizePt: 10, leadingPt: 14, face: 'regular', colour: INK },
  small: { sizePt: 8.5, leadingPt: 11.5, face: 'regular', colour: QUIET },
  caution: { sizePt: 9.5, leadingPt: 13, face: 'regular', colour: INK },
  label: { sizePt: 9.5, leadingPt: 14, face: 'regular', colour: QUIET },
  cell: { sizePt: 9.5, leadingPt: 12.5, face: 'regular', colour: INK },
  columnTitle: { sizePt: 8.5, leadingPt: 11, face: 'strong', colour: QUIET },
  caption: { sizePt: 9.5, leadingPt: 12.5, face: 'regular', colour: INK },
  captionLine: { sizePt: 8.2, leadingPt: 10.8, face: 'regular', colour: QUIET },
  running: { sizePt: 8, leadingPt: 10, face: 'regular', colour: QUIET },
} as const satisfies Record<string, TextStyle>

/** The style of an inline inside a text of a given style. */
export function inlineStyle(base: TextStyle, inline: Inline): TextStyle {
  const linked = inline.link === undefined ? base : { ...base, colour: LINK }
  if (inline.style === undefined) return linked
  switch (inline.style) {
    case 'strong':
      return {
        ...linked,
        face: 'strong',
        colour: base.colour === QUIET && inline.link === undefined ? INK : linked.colour,
      }
    case 'emphasis':
      return { ...linked, face: 'italic' }
    case 'mono':
      return { ...linked, face: 'mono', sizePt: Math.max(8, base.sizePt * 0.85) }
    case 'quiet':
      return { ...linked, colour: inline.link === undefined ? QUIET : LINK }
  }
}
