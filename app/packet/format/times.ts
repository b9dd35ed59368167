import { Temporal } from 'temporal-polyfill'
import { localDateTime } from '../../evidence/photo-local-time.ts'
import type { PhotoTime, TimeBasis } from '../../evidence/photo-time.ts'
import type { CalendarDate } from '../../job/calendar.ts'

const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const

const basisOfOffset = {
  'camera-offset': 'offset written by the camera',
  'gps-time': 'offset worked out from GPS time',
  'place-zone': 'time zone of the place',
  'job-zone': 'time zone of the job',
  'set-by-hand': 'set by hand from other evidence',
  'container-utc': 'the video file’s own UTC time',
  unknown: 'offset not known',
} as const satisfies Record<TimeBasis, string>

/** "2026-03-14" as "March 14, 2026". */
export function dateWords(date: CalendarDate): string {
  return dayWords(Temporal.PlainDate.from(date))
}

/** "March 14, 2026, 14:32:07 -04:00 (offset written by the camera)", or that the time is not known. */
export function photoTimeWords(time: PhotoTime): string {
  const local = localDateTime(time)
  return local === null
    ? 'time not known'
    : `${dayWords(local.toPlainDate())}, ${clockWords(local)} ${offsetWords(time.offsetMinutes ?? 0)} (${basisOfOffset[time.basis]})`
}

/** "14:32:07 -04:00" without the date, for tables that give it above; a dash when not known. */
export function photoClockWords(time: PhotoTime): string {
  const local = localDateTime(time)
  return local === null ? '-' : `${clockWords(local)} ${offsetWords(time.offsetMinutes ?? 0)}`
}

/** An instant in a zone with its offset: "March 14, 2026, 14:32:07 -04:00". `zone` is an IANA name. */
export function instantWords(atMs: number, zone: string): string {
  const at = Temporal.Instant.fromEpochMilliseconds(atMs).toZonedDateTimeISO(zone)
  const offset = offsetWords(Math.round(at.offsetNanoseconds / 6e10))
  return `${dayWords(at.toPlainDate())}, ${clockWords(at.toPlainDateTime())} ${offset}`
}

/** Minutes east of UTC as "+05:30" or "-04:00". */
export function offsetWords(minutes: number): string {
  const size = Math.abs(minutes)
  return `${minutes < 0 ? '-' : '+'}${two(Math.floor(size / 60))}:${two(size % 60)}`
}

/** A clock correction, signed: "+1 h 00 min 12 s", "-3 s", "+2 days 0 h 00 min 00 s". */
export function correctionWords(correctionMs: number): string {
  const seconds = Math.round(Math.abs(correctionMs) / 1000)
  const days = Math.floor(seconds / 86_400)
  const hours = Math.floor((seconds % 86_400) / 3600)
  const minutes = Math.floor((seconds % 3600) / 60)
  const rest = seconds % 60
  const sign = correctionMs < 0 ? '-' : '+'
  if (days > 0) return `${sign}${days} ${days === 1 ? 'day' : 'days'} ${hours} h ${two(minutes)} min ${two(rest)} s`
  if (hours > 0) return `${sign}${hours} h ${two(minutes)} min ${two(rest)} s`
  return minutes > 0 ? `${sign}${minutes} min ${two(rest)} s` : `${sign}${rest} s`
}

function dayWords(date: Temporal.PlainDate): string {
  return `${MONTHS[date.month - 1] ?? ''} ${date.day}, ${date.year}`
}

function clockWords(at: Temporal.PlainDateTime): string {
  return `${two(at.hour)}:${two(at.minute)}:${two(at.second)}`
}

function two(value: number): string {
  return String(value).padStart(2, '0')
}
