import type { LogEntry, LogEvent } from '../../app/evidence/log-entry.ts'
import { photoLabel } from '../../app/evidence/photo.ts'
import { stillWords } from '../../app/evidence/still.ts'
import { videoLabel } from '../../app/evidence/video-label.ts'
import { bytesWords } from '../ui/quantity-words.ts'

/** What a log entry says happened, in one sentence. */
export function entryWords(event: LogEvent): string {
  switch (event.type) {
    case 'job-opened':
      return `Job ${event.number} was opened.`
    case 'photo-taken-in':
      return `${photoLabel(event.number)} taken in: ${event.fileName}, ${bytesWords(event.bytes)}.`
    case 'video-taken-in':
      return `${videoLabel(event.number)} taken in: ${event.fileName}, ${bytesWords(event.bytes)}.`
    case 'still-taken':
      return `${photoLabel(event.number)} stored: ${stillWords(event)}.`
    case 'double-seen':
      return `${event.fileName} is the same file as one already here, and was not taken in again.`
    case 'attachment-taken-in':
      return `${event.fileName} kept as a file, ${bytesWords(event.bytes)}.`
    case 'edited':
      return sentence(event.summary)
    case 'undone':
      return `Undone: ${sentence(event.summary)}`
    case 'redone':
      return `Done again: ${sentence(event.summary)}`
    case 'problem-overruled':
      return `Let stand: ${sentence(event.problem)} Reason: ${sentence(event.reason)}`
    case 'packet-issued':
      return `Packet revision ${event.revision} issued.`
  }
}

/** Groups of entries that the filter offers. */
export const entryGroups = [
  { key: 'all', label: 'Everything' },
  { key: 'intake', label: 'Taken in' },
  { key: 'edits', label: 'Changes' },
  { key: 'packet', label: 'Packets' },
] as const
export type EntryGroup = (typeof entryGroups)[number]['key']

const groupOf = {
  'job-opened': 'intake',
  'photo-taken-in': 'intake',
  'video-taken-in': 'intake',
  'still-taken': 'intake',
  'double-seen': 'intake',
  'attachment-taken-in': 'intake',
  edited: 'edits',
  undone: 'edits',
  redone: 'edits',
  'problem-overruled': 'packet',
  'packet-issued': 'packet',
} as const satisfies Record<LogEvent['type'], EntryGroup>

/** True when an entry is of the group and has all the typed words in its sentence or its person's name. */
export function entryFits(entry: LogEntry, { group, text }: { group: EntryGroup; text: string }): boolean {
  if (group !== 'all' && groupOf[entry.event.type] !== group) return false
  const said = `${entryWords(entry.event)} ${entry.actor}`.toLowerCase()
  return text
    .toLowerCase()
    .split(/\s+/)
    .every((word) => said.includes(word))
}

function sentence(text: string): string {
  const trimmed = text.trim()
  return /[.!?]$/.test(trimmed) ? trimmed : `${trimmed}.`
}
