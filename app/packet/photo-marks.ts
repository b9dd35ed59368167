import type { Markup } from '../evidence/markup.ts'
import { hidesSomething } from '../evidence/markup.ts'
import { drawMarkup, type MarkupDrawing } from '../evidence/markup-drawing.ts'
import { markupWords, measureLimits, measureNotes } from '../evidence/markup/words.ts'
import { photoLabel, type Photo } from '../evidence/photo.ts'
import type { Text } from './document.ts'
import type { PacketContext } from './packet-context.ts'
import { plain } from './text.ts'

/** A photo's marks to be drawn over its picture; nothing where it has none or its size is not known. */
export function marksOf({ id, file }: Photo, { markupByPhoto }: PacketContext): { marks?: MarkupDrawing } {
  const markup = markupByPhoto.get(id)
  const { widthPx, heightPx } = file
  if (markup === undefined || widthPx === null || heightPx === null) return {}
  return { marks: drawMarkup(markup.marks, { widthPx, heightPx }) }
}

/** What a reader has to know of the marks: that this is an annotated copy, where lengths come from, what is hidden. */
export function markLines(photo: Photo, { markupByPhoto, keptBack }: PacketContext): readonly Text[] {
  const markup = markupByPhoto.get(photo.id)
  if (markup === undefined) return []
  const notes = measureNotes(markup)
  return [
    plain(`annotated copy of ${photoLabel(photo.number)}: ${markupWords(markup)}`),
    ...notes.map(plain),
    ...(notes.length === 0 ? [] : [plain(`a measured length ${measureLimits}`)]),
    ...(hidesSomething(markup) ? [plain(obscuredWords(keptBack.has(photo.id)))] : []),
  ]
}

function obscuredWords(isKeptBack: boolean): string {
  return `areas obscured at the office, ${isKeptBack ? 'original kept there' : 'original in the evidence bundle'}`
}

/** The marks in words for people who can't see the picture: " Annotated: 1 arrow." */
export function marksAlt(markup: Markup | undefined): string {
  return markup === undefined ? '' : `. Annotated copy: ${markupWords(markup)}`
}
