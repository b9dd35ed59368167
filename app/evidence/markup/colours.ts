import { z } from 'zod'

/** Colours of marks. A colour is never alone: its line pattern and its edge tell it apart without seeing the hue. */
export const markColourSchema = z.enum(['vermilion', 'yellow', 'sky-blue', 'bluish-green'])
export type MarkColour = z.output<typeof markColourSchema>

interface MarkLook {
  readonly label: string
  readonly hex: string
  /** Drawn round every stroke and letter, so that it reads on light and dark ground. */
  readonly edgeHex: string
  /** Dashes and gaps in widths of the stroke; empty for a whole line. */
  readonly dash: readonly number[]
  readonly pattern: string
}

/**
 * Four of the eight colours that people with any common kind of colour vision tell apart. Source: Okabe and Ito, "Color
 * Universal Design", 2002, revised 2008; printed again in Wong, "Points of view: Color blindness", Nature Methods 8 (2011) 441.
 */
export const markLooks = {
  vermilion: { label: 'Vermilion', hex: '#D55E00', edgeHex: '#FFFFFF', dash: [], pattern: 'whole line' },
  yellow: { label: 'Yellow', hex: '#F0E442', edgeHex: '#000000', dash: [5, 2], pattern: 'long dashes' },
  'sky-blue': { label: 'Sky blue', hex: '#56B4E9', edgeHex: '#000000', dash: [2, 1.6], pattern: 'short dashes' },
  'bluish-green': {
    label: 'Bluish green',
    hex: '#009E73',
    edgeHex: '#FFFFFF',
    dash: [5, 1.6, 1.4, 1.6],
    pattern: 'dash and dot',
  },
} as const satisfies Record<MarkColour, MarkLook>
