import type { Criterion, CriterionRule } from './criteria/criterion.ts'
import { figure } from './reading-words.ts'
import type { Reading } from './reading.ts'

/** What a reading says under a criterion. Each carries the sentence that shows its working. */
export type Judgement =
  | { readonly kind: 'meets'; readonly working: string }
  | { readonly kind: 'does-not-meet'; readonly working: string }
  | { readonly kind: 'at-limit'; readonly working: string }
  | {
      readonly kind: 'cannot-judge'
      readonly why: 'no-force' | 'no-lift' | 'not-far-enough' | 'too-far' | 'no-outcome' | 'no-listed'
      readonly working: string
    }

/** Short words for a table. Never "fails code": a criterion is not the code. */
export function judgementWords(judgement: Judgement): string {
  switch (judgement.kind) {
    case 'meets':
      return 'meets the criterion'
    case 'does-not-meet':
      return 'does not meet it'
    case 'at-limit':
      return 'at the limit'
    case 'cannot-judge':
      return `cannot be judged: ${whyWords[judgement.why]}`
  }
}

const whyWords = {
  'no-force': 'no force recorded',
  'no-lift': 'no lift recorded',
  'not-far-enough': 'pulled with less than the force',
  'too-far': 'lift at the force not recorded',
  'no-outcome': 'not said whether it held',
  'no-listed': 'listed resistance not entered',
} as const

type Pull = Pick<Reading, 'forceLbf' | 'liftIn' | 'outcome'>

/** Holds a reading against a criterion. Readings without both figures that the rule needs are never judged. */
export function judgeReading(reading: Pull, criterion: Pick<Criterion, 'rule'>, listedLbf: number | null): Judgement {
  const { rule } = criterion
  if (reading.forceLbf === null) {
    return cannot('no-force', 'No force was recorded, so the lift can be told but not weighed.')
  }
  switch (rule.kind) {
    case 'lift-limit':
      return judgeLift(reading.forceLbf, reading.liftIn, rule)
    case 'held-load':
      return judgeLoad(reading.forceLbf, reading.outcome, { forceLbf: rule.forceLbf, words: `${rule.forceLbf} lbf` })
    case 'share-of-listed': {
      if (listedLbf === null) {
        return cannot('no-listed', `The rule is ${rule.percent} % of the listed resistance, and none is entered.`)
      }
      const forceLbf = (listedLbf * rule.percent) / 100
      const words = `${rule.percent} % × ${figure(listedLbf)} lbf listed = ${figure(forceLbf)} lbf`
      return judgeLoad(reading.forceLbf, reading.outcome, { forceLbf, words })
    }
  }
}

function judgeLift(
  forceLbf: number,
  liftIn: number | null,
  rule: Extract<CriterionRule, { kind: 'lift-limit' }>,
): Judgement {
  if (liftIn === null) return cannot('no-lift', 'No lift was recorded, so the force can be told but not weighed.')
  const read = `${figure(liftIn)} in at ${figure(forceLbf)} lbf`
  if (liftIn > rule.liftIn) {
    if (forceLbf < rule.forceLbf)
      return fails(`${read}: more than ${rule.liftIn} in under less than ${rule.forceLbf} lbf.`)
    if (forceLbf === rule.forceLbf)
      return atLimit(`${read}: the force is exactly ${rule.forceLbf} lbf, not less than it.`)
    return cannot('too-far', `${read}: how far it had risen short of ${rule.forceLbf} lbf was not recorded.`)
  }
  if (forceLbf >= rule.forceLbf)
    return meets(`${read}: no more than ${rule.liftIn} in, and ${rule.forceLbf} lbf was reached.`)
  if (liftIn === rule.liftIn)
    return atLimit(`${read}: exactly ${rule.liftIn} in before ${rule.forceLbf} lbf was reached.`)
  return cannot(
    'not-far-enough',
    `${read}: ${rule.forceLbf} lbf was not reached, so it can't be said how far it would rise.`,
  )
}

function judgeLoad(
  forceLbf: number,
  outcome: Reading['outcome'],
  needed: { readonly forceLbf: number; readonly words: string },
): Judgement {
  const read = `${figure(forceLbf)} lbf against ${needed.words}`
  switch (outcome) {
    case 'held':
      return forceLbf >= needed.forceLbf
        ? meets(`${read}: reached, and the tile held.`)
        : cannot('not-far-enough', `${read}: the tile held, but was not pulled that hard.`)
    case 'came-loose':
    case 'broke':
      if (forceLbf < needed.forceLbf) return fails(`${read}: the tile gave way before.`)
      return forceLbf === needed.forceLbf
        ? atLimit(`${read}: the tile gave way at that very force.`)
        : meets(`${read}: passed before the tile gave way.`)
    case 'not-stated':
      return cannot('no-outcome', `${read}: whether the tile held is not recorded.`)
  }
}

function meets(working: string): Judgement {
  return { kind: 'meets', working }
}
function fails(working: string): Judgement {
  return { kind: 'does-not-meet', working }
}
function atLimit(working: string): Judgement {
  return { kind: 'at-limit', working }
}
function cannot(why: Extract<Judgement, { kind: 'cannot-judge' }>['why'], working: string): Judgement {
  return { kind: 'cannot-judge', why, working }
}
