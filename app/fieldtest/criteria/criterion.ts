import { z } from 'zod'

const text = (max: number) => z.string().max(max)

/**
 * What a reading is held against. `lift-limit`: the nose should rise no more than so much under less than a force.
 * `held-load`: the tile should hold a force, which may be a share of a resistance that a product approval lists.
 */
const ruleSchema = z.discriminatedUnion('kind', [
  z.object({
    kind: z.literal('lift-limit'),
    liftIn: z.number().positive().max(48),
    forceLbf: z.number().positive().max(1000),
  }),
  z.object({ kind: z.literal('held-load'), forceLbf: z.number().positive().max(1000) }),
  z.object({ kind: z.literal('share-of-listed'), percent: z.number().positive().max(100) }),
])
export type CriterionRule = z.output<typeof ruleSchema>

/** A criterion as an office writes it down, with everything a reader must know before weighing a reading by it. */
export const ownCriterionSchema = z.object({
  key: z.string().min(1).max(64),
  name: text(120).min(1, 'A criterion needs a name.'),
  rule: ruleSchema,
  /** Tiles, attachments and purposes that it is meant for. */
  scope: text(1000).min(1, 'Say which tiles and attachments the criterion is for.'),
  source: text(600).min(1, 'Say where the criterion comes from, or "own judgement".'),
  cautions: z.array(text(1000)).max(20).default([]),
  /** First and last day on which it holds, as far as its source says so: "2021-01-01". */
  effectiveFrom: text(40).default(''),
  effectiveUntil: text(40).default(''),
})

/** Who may use a criterion's name. */
type Use = 'anyone' | 'approved-agency'

export interface Criterion extends Omit<z.output<typeof ownCriterionSchema>, 'cautions'> {
  readonly cautions: readonly string[]
  /** What stands behind it, as it is printed. */
  readonly status: string
  readonly use: Use
}

/** The rule in words with its figures. */
export function ruleWords(rule: CriterionRule): string {
  switch (rule.kind) {
    case 'lift-limit':
      return `The nose should rise no more than ${rule.liftIn} in under less than ${rule.forceLbf} lbf.`
    case 'held-load':
      return `The tile should hold ${rule.forceLbf} lbf.`
    case 'share-of-listed':
      return `The tile should hold ${rule.percent} % of the resistance that its product approval lists.`
  }
}
