import type { ClockReading } from './clock-reading.ts'
import { diaryInstantMs } from './diary-time.ts'
import { diaryLabel, type DiaryEntry, type DiaryKind } from './entry.ts'
import { headWords } from './entry-words.ts'

/** Something for a calendar: on a day as a whole, or at an instant. */
export interface CalendarEvent {
  /** The same whenever the same entry or clock is written out, so that a calendar brings it up to date. */
  readonly uid: string
  /** How often it was changed. */
  readonly sequence: number
  /** When it was last changed, milliseconds since 1970. */
  readonly stampMs: number
  readonly when: { readonly kind: 'day'; readonly date: string } | { readonly kind: 'instant'; readonly atMs: number }
  readonly summary: string
  readonly description: string
  /** Rings when it is due. */
  readonly isReminder: boolean
}

/** What a calendar of a job is made from. */
export interface CalendarContent {
  readonly jobNumber: string
  readonly entries: readonly DiaryEntry[]
  /** Kinds of entries to write out. */
  readonly kinds: readonly DiaryKind[]
  readonly clocks: readonly ClockReading[]
  /** Stamp of the clocks, which follow from rules and have no time of their own. */
  readonly madeAtMs: number
}

/** Entries of the kinds asked for, without those struck out and reminders done, and the clocks that can be counted. */
export function calendarEvents({ jobNumber, entries, kinds, clocks, madeAtMs }: CalendarContent): CalendarEvent[] {
  const chosen = entries.filter(
    ({ content, struck }) =>
      struck === null && kinds.includes(content.kind) && !(content.kind === 'reminder' && content.isDone),
  )
  return [
    ...chosen.map((entry) => entryEvent(entry, jobNumber)),
    ...clocks.flatMap((clock) => clockEvent(clock, { jobNumber, madeAtMs })),
  ]
}

function entryEvent({ id, number, content, earlier, madeAtMs }: DiaryEntry, jobNumber: string): CalendarEvent {
  const isReminder = content.kind === 'reminder'
  const head = isReminder ? (content.text.split('\n', 1)[0] ?? '').slice(0, 120) : headWords(content)
  return {
    uid: `${id}@battenbook`,
    sequence: earlier.length,
    stampMs: earlier.at(-1)?.replacedAtMs ?? madeAtMs,
    when: { kind: 'instant', atMs: diaryInstantMs(content.at) },
    summary: `${jobNumber}: ${head}`,
    description: [`Diary entry ${diaryLabel(number)} of job ${jobNumber}.`, content.text]
      .filter((words) => words !== '')
      .join('\n\n'),
    isReminder,
  }
}

function clockEvent(
  { asked, title, jurisdiction, sentence, end, working, cautions, basis, link }: ClockReading,
  { jobNumber, madeAtMs }: Pick<CalendarContent, 'jobNumber' | 'madeAtMs'>,
): readonly CalendarEvent[] {
  if (end === null) return []
  const about = [sentence, working.join(' '), cautions.join('\n'), basis, link]
  return [
    {
      uid: `${asked.id}@battenbook`,
      sequence: 0,
      stampMs: madeAtMs,
      when: end,
      summary: `${jobNumber}: ${jurisdiction === '' ? 'if this rule of the office applies' : 'if this statute applies'}: ${title}`,
      description: about.filter((words) => words !== '').join('\n\n'),
      isReminder: false,
    },
  ]
}
