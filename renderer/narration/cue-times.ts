import { type JobClock, timeWords } from '../state/job-clock.ts'

/** When a cue was spoken: `10:44:36` on the house's clock, or `+00:03:12` from the recording's start. */
export function cueTimeWords(cueMs: number, recordingStart: number | null, clock: JobClock): string {
  return recordingStart === null ? `+${lengthWords(cueMs)}` : timeWords(recordingStart + cueMs, clock)
}

function lengthWords(ms: number): string {
  const seconds = Math.floor(ms / 1000)
  const two = (value: number) => String(value).padStart(2, '0')
  return `${two(Math.floor(seconds / 3600))}:${two(Math.floor(seconds / 60) % 60)}:${two(seconds % 60)}`
}

/** A typed time of day as an instant on the day of `nearMs`, by the house's clock; null when it is none. */
export function instantOfClock(text: string, nearMs: number, clock: JobClock): number | null {
  const match = /^\s*(\d{1,2}):(\d{2})(?::(\d{2}))?\s*$/.exec(text)
  if (match === null) return null
  const [hours, minutes, seconds] = [Number(match[1]), Number(match[2]), Number(match[3] ?? 0)]
  if (hours > 23 || minutes > 59 || seconds > 59) return null
  const offsetMs = clock.offsetMinutesAt(nearMs) * 60_000
  const dayMs = Math.floor((nearMs + offsetMs) / 86_400_000) * 86_400_000
  return dayMs + ((hours * 60 + minutes) * 60 + seconds) * 1000 - offsetMs
}
