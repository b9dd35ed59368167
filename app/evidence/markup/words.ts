import type { Mark, MarkKind, Markup } from '../markup.ts'
import { knownLengthWords, lengthWords, measuredLength, scaleNames, scaleOf } from './measured-length.ts'

const kindWords = {
  arrow: ['arrow', 'arrows'],
  ellipse: ['ellipse', 'ellipses'],
  freehand: ['freehand line', 'freehand lines'],
  text: ['text', 'texts'],
  scale: ['scale line', 'scale lines'],
  measure: ['measured line', 'measured lines'],
  obscured: ['obscured area', 'obscured areas'],
} as const satisfies Record<MarkKind, readonly [one: string, several: string]>

/** "arrow": what a mark is called. */
export function markWord(kind: MarkKind): string {
  return kindWords[kind][0]
}

/** "2 arrows, 1 measured line": what is drawn over a photo. */
export function markupWords({ marks }: Markup): string {
  return kindsOf(marks)
    .map((kind) => {
      const count = marks.filter((mark) => mark.kind === kind).length
      return `${count} ${kindWords[kind][count === 1 ? 0 : 1]}`
    })
    .join(', ')
}

function kindsOf(marks: readonly Mark[]): readonly MarkKind[] {
  return [...new Set(marks.map(({ kind }) => kind))]
}

/** For each measured line its length and the scale line it comes from; empty when nothing is measured. */
export function measureNotes({ marks }: Markup): readonly string[] {
  const names = scaleNames(marks)
  return marks.flatMap((mark) => {
    if (mark.kind !== 'measure') return []
    const scale = scaleOf(mark, marks)
    if (scale === null) return []
    const of = scale.of === '' ? '' : `, ${scale.of}`
    return [
      `${lengthWords(measuredLength(mark, scale))} by scale line ${names.get(scale.id) ?? ''} (${knownLengthWords(scale)}${of})`,
    ]
  })
}

/** How far a length from a picture may be trusted. */
export const measureLimits = 'holds only in the plane of its scale line, seen square'

/** What an edit of marks is called in the log: "Add arrow on photo P-012". */
export function markEditWords(before: readonly Mark[], after: readonly Mark[], photo: string): string {
  const had = new Map(before.map((mark) => [mark.id, mark]))
  const has = new Map(after.map((mark) => [mark.id, mark]))
  const added = after.filter(({ id }) => !had.has(id))
  const removed = before.filter(({ id }) => !has.has(id))
  const changed = after.filter((mark) => had.has(mark.id) && JSON.stringify(had.get(mark.id)) !== JSON.stringify(mark))
  const one = (marks: readonly Mark[]) =>
    marks.length === 1 && marks[0] ? markWord(marks[0].kind) : `${marks.length} marks`
  if (added.length > 0 && removed.length === 0) return `Add ${one(added)} on photo ${photo}`
  if (removed.length > 0 && added.length === 0) return `Remove ${one(removed)} from photo ${photo}`
  if (changed.length > 0 && added.length === 0) return `Change ${one(changed)} on photo ${photo}`
  return added.length === 0 ? `Reorder marks on photo ${photo}` : `Change marks on photo ${photo}`
}
