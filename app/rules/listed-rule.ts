import { z } from 'zod'
import { ruleSchema } from './rule.ts'

/** A rule as a library lists it. */
export const listedRuleSchema = z.object({
  rule: ruleSchema,
  /** Who it comes from: the program, or somebody in this office. */
  from: z.enum(['shipped', 'own']),
  /** Out of sight in lists to choose from: a shipped rule that was hidden, or an own one that was withdrawn. */
  isPutAway: z.boolean(),
  /** How often an own rule was written: 1 when it was never changed. Always 1 for a shipped one. */
  version: z.number().int().positive(),
  /** When the own rule was last written and by whom; null for a shipped one. */
  saved: z.object({ atMs: z.number().int(), by: z.string() }).nullable(),
})
export type ListedRule = z.output<typeof listedRuleSchema>
