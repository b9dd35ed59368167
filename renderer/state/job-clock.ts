import { Temporal } from 'temporal-polyfill'
import type { JobSnapshot } from '../../app/contract/jobs.ts'

/** The clock on the wall at the house: turns instants into local time. */
export interface JobClock {
  /** Minutes east of UTC at an instant. */
  offsetMinutesAt(instantMs: number): number
  /** What the times are given in: a zone's name, or an offset such as `UTC-04:00`. */
  readonly zoneWords: string
}

type Known = Pick<JobSnapshot, 'photos'> & {
  readonly job: { readonly sheet: { readonly property: { readonly timeZone: string } } }
}

/** The house's clock: the sheet's time zone, else the offset that most photos have, else this machine's zone. */
export function jobClock(known: Known): JobClock {
  const zone = known.job.sheet.property.timeZone
  if (zone !== '') return zoneClock(zone)
  const offset = commonestOffset(known.photos)
  if (offset !== null) return { offsetMinutesAt: () => offset, zoneWords: offsetWords(offset) }
  return zoneClock(Intl.DateTimeFormat().resolvedOptions().timeZone)
}

/** Time of day on the house's clock: `14:03:27`. */
export function timeWords(instantMs: number, clock: JobClock): string {
  return localParts(instantMs, clock).time
}

/** Day on the house's clock: `Sat 14 Mar 2026`. */
export function dayWords(instantMs: number, clock: JobClock): string {
  return localParts(instantMs, clock).day
}

function zoneClock(zone: string): JobClock {
  return {
    offsetMinutesAt: (instantMs) =>
      Math.round(
        Temporal.Instant.fromEpochMilliseconds(Math.round(instantMs)).toZonedDateTimeISO(zone).offsetNanoseconds / 6e10,
      ),
    zoneWords: zone,
  }
}

function commonestOffset(photos: Known['photos']): number | null {
  const counts = new Map<number, number>()
  for (const { time } of photos) {
    if (time.offsetMinutes !== null) counts.set(time.offsetMinutes, (counts.get(time.offsetMinutes) ?? 0) + 1)
  }
  let best: number | null = null
  for (const [offset, count] of counts) if (best === null || count > (counts.get(best) ?? 0)) best = offset
  return best
}

/** `UTC-04:00` for -240. */
function offsetWords(minutes: number): string {
  const size = Math.abs(minutes)
  const two = (value: number) => String(value).padStart(2, '0')
  return `UTC${minutes < 0 ? '-' : '+'}${two(Math.floor(size / 60))}:${two(size % 60)}`
}

const dayFormat = new Intl.DateTimeFormat('en-GB', {
  weekday: 'short',
  day: 'numeric',
  month: 'short',
  year: 'numeric',
  timeZone: 'UTC',
})
const timeFormat = new Intl.DateTimeFormat('en-GB', {
  hour: '2-digit',
  minute: '2-digit',
  second: '2-digit',
  timeZone: 'UTC',
})

function localParts(instantMs: number, clock: JobClock): { day: string; time: string } {
  const asUtc = instantMs + clock.offsetMinutesAt(instantMs) * 60_000
  return { day: dayFormat.format(asUtc).replace(',', ''), time: timeFormat.format(asUtc) }
}
