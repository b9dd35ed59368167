import type { Anchor, HeadingBlock, Text } from '../../../../app/packet/document.ts'
import type { PhotoId } from '../../../../app/job/ids.ts'
import type { Paper } from '../paper.ts'
import type { TextStyle } from '../text/text-style.ts'
import type { TextLine, Typesetter } from '../text/typeset.ts'
import type { Setting } from './setting.ts'
import type { OutlineEntry, Strip, StructureStep } from './strip.ts'
import type { StripContent, TextBox } from './strip-content.ts'

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
  /** How close the section is set. */
  readonly setting: Setting
}

/** A strip that a page may begin with and that nothing is known of but its content. */
export function plainStrip(
  measuring: Measuring,
  content: StripContent,
  size: { heightPt: number; stretchPt?: number; gapBeforePt: number },
): Strip {
  return {
    heightPt: size.heightPt,
    stretchPt: size.stretchPt ?? 0,
    gapBeforePt: size.gapBeforePt,
    breakBefore: 'free',
    repeat: null,
    content,
    structure: measuring.within,
    anchors: [],
    outline: null,
  }
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
