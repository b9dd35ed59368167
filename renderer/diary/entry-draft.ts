import type { CallInput } from '../../app/contract/contract.ts'
import type { PacketSummary } from '../../app/contract/jobs.ts'
import { diaryTimeAt } from '../../app/diary/diary-time.ts'
import type { DiaryContent, DiaryKind, HandedItem } from '../../app/diary/entry.ts'

/** An entry as it is being typed: fields of all kinds side by side, so that changing the kind loses nothing. */
export interface EntryDraft {
  readonly kind: DiaryKind
  readonly date: string
  readonly time: string
  readonly timeZone: string
  readonly repeatedHour: 'first' | 'second' | null
  readonly text: string
  readonly attachmentIds: DiaryContent['attachmentIds']
  readonly people: string
  readonly person: string
  readonly direction: 'they-called' | 'we-called' | 'not-stated'
  readonly from: string
  readonly to: string
  readonly what: string
  readonly packet: HandedItem['packet']
  /** What was handed over, one thing a line. */
  readonly things: string
  readonly medium: string
  readonly signedBy: string
  readonly isDone: boolean
}

/** An empty entry for now. */
export function newDraft(nowMs: number, timeZone: string): EntryDraft {
  return {
    ...diaryTimeAt(nowMs, timeZone),
    kind: 'call',
    text: '',
    attachmentIds: [],
    people: '',
    person: '',
    direction: 'not-stated',
    from: '',
    to: '',
    what: '',
    packet: null,
    things: '',
    medium: '',
    signedBy: '',
    isDone: false,
  }
}

/** An entry taken up again for a correction. */
export function draftOf(content: DiaryContent): EntryDraft {
  const { at, ...rest } = content
  const things =
    content.kind === 'handed-over'
      ? {
          packet: content.items.find(({ packet }) => packet !== null)?.packet ?? null,
          things: content.items
            .map(({ what }) => what)
            .filter((what) => what !== '')
            .join('\n'),
        }
      : {}
  return { ...newDraft(0, at.timeZone), ...rest, ...at, ...things }
}

/** A draft as the desk takes it; only the fields of its kind. */
export function contentOf(draft: EntryDraft): CallInput<'diary.save'>['content'] {
  const { kind, date, time, timeZone, repeatedHour, text, attachmentIds } = draft
  const common = {
    at: { date: date.trim(), time: time.trim(), timeZone: timeZone.trim(), repeatedHour },
    text,
    attachmentIds,
  }
  switch (kind) {
    case 'visit':
      return { ...common, kind, people: draft.people }
    case 'call':
      return { ...common, kind, person: draft.person, direction: draft.direction }
    case 'received':
      return { ...common, kind, from: draft.from, what: draft.what, medium: draft.medium }
    case 'handed-over':
      return {
        ...common,
        kind,
        from: draft.from,
        to: draft.to,
        medium: draft.medium,
        signedBy: draft.signedBy,
        items: itemsOf(draft),
      }
    case 'reminder':
      return { ...common, kind, isDone: draft.isDone }
    case 'note':
      return { ...common, kind }
  }
}

function itemsOf({ packet, things }: EntryDraft): HandedItem[] {
  const lines = things
    .split('\n')
    .map((what) => what.trim())
    .filter((what) => what !== '')
    .map((what): HandedItem => ({ what, packet: null }))
  return packet === null ? lines : [{ what: '', packet }, ...lines]
}

/** An issued revision as a handover names it. */
export function handedPacket({ id, revision, pdfSha256, headHash }: PacketSummary): NonNullable<HandedItem['packet']> {
  return { id, revision, pdfSha256, headHash }
}
