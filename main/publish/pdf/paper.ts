import type { PacketDocument } from '../../../app/packet/document.ts'

/** A page and where its content stands, points from the top left corner. */
export interface Paper {
  readonly widthPt: number
  readonly heightPt: number
  readonly leftPt: number
  readonly topPt: number
  readonly contentWidthPt: number
  readonly contentHeightPt: number
  /** Base line of the running header, and the hairline under it. */
  readonly headerBaselinePt: number
  readonly headerRulePt: number
  readonly scales: 'us' | 'metric'
}

const SIDE_PT = 54
/** Three quarters of an inch, and the running header above the text. */
const TOP_PT = 70
const BOTTOM_PT = 54

/** US Letter (8.5 by 11 in) and A4 (210 by 297 mm, ISO 216), in points. */
const SIZES = {
  letter: { widthPt: 612, heightPt: 792, scales: 'us' },
  a4: { widthPt: 595.28, heightPt: 841.89, scales: 'metric' },
} as const

/** Geometry of a page. */
export function paperOf(paper: PacketDocument['paper']): Paper {
  const size = SIZES[paper]
  return {
    ...size,
    leftPt: SIDE_PT,
    topPt: TOP_PT,
    contentWidthPt: size.widthPt - 2 * SIDE_PT,
    contentHeightPt: size.heightPt - TOP_PT - BOTTOM_PT,
    headerBaselinePt: 44,
    headerRulePt: 51,
  }
}
