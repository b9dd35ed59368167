import type { PhotoCard } from '../../../../app/packet/document.ts'
import type { MarkupDrawing } from '../../../../app/evidence/markup-drawing.ts'
import type { PhotoId } from '../../../../app/job/ids.ts'
import type { Plot } from '../../../../app/fieldtest/plots/plot.ts'
import type { PlanDrawing } from '../../../../app/roof/plan-drawing.ts'
import type { TextLine } from '../text/typeset.ts'

/** Text set in a width, somewhere inside a strip. */
export interface TextBox {
  readonly xPt: number
  readonly yPt: number
  readonly widthPt: number
  readonly align: 'start' | 'end'
  readonly lines: readonly TextLine[]
}

export interface LinesContent {
  readonly kind: 'lines'
  readonly box: TextBox
  /** A bullet before the first line of a list's item; a bar beside a caution. */
  readonly sign: 'bullet' | 'caution-bar' | null
}

export interface FactsRowContent {
  readonly kind: 'facts-row'
  readonly cells: readonly { readonly label: TextBox; readonly value: TextBox }[]
  readonly ruledBelow: boolean
}

export interface TableRowContent {
  readonly kind: 'table-row'
  readonly role: 'head' | 'body' | 'total'
  readonly cells: readonly TextBox[]
}

export interface PlanContent {
  readonly kind: 'plan'
  readonly drawing: PlanDrawing
  readonly alt: string
  /** Labels of the pins that links lead to here, not to another plan. */
  readonly anchoredPins: ReadonlySet<string>
}

export interface PlotContent {
  readonly kind: 'plot'
  readonly plot: Plot
  /** 1 at the plot's own size. */
  readonly scale: number
}

export interface PictureContent {
  readonly kind: 'picture'
  readonly photoId: PhotoId
  readonly marks?: MarkupDrawing
  readonly alt: string
  readonly widthToHeight: number
  /** Height of the caption with the space above it; the picture gets the rest. */
  readonly captionPt: number
  readonly caption: TextBox
}

/** One card of a row: text boxes count their y from the card's text area, under or beside the picture. */
export interface MeasuredCard {
  readonly card: PhotoCard
  readonly xPt: number
  readonly title: TextBox
  readonly lines: readonly TextBox[]
  /** Room for the small plan, or null when there is none: y as for the text boxes, or beside the picture. */
  readonly inset: {
    readonly xPt: number
    readonly yPt: number
    readonly sizePt: number
    readonly besidePicture: boolean
  } | null
}

export interface PhotoRowContent {
  readonly kind: 'photo-row'
  readonly cards: readonly MeasuredCard[]
  readonly pictureWidthPt: number
  /** Height of the text under (or beside) the pictures, so that the pictures get the rest. */
  readonly textHeightPt: number
  readonly textStands: 'below' | 'beside'
  /** Title above a picture that has its lines beside it. */
  readonly titleHeightPt: number
}

export interface SignatureContent {
  readonly kind: 'signature'
  readonly cells: readonly {
    readonly xPt: number
    readonly yPt: number
    readonly widthPt: number
    readonly value: TextBox
    readonly label: TextBox
  }[]
}

export interface ContentsRowContent {
  readonly kind: 'contents-row'
  readonly title: TextBox
  readonly anchor: string
  readonly level: 1 | 2 | 3
}

export interface RuleContent {
  readonly kind: 'rule'
}

/** What a strip can hold. */
export type StripContent =
  | LinesContent
  | FactsRowContent
  | TableRowContent
  | PlanContent
  | PlotContent
  | PictureContent
  | PhotoRowContent
  | SignatureContent
  | ContentsRowContent
  | RuleContent
