import { TYPE, type TextStyle } from '../text/text-style.ts'

/** How close the blocks of a section are set. */
export interface Setting {
  readonly body: TextStyle
  readonly cell: TextStyle
  readonly label: TextStyle
  /** Above and below the text of a table's row. */
  readonly rowPadPt: number
  /** Above and below the text of a row of facts. */
  readonly factsPadPt: number
  readonly itemGapPt: number
  /** Above a table. */
  readonly tableGapPt: number
  /** Lines longer than this are hard to read; tables and pictures use the full width. */
  readonly readableWidthPt: number
  /** Part of the usual space above headings. */
  readonly headingGap: number
}

/** As most sections are set. */
export const USUAL: Setting = {
  body: TYPE.body,
  cell: TYPE.cell,
  label: TYPE.label,
  rowPadPt: 3.5,
  factsPadPt: 2.5,
  itemGapPt: 3,
  tableGapPt: 9,
  readableWidthPt: 468,
  headingGap: 1,
}

/** Closer, for a section that should stay on one page; the size of its text keeps to the limits of running text. */
export const COMPACT: Setting = {
  body: { ...TYPE.body, sizePt: 9.5, leadingPt: 11.6 },
  cell: { ...TYPE.cell, leadingPt: 11.3 },
  label: { ...TYPE.label, leadingPt: 12 },
  rowPadPt: 0.5,
  factsPadPt: 1,
  itemGapPt: 0.5,
  tableGapPt: 3,
  readableWidthPt: 504,
  headingGap: 0.3,
}
