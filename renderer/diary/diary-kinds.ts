import type { DiaryKind } from '../../app/diary/entry.ts'

/** Kinds of entries in the order of a list. */
export const diaryKinds = [
  'visit',
  'call',
  'received',
  'handed-over',
  'reminder',
  'note',
] as const satisfies readonly DiaryKind[]
