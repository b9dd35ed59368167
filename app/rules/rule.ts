import { z } from 'zod'
import { calendarDateSchema } from '../job/calendar.ts'
import { clockSchema } from './clock.ts'
import { workShareSchema } from './work-share.ts'

const text = (max: number) => z.string().trim().max(max)

/** What stands behind a rule, as it is printed beside every figure that uses it. */
export const ruleStatusSchema = z.enum([
  'published',
  'published, seen at second hand',
  'common practice, no source',
  'from memory',
  'entered by the office',
])

const aboutSchema = z.object({
  /** Names the rule for good; what was computed by it refers to this. */
  key: z.string().regex(/^[a-z0-9][a-z0-9-]{1,63}$/, 'Use small letters, digits and hyphens, for example fl-notice.'),
  title: text(160).min(1, 'A rule needs a title.'),
  /** Where it holds: an ISO 3166-2 code such as US-FL, or empty where no law stands behind it. */
  jurisdiction: z.string().regex(/^$|^[A-Z]{2}(-[A-Z0-9]{1,3})?$/, 'Use a code such as US-FL, or leave it empty.'),
  /** The rule in plain words of our own. */
  says: text(1500).min(1, 'Say in plain words what the rule says.'),
  source: text(600).min(1, 'Say where the rule comes from, or "own judgement".'),
  /** Address at which the source can be read; empty where none is known. */
  link: text(400).default(''),
  status: ruleStatusSchema,
  /** Day on which somebody last held these words against the source. */
  asOf: calendarDateSchema,
  /** First and last day on which the rule holds; null where the source that was seen names none. */
  effectiveFrom: calendarDateSchema.nullable().default(null),
  effectiveUntil: calendarDateSchema.nullable().default(null),
  cautions: z.array(text(1000)).max(20).default([]),
})

/** A rule on the share of a roof that is worked on. */
export const workShareRuleSchema = aboutSchema.extend({ kind: z.literal('work-share'), data: workShareSchema })
export type WorkShareRule = z.output<typeof workShareRuleSchema>

/** A rule as data: who says it, where, since when, how sure we are of it, and the figures that a computation takes from it. */
export const ruleSchema = z.discriminatedUnion('kind', [
  workShareRuleSchema,
  aboutSchema.extend({ kind: z.literal('clock'), data: clockSchema }),
])
export type Rule = z.output<typeof ruleSchema>

/** True when the rule holds on a day, as far as its source names first and last days. */
export function holdsOn(rule: Pick<Rule, 'effectiveFrom' | 'effectiveUntil'>, date: string): boolean {
  return (rule.effectiveFrom ?? date) <= date && date <= (rule.effectiveUntil ?? date)
}
