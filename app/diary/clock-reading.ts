import { z } from 'zod'
import { dateWords } from '../packet/format/times.ts'
import { holdsOn, type Rule } from '../rules/rule.ts'
import { businessDaysWords, clockCaution } from './clock-caution.ts'
import { clockEnd, type HolidayOn } from './clock-end.ts'
import { askedClockSchema, type AskedClock } from './job-clocks.ts'

/** A clock that was asked for, as it is shown: the sentence, how it was counted, and all that has to be said with it. */
export const clockReadingSchema = z.object({
  asked: askedClockSchema,
  title: z.string(),
  jurisdiction: z.string(),
  /** "If this statute applies: ...". */
  sentence: z.string(),
  /** The last day, the last instant, or null where it can't be counted. */
  end: z
    .discriminatedUnion('kind', [
      z.object({ kind: z.literal('day'), date: z.string() }),
      z.object({ kind: z.literal('instant'), atMs: z.number().int() }),
    ])
    .nullable(),
  working: z.array(z.string()),
  /** The general caution first, then those of the rule. */
  cautions: z.array(z.string()).min(1),
  /** Source, status and the day on which the words were held against it. */
  basis: z.string(),
  link: z.string(),
})
export type ClockReading = z.output<typeof clockReadingSchema>

const unitWords = {
  hours: ['hour', 'hours'],
  'calendar-days': ['calendar day', 'calendar days'],
  'business-days': ['business day', 'business days'],
  months: ['month', 'months'],
  years: ['year', 'years'],
} as const satisfies Record<ClockRule['data']['unit'], readonly [string, string]>
type ClockRule = Extract<Rule, { kind: 'clock' }>

/** "15 business days from notice of the claim". */
export function spanWords({ count, unit, trigger }: ClockRule['data']): string {
  const [one, many] = unitWords[unit]
  return `${count} ${count === 1 ? one : many} from: ${trigger}`
}

/** "F.S. 627.70132(2), 2024 statute text. Status: published; as of November 25, 2026." */
export function basisWords({ source, status, asOf }: Pick<Rule, 'source' | 'status' | 'asOf'>): string {
  return `${source.replace(/\.$/, '')}. Status: ${status}; as of ${dateWords(asOf)}.`
}

/** Counts a clock that was asked for and puts it into words. It says when, never that anybody is late. */
export function readClock(rule: ClockRule, asked: AskedClock, holidayOn: HolidayOn): ClockReading {
  const end = clockEnd(rule.data, asked.start, holidayOn)
  const applies = rule.jurisdiction === '' ? 'If this rule of the office applies' : 'If this statute applies'
  const began = dateWords(asked.start.date)
  const ends =
    end.kind === 'needs-time'
      ? 'hours are counted from a time of day, which is not stated'
      : `the time runs to ${end.kind === 'day' ? dateWords(end.date) : end.words}`
  const cautions = [clockCaution, ...rule.cautions]
  if (rule.data.unit === 'business-days') cautions.push(businessDaysWords(rule.jurisdiction))
  if (!holdsOn(rule, asked.start.date)) cautions.push(outsideWords(rule))
  return {
    asked,
    title: rule.title,
    jurisdiction: rule.jurisdiction,
    sentence: `${applies}: ${rule.title}. ${spanWords(rule.data)} (${began}); ${ends}.`,
    end:
      end.kind === 'day'
        ? { kind: 'day', date: end.date }
        : end.kind === 'instant'
          ? { kind: 'instant', atMs: end.atMs }
          : null,
    working: end.kind === 'needs-time' ? [] : [...end.working],
    cautions,
    basis: basisWords(rule),
    link: rule.link,
  }
}

function outsideWords({ effectiveFrom, effectiveUntil }: ClockRule): string {
  const from = effectiveFrom === null ? '' : ` from ${dateWords(effectiveFrom)}`
  const until = effectiveUntil === null ? '' : ` until ${dateWords(effectiveUntil)}`
  return `The rule as it was seen holds${from}${until}; the day given lies outside of that.`
}
