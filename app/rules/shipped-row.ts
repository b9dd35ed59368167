import { ruleSchema, type Rule } from './rule.ts'

/** A shipped clock in one line: its figures, where it comes from, and what a reader must know before counting by it. */
export interface ShippedRow {
  readonly key: string
  readonly jurisdiction: string
  readonly title: string
  readonly says: string
  readonly trigger: string
  readonly count: number
  readonly unit: Extract<Rule, { kind: 'clock' }>['data']['unit']
  readonly source: string
  readonly status: Rule['status']
  readonly cautions?: readonly string[]
  readonly effectiveFrom?: string
  readonly effectiveUntil?: string
}

/** Day on which the shipped rows were last held against what is named as their source. */
const LOOKED_AT = '2026-11-25'

/** The rule that a row stands for. `link`: where the current text of the law can be looked up. */
export function shippedClock({ trigger, count, unit, ...about }: ShippedRow, link: string): Rule {
  return ruleSchema.parse({ ...about, kind: 'clock', asOf: LOOKED_AT, link, data: { trigger, count, unit } })
}
