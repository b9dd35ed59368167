import type { LogEntry, LogEvent } from '../evidence/log-entry.ts'
import { photoLabel } from '../evidence/photo.ts'
import { stillWords } from '../evidence/still.ts'
import { videoLabel } from '../evidence/video-label.ts'
import { bytesFigure, shortHash } from './format/files.ts'

/** Consecutive entries of one person that say the same kind of thing, told in one line. */
export interface LogRun {
  readonly first: LogEntry
  readonly last: LogEntry
  readonly words: string
}

/** The log in order, in words: photos taken in one after the other, and edits with the same words, are told together. */
export function logRuns(log: readonly LogEntry[], labelOfPhoto: (photoId: string) => string): readonly LogRun[] {
  const runs: LogEntry[][] = []
  for (const entry of log) {
    const run = runs.at(-1)
    const before = run?.[0]
    if (run !== undefined && before !== undefined && before.actor === entry.actor && alike(before.event, entry.event)) {
      run.push(entry)
    } else {
      runs.push([entry])
    }
  }
  return runs.flatMap((run) => {
    const first = run[0]
    const last = run.at(-1)
    if (first === undefined || last === undefined) return []
    const words = run.length === 1 ? eventWords(first.event, labelOfPhoto) : runWords(run, labelOfPhoto)
    return [{ first, last, words }]
  })
}

function alike(a: LogEvent, b: LogEvent): boolean {
  if (a.type === 'photo-taken-in') return b.type === 'photo-taken-in'
  return a.type === 'edited' && b.type === 'edited' && a.summary === b.summary
}

function runWords(run: readonly LogEntry[], labelOfPhoto: (photoId: string) => string): string {
  const numbers = run.flatMap(({ event }) => (event.type === 'photo-taken-in' ? [event.number] : []))
  if (numbers.length > 0) {
    const from = photoLabel(Math.min(...numbers))
    const to = photoLabel(Math.max(...numbers))
    return `${numbers.length} photos taken in, ${from} to ${to}; each file’s SHA-256 stands in Custody`
  }
  const event = run[0]?.event
  return event === undefined ? '' : `${eventWords(event, labelOfPhoto)} (${run.length} times)`
}

function eventWords(event: LogEvent, labelOfPhoto: (photoId: string) => string): string {
  switch (event.type) {
    case 'job-opened':
      return `Job ${event.number} opened`
    case 'photo-taken-in':
      return `${photoLabel(event.number)} taken in from ${event.fileName}, ${bytesFigure(event.bytes)} bytes, SHA-256 ${shortHash(event.sha256)}`
    case 'double-seen':
      return `${event.fileName} came again, the same file as ${labelOfPhoto(event.photoId)}; kept once`
    case 'video-taken-in':
      return `${videoLabel(event.number)} taken in from ${event.fileName}, ${bytesFigure(event.bytes)} bytes, SHA-256 ${shortHash(event.sha256)}`
    case 'still-taken':
      return `${photoLabel(event.number)} stored, ${stillWords(event)}, SHA-256 ${shortHash(event.sha256)}`
    case 'attachment-taken-in':
      return `${event.fileName} kept as an attachment, ${bytesFigure(event.bytes)} bytes, SHA-256 ${shortHash(event.sha256)}`
    case 'edited':
      return event.summary
    case 'undone':
      return `Undone, entry ${event.entry}: ${event.summary}`
    case 'redone':
      return `Done again, entry ${event.entry}: ${event.summary}`
    case 'problem-overruled':
      return `Let stand before issuing: ${event.problem} Reason given: ${event.reason}`
    case 'packet-issued':
      return `Revision ${event.revision} issued, SHA-256 of its PDF ${shortHash(event.pdfSha256)}`
  }
}
