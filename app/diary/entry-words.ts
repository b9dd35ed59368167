import type { DiaryContent, DiaryEntry, HandedItem } from './entry.ts'
import { diaryKindLabels, diaryLabel } from './entry.ts'

const directionWords = {
  'they-called': 'call from',
  'we-called': 'call to',
  'not-stated': 'call with',
} as const satisfies Record<Extract<DiaryContent, { kind: 'call' }>['direction'], string>

/** "packet revision 2", "packet revision 2: printed and bound", "keys of the gate". */
export function itemWords({ what, packet }: HandedItem): string {
  if (packet === null) return what
  return `packet revision ${packet.revision}${what === '' ? '' : `: ${what}`}`
}

/** What an entry is about, in one line and without what was said: "Call from Ada Owner". */
export function headWords(content: DiaryContent): string {
  switch (content.kind) {
    case 'visit':
      return content.people === '' ? 'Visit' : `Visit, ${content.people}`
    case 'call':
      return capital(`${directionWords[content.direction]} ${content.person}`)
    case 'received':
      return `Received${content.from === '' ? '' : ` from ${content.from}`}: ${content.what}`
    case 'handed-over': {
      const items = content.items.map(itemWords).filter((words) => words !== '')
      return `Handed to ${content.to}: ${items.join('; ')}`
    }
    case 'reminder':
      return content.isDone ? 'Reminder, done' : 'Reminder'
    case 'note':
      return 'Note'
  }
}

function capital(words: string): string {
  return `${words.slice(0, 1).toUpperCase()}${words.slice(1)}`
}

/** All words of an entry that a search may find. */
export function wordsOf({ content, number }: Pick<DiaryEntry, 'content' | 'number'>): readonly string[] {
  const medium = 'medium' in content ? content.medium : ''
  const signed = content.kind === 'handed-over' ? `${content.from} ${content.signedBy}` : ''
  return [diaryLabel(number), diaryKindLabels[content.kind], headWords(content), medium, signed, content.text]
}
