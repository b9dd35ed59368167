import type { Block, HeadingBlock, ParagraphBlock, Section, TableBlock, Text } from '../document.ts'
import { plain } from '../text.ts'

/** A section on a new page that begins with its own title. */
export function titledSection(key: string, title: string, blocks: readonly Block[]): Section {
  return {
    key,
    title,
    start: 'new-page',
    blocks: [{ kind: 'heading', level: 1, text: title, inOutline: false }, ...blocks],
  }
}

/** A heading inside a section; listed in the outline only when asked for. */
export function heading(text: string, inOutline = false): HeadingBlock {
  return { kind: 'heading', level: 2, text, inOutline }
}

/** A paragraph of plain words or of linked text. */
export function paragraph(text: string | Text, style: ParagraphBlock['style'] = 'body'): ParagraphBlock {
  return { kind: 'paragraph', text: typeof text === 'string' ? plain(text) : text, style }
}

/** A column of a table: its title, its share of the width, and figures set at the end. */
export function column(title: string, weight: number, align: 'start' | 'end' = 'start'): TableBlock['columns'][number] {
  return { title, weight, align }
}
