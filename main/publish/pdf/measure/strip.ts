import type { Anchor } from '../../../../app/packet/document.ts'
import type { Band } from '../paginate/paginate.ts'
import type { StripContent } from './strip-content.ts'

/** Element of the document's logical structure (ISO 32000-1, 14.8.4) that a strip's content belongs to. */
export interface StructureStep {
  /** Same number, same element, on whichever page. */
  readonly id: number
  readonly tag: 'Sect' | 'H1' | 'H2' | 'H3' | 'P' | 'L' | 'LI' | 'LBody' | 'Table' | 'TR' | 'TOC' | 'TOCI' | 'Div'
  /** Read out for people who can't see it. */
  readonly alt?: string
}

/** A measured block: a band across the page that is never cut, and what is in it. */
export interface Strip extends Band {
  readonly repeat: Strip | null
  readonly content: StripContent
  /** From the section down to what holds the content. */
  readonly structure: readonly StructureStep[]
  readonly anchors: readonly Anchor[]
  /** Entry of the section that begins here. */
  readonly sectionEntry?: OutlineEntry | null
  /** Entry of the heading that this is. */
  readonly outline: OutlineEntry | null
}

export interface OutlineEntry {
  readonly title: string
  /** 1 for a section, 2 and 3 for what is in it. */
  readonly level: 1 | 2 | 3
  readonly anchor: Anchor
}
