import { describe, expect, it } from 'vitest'
import type { CallInput } from '../../app/contract/contract.ts'
import type { DeskEvent } from '../../app/contract/events.ts'
import { shippedRules } from '../../app/rules/shipped-rules.ts'
import { openTestDesk, type TestDesk } from '../../tests/library/a-desk.ts'
import { useScratch } from '../../tests/library/scratch.ts'

const scratch = useScratch()

const reply: CallInput<'rules.save-own'>['rule'] = {
  kind: 'clock',
  title: 'Reply to an owner',
  jurisdiction: '',
  says: 'The office answers within two working days.',
  source: 'Own judgement',
  status: 'entered by the office',
  asOf: '2026-03-01',
  data: { trigger: 'a letter arrived', count: 2, unit: 'business-days' },
}

async function withDesk(work: (desk: TestDesk) => Promise<void>): Promise<void> {
  const desk = openTestDesk(scratch('library'))
  await work(desk)
  await desk.close()
}
const ownOf = async (desk: TestDesk) => (await desk.ask('rules.list', {})).rules.filter(({ from }) => from === 'own')

describe('rules of the library', () => {
  it('lists the shipped ones as they come', () =>
    withDesk(async (desk) => {
      const { rules } = await desk.ask('rules.list', {})
      expect(rules.map(({ rule }) => rule)).toEqual(shippedRules)
      expect(rules.some(({ isPutAway }) => isPutAway)).toBe(false)
    }))

  it('gives an own rule a key that no shipped one has, and a second of the same title another', () =>
    withDesk(async (desk) => {
      const first = await desk.ask('rules.save-own', { key: null, rule: reply })
      const second = await desk.ask('rules.save-own', { key: null, rule: { ...reply, title: 'Reply to an owner!' } })
      expect([first.key, second.key]).toEqual(['own-reply-to-an-owner', 'own-reply-to-an-owner-2'])
      expect(shippedRules.filter(({ key }) => key.startsWith('own-'))).toEqual([])
    }))

  it('writes a change as a next version, by whom and when, and tells the screens', () =>
    withDesk(async (desk) => {
      const heard: DeskEvent['type'][] = []
      const { key } = await desk.ask('rules.save-own', { key: null, rule: reply })
      desk.desk.listen(({ type }) => heard.push(type))
      await desk.ask('rules.save-own', { key, rule: { ...reply, says: 'Within two working days, by letter.' } })
      const [own] = await ownOf(desk)
      expect(own).toMatchObject({ version: 2, saved: { by: 'Test operator' } })
      expect(own?.rule.says).toBe('Within two working days, by letter.')
      expect(heard).toEqual(['rules-changed'])
    }))

  it('keeps a withdrawn rule by name, out of sight, and brings it back', () =>
    withDesk(async (desk) => {
      const { key } = await desk.ask('rules.save-own', { key: null, rule: reply })
      await desk.ask('rules.withdraw-own', { key })
      expect((await ownOf(desk)).map((own) => [own.rule.key, own.isPutAway])).toEqual([[key, true]])
      await desk.ask('rules.withdraw-own', { key, withdrawn: false })
      expect((await ownOf(desk)).map(({ isPutAway }) => isPutAway)).toEqual([false])
    }))

  it('hides a shipped rule but neither changes nor withdraws it', () =>
    withDesk(async (desk) => {
      const key = 'fl-notice'
      await desk.ask('rules.hide-shipped', { key })
      const { rules } = await desk.ask('rules.list', {})
      expect(rules.filter(({ isPutAway }) => isPutAway).map(({ rule }) => rule.key)).toEqual([key])
      await expect(desk.ask('rules.save-own', { key, rule: reply })).rejects.toThrow('not a rule of your own')
      await expect(desk.ask('rules.withdraw-own', { key })).rejects.toThrow('not a rule of your own')
      await expect(desk.ask('rules.hide-shipped', { key: 'own-nothing' })).rejects.toThrow('not in the library')
    }))

  it('refuses another kind under a known key, and a last day before the first', () =>
    withDesk(async (desk) => {
      const { key } = await desk.ask('rules.save-own', { key: null, rule: reply })
      const share: CallInput<'rules.save-own'>['rule'] = {
        ...reply,
        kind: 'work-share',
        data: { morePercent: 30, withinMonths: 12, sections: '', exception: null },
      }
      await expect(desk.ask('rules.save-own', { key, rule: share })).rejects.toThrow('stays of its kind')
      const rule = { ...reply, effectiveFrom: '2026-02-01', effectiveUntil: '2026-01-31' }
      await expect(desk.ask('rules.save-own', { key: null, rule })).rejects.toThrow('last day is before the first')
    }))
})
