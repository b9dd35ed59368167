import { z } from 'zod'
import { ruleSchema, type Rule } from './rule.ts'

const OWN = 'own-'

/** Key of a rule that somebody entered; no shipped rule's key begins like it. */
export const ownRuleKeySchema = z
  .string()
  .max(64)
  .regex(/^own-[a-z0-9][a-z0-9-]*$/, 'This is not a rule of your own.')

const [workShare, clock] = ruleSchema.options
const daysInOrder = (rule: Pick<Rule, 'effectiveFrom' | 'effectiveUntil'>): boolean =>
  rule.effectiveFrom === null || rule.effectiveUntil === null || rule.effectiveFrom <= rule.effectiveUntil

/** A rule as somebody enters it; its key is given by the library. */
export const newRuleSchema = z
  .discriminatedUnion('kind', [workShare.omit({ key: true }), clock.omit({ key: true })])
  .refine(daysInOrder, { message: 'The last day is before the first.', path: ['effectiveUntil'] })

/**
 * A key for a new rule of one's own, made from its title: "Reply to an owner" gives `own-reply-to-an-owner`, and a
 * second one `own-reply-to-an-owner-2`.
 *
 * @param taken every key that was ever used, also those of withdrawn rules
 */
export function ownRuleKey(title: string, taken: ReadonlySet<string>): string {
  const words = title
    .normalize('NFKD')
    .toLowerCase()
    .replace(/\p{M}/gu, '')
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, 48)
    .replace(/^-+|-+$/g, '')
  const base = `${OWN}${words === '' ? 'rule' : words}`
  for (let n = 1; ; n += 1) {
    const key = n === 1 ? base : `${base}-${n}`
    if (!taken.has(key)) return key
  }
}
