import { describe, expect, it } from 'vitest'
import { shippedRules } from './shipped-rules.ts'

const figures = (key: string) =>
  shippedRules.flatMap((rule) => (rule.key === key && rule.kind === 'clock' ? [rule.data] : []))

describe('shipped rules', () => {
  it('have keys of their own', () => {
    const keys = shippedRules.map(({ key }) => key)
    expect(new Set(keys).size).toBe(keys.length)
  })

  // Days as the statutes named in each row's source have them.
  it.each([
    ['fl-notice', 1, 'years', 'date of loss'],
    ['fl-supplement', 18, 'months', 'date of loss'],
    ['fl-acknowledge', 7, 'calendar-days', 'receipt of the communication'],
    ['fl-inspect', 30, 'calendar-days', 'receipt of the proof of loss'],
    ['fl-decide', 60, 'calendar-days', 'notice of the claim'],
    ['fl-cancel', 10, 'calendar-days', 'execution of the contract'],
    ['tx-decide', 15, 'business-days', 'all items received'],
    ['la-start', 14, 'calendar-days', 'notice of loss'],
    ['co-rescind', 72, 'hours', 'written notice of denial, in whole or in part'],
    ['ga-cancel', 5, 'business-days', 'written notice to the owner'],
  ])('%s counts %i %s from its event', (key, ...expected) => {
    const [count, unit, trigger] = expected
    expect(figures(key)).toEqual([{ count, unit, trigger }])
  })

  it('never say that somebody is late or owes something', () => {
    const words = shippedRules.map(({ title, says, cautions }) => [title, says, ...cautions].join(' ')).join('\n')
    expect(words).not.toMatch(/\b(late|overdue|owes?|owed|bad faith|must pay|violat\w+)\b/i)
  })

  it('marks what was not read in the statute itself', () => {
    const secondHand = shippedRules.filter(({ status }) => status === 'published, seen at second hand')
    expect(secondHand.map(({ key }) => key)).toContain('fl-decide')
    expect(secondHand.map(({ key }) => key)).not.toContain('fl-notice')
  })
})
