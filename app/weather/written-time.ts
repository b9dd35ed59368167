import { Temporal } from 'temporal-polyfill'
import type { TimeBasis } from './reading-choices.ts'

/** An instant read from a file, and whether a change of clocks leaves it uncertain. */
export interface ReadTime {
  readonly atMs: number
  readonly isUncertain: boolean
}

/**
 * Reads a time as stations write it: `2026-11-04 23:53`, `2026-11-04T23:53:00Z`, `202611042353`, `11/04/2026 11:53 PM`
 * (month first), `04.11.2026 23:53`. An offset written with the time goes before the basis. Null when it is no time.
 */
export function readWrittenTime(written: string, basis: TimeBasis): ReadTime | null {
  const local = localTime(written.trim())
  if (local === null) return null
  const { plain, offset } = local
  if (offset !== '') return { atMs: inUtc(plain) - offsetMs(offset), isUncertain: false }
  switch (basis.kind) {
    case 'utc':
      return { atMs: inUtc(plain), isUncertain: false }
    case 'fixed-offset':
      return { atMs: inUtc(plain) - basis.offsetMinutes * 60_000, isUncertain: false }
    case 'zone': {
      const [earlier, later] = (['earlier', 'later'] as const).map((disambiguation) =>
        plain.toZonedDateTime(basis.zone, { disambiguation }),
      )
      const atMs = earlier?.epochMilliseconds ?? 0
      return { atMs, isUncertain: atMs !== later?.epochMilliseconds }
    }
  }
}

function inUtc(plain: Temporal.PlainDateTime): number {
  return plain.toZonedDateTime('UTC').epochMilliseconds
}

function offsetMs(offset: string): number {
  const parts = /^([+-])(\d{2}):?(\d{2})$/.exec(offset)
  if (parts === null) return 0
  return (parts[1] === '-' ? -1 : 1) * (Number(parts[2]) * 60 + Number(parts[3])) * 60_000
}

type Parts = readonly [year: string, month: string, day: string, hour: string, minute: string, second: string]

function localTime(text: string): { plain: Temporal.PlainDateTime; offset: string } | null {
  const iso = /^(\d{4})-(\d{2})-(\d{2})[T ](\d{1,2}):(\d{2})(?::(\d{2})(?:\.\d+)?)?\s*(Z|UTC|[+-]\d{2}:?\d{2})?$/.exec(
    text,
  )
  if (iso !== null)
    return made([part(iso, 1), part(iso, 2), part(iso, 3), part(iso, 4), part(iso, 5), part(iso, 6)], part(iso, 7))
  const packed = /^(\d{4})(\d{2})(\d{2})T?(\d{2})(\d{2})(\d{2})?(Z)?$/.exec(text)
  if (packed !== null) {
    return made(
      [part(packed, 1), part(packed, 2), part(packed, 3), part(packed, 4), part(packed, 5), part(packed, 6)],
      part(packed, 7),
    )
  }
  const slashed = /^(\d{1,2})\/(\d{1,2})\/(\d{4}) (\d{1,2}):(\d{2})(?::(\d{2}))?\s*([AP]M)?$/i.exec(text)
  if (slashed !== null) {
    const hour = hour24(part(slashed, 4), part(slashed, 7).toUpperCase())
    return made([part(slashed, 3), part(slashed, 1), part(slashed, 2), hour, part(slashed, 5), part(slashed, 6)], '')
  }
  const dotted = /^(\d{1,2})\.(\d{1,2})\.(\d{4}) (\d{1,2}):(\d{2})(?::(\d{2}))?$/.exec(text)
  if (dotted === null) return null
  return made(
    [part(dotted, 3), part(dotted, 2), part(dotted, 1), part(dotted, 4), part(dotted, 5), part(dotted, 6)],
    '',
  )
}

function part(match: RegExpExecArray, group: number): string {
  return match[group] ?? ''
}

/** 12 AM is midnight and 12 PM noon; 13 PM is no hour. */
function hour24(hour: string, half: string): string {
  if (half === '') return hour
  const written = Number(hour)
  if (written < 1 || written > 12) return '99'
  return String((written % 12) + (half === 'PM' ? 12 : 0))
}

function made(parts: Parts, offset: string): { plain: Temporal.PlainDateTime; offset: string } | null {
  const [year, month, day, hour, minute, second] = parts.map((text) => Number(text === '' ? 0 : text))
  try {
    const plain = Temporal.PlainDateTime.from(
      { year: year ?? 0, month: month ?? 0, day: day ?? 0, hour: hour ?? 0, minute: minute ?? 0, second: second ?? 0 },
      { overflow: 'reject' },
    )
    return { plain, offset: offset === 'Z' || offset === 'UTC' ? '+00:00' : offset }
  } catch {
    return null
  }
}
