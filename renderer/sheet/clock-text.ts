const SECOND = 1000
const MINUTE = 60 * SECOND
const HOUR = 60 * MINUTE
const DAY = 24 * HOUR
/** Longest correction that a job can hold. */
const MOST_MS = 40 * 365 * DAY

const unitMs: Readonly<Record<string, number>> = {
  d: DAY,
  day: DAY,
  days: DAY,
  h: HOUR,
  hr: HOUR,
  hour: HOUR,
  hours: HOUR,
  m: MINUTE,
  min: MINUTE,
  mins: MINUTE,
  minute: MINUTE,
  minutes: MINUTE,
  s: SECOND,
  sec: SECOND,
  secs: SECOND,
  second: SECOND,
  seconds: SECOND,
}

/** A typed correction in milliseconds, or what is wrong with it. */
export type TypedClock = { readonly ok: true; readonly value: number } | { readonly ok: false; readonly error: string }

const HOW = 'Write how much to add, for example +7 min 0 s, -1 h 2 min or +00:07:00.'

/**
 * Reads a clock correction: `+7 min 0 s`, `-1 h 2 min`, `90 s`, `1d 3h`, `+00:07:00` (hours, minutes, seconds) or
 * `7:30` (minutes, seconds). Empty text and `0` are no correction. A minus turns the whole of it.
 */
export function readClock(text: string): TypedClock {
  const plain = text
    .trim()
    .toLowerCase()
    .replace('−', '-')
    .replace(/^[+-]\s+/, (sign) => sign.trim())
  if (plain === '' || /^[+-]?0$/.test(plain)) return { ok: true, value: 0 }
  const sign = plain.startsWith('-') ? -1 : 1
  const size = plain.replace(/^[+-]/, '')
  const ms = colonTime(size) ?? unitTime(size)
  if (ms === null) return { ok: false, error: `"${text.trim()}" is not a length of time. ${HOW}` }
  if (ms > MOST_MS) return { ok: false, error: 'The most that a clock can be corrected by is 40 years.' }
  return { ok: true, value: sign * ms || 0 }
}

/** Writes a correction as `readClock` reads it: `+7 min 0 s`, `-1 h 2 min 0 s`, and nothing for 0. */
export function clockText(ms: number): string {
  if (ms === 0) return ''
  const size = Math.abs(ms)
  const parts = [
    [Math.floor(size / DAY), 'd'],
    [Math.floor((size % DAY) / HOUR), 'h'],
    [Math.floor((size % HOUR) / MINUTE), 'min'],
  ] as const
  const first = parts.findIndex(([count]) => count > 0)
  const large = first === -1 ? [] : parts.slice(first)
  const seconds = (size % MINUTE) / SECOND
  return `${ms < 0 ? '-' : '+'}${[...large, [seconds, 's'] as const].map(([count, unit]) => `${count} ${unit}`).join(' ')}`
}

function colonTime(text: string): number | null {
  const match = /^(?:(\d{1,6}):)?(\d{1,2}):(\d{2}(?:\.\d{1,3})?)$/.exec(text)
  if (match === null) return null
  const hours = match[1] === undefined ? 0 : Number(match[1])
  const minutes = Number(match[2])
  const seconds = Number(match[3])
  if (seconds >= 60 || (match[1] !== undefined && minutes >= 60)) return null
  return Math.round(hours * HOUR + minutes * MINUTE + seconds * SECOND)
}

function unitTime(text: string): number | null {
  if (!/^(?:\d+(?:\.\d+)?\s*[a-z]+[\s,]*)+$/.test(text)) return null
  let total = 0
  let smallestYet = Infinity
  for (const [, count, name] of text.matchAll(/(\d+(?:\.\d+)?)\s*([a-z]+)/g)) {
    const unit = unitMs[name ?? '']
    if (unit === undefined || unit >= smallestYet) return null
    smallestYet = unit
    total += Number(count) * unit
  }
  return Math.round(total)
}
