import type { Anchor, HeadingBlock, Text } from '../../../../app/packet/document.ts'
import type { PhotoId } from '../../../../app/job/ids.ts'
import type { Paper } from '../paper.ts'
import type { TextStyle } from '../text/text-style.ts'
import type { TextLine, Typesetter } from '../text/typeset.ts'
import type { OutlineEntry, StructureStep } from './strip.ts'
import type { TextBox } from './strip-content.ts'

/** What measuring a block may ask for, beside the block itself. */
export interface Measuring {
  readonly paper: Paper
  readonly typesetter: Typesetter
  /** Upright sizes of pictures that are set at their own proportions; null for those that can't be shown. */
  readonly pictureSizes: ReadonlyMap<PhotoId, { readonly widthPx: number; readonly heightPx: number } | null>
  /** What the contents list. */
  readonly contents: readonly OutlineEntry[]
  /** Entries of the headings that the outline names. */
  readonly headings: ReadonlyMap<HeadingBlock, OutlineEntry>
  /** A new number for an element of the structure. */
  readonly nextId: () => number
  /** Anchors are unique in a document: the first to ask for one gets it. */
  readonly claim: (anchor: Anchor) => boolean
  /** Structure from the section down to where the block stands. */
  readonly within: readonly StructureStep[]
}

/** Sets text in a box; the box's height is the sum of its lines. */
export function textBox(
  measuring: Measuring,
  text: Text,
  box: { style: TextStyle; xPt: number; yPt: number; widthPt: number; align?: 'start' | 'end' },
): TextBox {
  const lines = measuring.typesetter.lines(text, box.style, box.widthPt)
  return { xPt: box.xPt, yPt: box.yPt, widthPt: box.widthPt, align: box.align ?? 'start', lines }
}

/** Height of lines set one under the other. */
export function linesHeight(lines: readonly TextLine[]): number {
  return lines.reduce((sum, line) => sum + line.heightPt, 0)
}

/** Plain words as a text. */
export function words(text: string): Text {
  return [{ text }]
}
