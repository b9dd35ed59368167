import type { MarkupDrawing } from '../evidence/markup-drawing.ts'
import type { PhotoId } from '../job/ids.ts'
import type { Plot } from '../fieldtest/plots/plot.ts'
import type { PlanDrawing } from '../roof/plan-drawing.ts'
import type { PacketOptions } from './options.ts'

/**
 * A packet as a document: sections of blocks, knowing nothing of PDF. Everything that is printed is in here; the
 * publisher only measures, breaks pages and draws.
 */
export interface PacketDocument {
  readonly paper: PacketOptions['paper']
  /** For the PDF's own title and the running header. */
  readonly title: string
  readonly jobLabel: string
  /** "Revision 2", or "Draft, not issued". */
  readonly revisionLabel: string
  readonly author: string
  /** Creation time written into the file, so that the same inputs give the same bytes. */
  readonly createdAtMs: number
  /** For the PDF's own keywords: the seal that ties it to log and files. */
  readonly keywords?: string
  /** Diagonal words across each page of a draft; null when issued. */
  readonly watermark: string | null
  readonly sections: readonly Section[]
}

export interface Section {
  /** Unique in the document; also a link target. */
  readonly key: string
  /** Names the section in the outline and the contents. It is not printed: a section that shows a title starts with a heading. */
  readonly title: string
  /** Sections on a new page open the outline; a section that flows follows the one before on the same page. */
  readonly start: 'new-page' | 'flow'
  /** Set closer, for a section that should stay on one page. */
  readonly compact?: true
  readonly blocks: readonly Block[]
}

/** A name that links can point to. Unique in the document: `photo-P-007`, `finding-F-12`, `pin-F-12`, `facet-A`. */
export type Anchor = string

/** Anchor of the pin with a label on the roof plan; the plan sets it. Label "12": `pin-F-12`. */
export function pinAnchor(pinLabel: string): Anchor {
  return `pin-F-${pinLabel}`
}

/** Anchor of the finding that a pin marks; the pin links to it where the document has it. Label "12": `finding-F-12`. */
export function findingAnchor(pinLabel: string): Anchor {
  return `finding-F-${pinLabel}`
}

/** A run of text inside a block. */
export interface Inline {
  readonly text: string
  readonly style?: 'strong' | 'emphasis' | 'mono' | 'quiet'
  /** Anchor that a click goes to. */
  readonly link?: Anchor
}
export type Text = readonly Inline[]

export type Block =
  | HeadingBlock
  | ParagraphBlock
  | ListBlock
  | FactsBlock
  | TableBlock
  | PlanBlock
  | PlotBlock
  | PictureBlock
  | PhotoCardsBlock
  | GroupBlock
  | SignatureBlock
  | ContentsBlock
  | RuleBlock
  | PageBreakBlock

export interface HeadingBlock {
  readonly kind: 'heading'
  readonly level: 1 | 2 | 3
  readonly text: string
  readonly anchor?: Anchor
  /** Appears in the PDF's outline and in the contents page. */
  readonly inOutline: boolean
}

export interface ParagraphBlock {
  readonly kind: 'paragraph'
  readonly text: Text
  readonly style: 'lead' | 'body' | 'small' | 'caution'
}

export interface ListBlock {
  readonly kind: 'list'
  readonly items: readonly Text[]
}

/** Label and value pairs, set in one or two columns. In two, wide rows and values too long for a column follow below at full width. */
export interface FactsBlock {
  readonly kind: 'facts'
  readonly columns: 1 | 2
  /** Says what goes on, at the top of a page that begins inside the block. */
  readonly continued?: string
  readonly rows: readonly { readonly label: string; readonly value: Text; readonly wide?: true }[]
}

export interface TableBlock {
  readonly kind: 'table'
  /** Read out for people who can't see the table. */
  readonly summary: string
  readonly columns: readonly { readonly title: string; readonly align: 'start' | 'end'; readonly weight: number }[]
  readonly rows: readonly {
    readonly cells: readonly Text[]
    readonly anchor?: Anchor
    readonly total?: boolean
    /** Names the rows below it and is not left alone at the foot of a page. */
    readonly leads?: true
  }[]
}

/** The roof plan, drawn to a named scale as vectors. */
export interface PlanBlock {
  readonly kind: 'plan'
  readonly drawing: PlanDrawing
  readonly alt: string
  /** Fills a page of its own, or stands in the text at a height. */
  readonly size: 'page' | { readonly heightIn: number }
}

/** A plot, drawn as vectors at its own size. */
export interface PlotBlock {
  readonly kind: 'plot'
  readonly plot: Plot
}

/** One photo set large, as on the cover. */
export interface PictureBlock {
  readonly kind: 'picture'
  readonly photoId: PhotoId
  /** Drawn over the picture as vectors; absent where nothing is. */
  readonly marks?: MarkupDrawing
  readonly alt: string
  readonly caption: Text
  /** It grows from the least to the most where its page has room left. */
  readonly heightIn: { readonly least: number; readonly most: number }
}

export interface PhotoCard {
  readonly photoId: PhotoId
  /** Drawn over the picture as vectors; absent where nothing is. */
  readonly marks?: MarkupDrawing
  readonly anchor: Anchor
  readonly alt: string
  /** "P-007" and its caption. */
  readonly title: Text
  /** Facet, finding, time with offset and basis, position, role, hash: one short line each. */
  readonly lines: readonly Text[]
  /** The plan with the camera's place, drawn small beside the lines; null when the place is not known. */
  readonly inset: PlanDrawing | null
}

/** Photo pages: cards in a grid, so many a page. */
export interface PhotoCardsBlock {
  readonly kind: 'photo-cards'
  readonly perPage: PacketOptions['photosPerPage']
  readonly cards: readonly PhotoCard[]
}

/** Blocks that stay on one page where they fit on one. */
export interface GroupBlock {
  readonly kind: 'group'
  readonly blocks: readonly Exclude<Block, GroupBlock | PageBreakBlock | ContentsBlock | PhotoCardsBlock>[]
}

export interface SignatureBlock {
  readonly kind: 'signature'
  readonly lines: readonly { readonly label: string; readonly value: string }[]
}

/** The contents, filled with page numbers when pages are known. */
export interface ContentsBlock {
  readonly kind: 'contents'
}

export interface RuleBlock {
  readonly kind: 'rule'
}

interface PageBreakBlock {
  readonly kind: 'page-break'
}
