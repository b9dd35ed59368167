import { Temporal } from 'temporal-polyfill'
import type { JobClock } from '../state/job-clock.ts'

/** A typed moment, or what is wrong with it. */
export type TypedStart =
  | { readonly ok: true; readonly instantMs: number }
  | { readonly ok: false; readonly error: string }

const HOW = 'Write it as 2026-03-14 09:26:53, in the time of the house.'

/** Reads a day and time of day on the house's clock: `2026-03-14 09:26:53`, with a fraction of a second where it is known. */
export function readStart(text: string, clock: JobClock): TypedStart {
  try {
    const local = Temporal.PlainDateTime.from(text.trim().replace(' ', 'T'), { overflow: 'reject' })
    if (!/\d:\d\d/.test(text)) return { ok: false, error: HOW }
    const asUtcMs = local.toZonedDateTime('UTC').epochMilliseconds
    // The offset of that very moment: asked again with the answer, as it may lie across a change of clocks.
    const guessMs = asUtcMs - clock.offsetMinutesAt(asUtcMs) * 60_000
    return { ok: true, instantMs: asUtcMs - clock.offsetMinutesAt(guessMs) * 60_000 }
  } catch {
    return { ok: false, error: HOW }
  }
}

/** Writes a moment as `readStart` reads it. */
export function startText(instantMs: number, clock: JobClock): string {
  const local = Temporal.Instant.fromEpochMilliseconds(instantMs + clock.offsetMinutesAt(instantMs) * 60_000)
  return local.toZonedDateTimeISO('UTC').toPlainDateTime().toString().replace('T', ' ')
}
