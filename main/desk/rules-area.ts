import { refuse } from '../../app/contract/app-error.ts'
import { ownRuleKey } from '../../app/rules/own-rule.ts'
import { ruleSchema } from '../../app/rules/rule.ts'
import { inTransaction } from '../store/database.ts'
import { addRuleVersion, listRules, putRuleAway } from '../store/rules.ts'
import type { DeskWorld } from './desk-world.ts'
import type { Area } from './handlers.ts'

/** Rules of the library: the shipped ones, which stay as they are, and those of the office. */
export function rulesArea(world: DeskWorld): Area<'rules'> {
  const { db } = world.library
  const need = (key: string, from: 'shipped' | 'own') => {
    const found = listRules(db).find((listed) => listed.rule.key === key && listed.from === from)
    return found ?? refuse('not-found', 'This rule is not in the library.', { about: 'key' })
  }
  return {
    'rules.list': () => ({ rules: listRules(db) }),
    'rules.save-own': ({ key: known, rule }) => {
      if (known !== null && need(known, 'own').rule.kind !== rule.kind) {
        refuse('invalid', 'A rule stays of its kind.', { about: 'rule.kind', help: 'Add a new rule instead.' })
      }
      const key = known ?? ownRuleKey(rule.title, new Set(listRules(db).map((listed) => listed.rule.key)))
      inTransaction(db, (write) =>
        addRuleVersion(write, ruleSchema.parse({ ...rule, key }), { atMs: world.now(), by: world.operator() }),
      )
      world.announce({ type: 'rules-changed' })
      return { key }
    },
    'rules.withdraw-own': ({ key, withdrawn }) => {
      need(key, 'own')
      inTransaction(db, (write) => putRuleAway(write, key, withdrawn))
      world.announce({ type: 'rules-changed' })
      return {}
    },
    'rules.hide-shipped': ({ key, hidden }) => {
      need(key, 'shipped')
      inTransaction(db, (write) => putRuleAway(write, key, hidden))
      world.announce({ type: 'rules-changed' })
      return {}
    },
  }
}
