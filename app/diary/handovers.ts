import { diaryInstantMs } from './diary-time.ts'
import type { DiaryContent, DiaryEntry } from './entry.ts'

/** A document that came in or went out, as a custody list gives it: nothing of calls, notes or remarks. */
export interface Handover {
  readonly number: number
  readonly content: Extract<DiaryContent, { kind: 'received' | 'handed-over' }>
}

/** Documents received and handed over, oldest first, without those struck out. */
export function handovers(entries: readonly DiaryEntry[]): readonly Handover[] {
  return entries
    .flatMap(({ number, content, struck }): readonly Handover[] =>
      struck === null && (content.kind === 'received' || content.kind === 'handed-over') ? [{ number, content }] : [],
    )
    .toSorted((a, b) => diaryInstantMs(a.content.at) - diaryInstantMs(b.content.at) || a.number - b.number)
}
