import { diaryInstantMs } from './diary-time.ts'
import type { DiaryEntry, DiaryKind } from './entry.ts'
import { wordsOf } from './entry-words.ts'

/** What to show of a diary. */
export interface DiaryFilter {
  readonly kind: DiaryKind | 'all' | 'open'
  /** Words that an entry must have, in any order; upper and lower case are the same. */
  readonly text: string
}

/** The entries that fit, newest time first; of one time the later number first. "open": reminders that are not done. */
export function filteredEntries(entries: readonly DiaryEntry[], { kind, text }: DiaryFilter): readonly DiaryEntry[] {
  const wanted = text
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '')
  return entries
    .filter((entry) => kind === 'all' || (kind === 'open' ? isOpen(entry) : entry.content.kind === kind))
    .filter((entry) => {
      if (wanted.length === 0) return true
      const words = wordsOf(entry).join('\n').toLowerCase()
      return wanted.every((word) => words.includes(word))
    })
    .toSorted((a, b) => diaryInstantMs(b.content.at) - diaryInstantMs(a.content.at) || b.number - a.number)
}

/** True for a reminder that is neither done nor struck out. */
export function isOpen({ content, struck }: DiaryEntry): boolean {
  return content.kind === 'reminder' && !content.isDone && struck === null
}
