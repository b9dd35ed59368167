import { z } from 'zod'
import { listedRuleSchema } from '../rules/listed-rule.ts'
import { newRuleSchema, ownRuleKeySchema } from '../rules/own-rule.ts'
import { read, write } from './procedure.ts'

const done = z.object({})

/** Rules of the library, the same for all its jobs. They are no part of a job, so undo does not reach them. */
export const ruleProcedures = {
  /** Every rule, shipped ones first, also those that were hidden or withdrawn: what was computed by one can still name it. */
  'rules.list': read(z.object({}), z.object({ rules: z.array(listedRuleSchema) })),
  /** Adds a rule of one's own when `key` is null; else writes its next version and keeps the ones before. */
  'rules.save-own': write(
    z.object({ key: ownRuleKeySchema.nullable(), rule: newRuleSchema }),
    z.object({ key: z.string() }),
  ),
  /** Withdraws a rule of one's own, or brings it back. */
  'rules.withdraw-own': write(z.object({ key: ownRuleKeySchema, withdrawn: z.boolean().default(true) }), done),
  /** Hides a shipped rule from lists to choose from, or shows it again. It can't be changed. */
  'rules.hide-shipped': write(z.object({ key: z.string().min(1).max(64), hidden: z.boolean().default(true) }), done),
}
