import { describe, expect, it } from 'vitest'
import { holdsOn, ruleSchema } from './rule.ts'

const written = {
  kind: 'clock',
  key: 'office-reply',
  title: 'Reply to an owner',
  jurisdiction: '',
  says: 'The office answers within two working days.',
  source: 'Own judgement',
  status: 'entered by the office',
  asOf: '2026-03-01',
  data: { trigger: 'a letter arrived', count: 2, unit: 'business-days' },
}

describe('a rule as data', () => {
  it('names its source, its status and the day it was looked at', () => {
    expect(ruleSchema.parse(written)).toMatchObject({
      status: 'entered by the office',
      asOf: '2026-03-01',
      cautions: [],
    })
  })

  it.each(['source', 'status', 'asOf', 'says', 'title'])('is refused without its %s', (field) => {
    expect(ruleSchema.safeParse({ ...written, [field]: undefined }).success).toBe(false)
  })

  it('holds from its first to its last day, both counted', () => {
    const spring = { effectiveFrom: '2024-03-01', effectiveUntil: '2024-05-31' }
    expect(['2024-02-29', '2024-03-01', '2024-05-31', '2024-06-01'].map((day) => holdsOn(spring, day))).toEqual([
      false,
      true,
      true,
      false,
    ])
  })

  it('holds always where no day is named', () => {
    expect(holdsOn({ effectiveFrom: null, effectiveUntil: null }, '1999-01-01')).toBe(true)
  })
})
