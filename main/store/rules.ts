import { z } from 'zod'
import type { ListedRule } from '../../app/rules/listed-rule.ts'
import { ruleSchema, type Rule } from '../../app/rules/rule.ts'
import { shippedRules } from '../../app/rules/shipped-rules.ts'
import { row, rows, run, type ReadDb, type WriteDb } from './database.ts'
import { fromJson } from './json-column.ts'

const ownRowSchema = z.object({
  version: z.number(),
  data: z.string(),
  saved_at_ms: z.number(),
  saved_by: z.string(),
})

/** Every rule of the library: the shipped ones in their order, then own ones by title, each in its newest version. */
export function listRules(db: ReadDb): ListedRule[] {
  const putAway = new Set(
    rows(db, 'select key from rules_put_away').map((found) => z.object({ key: z.string() }).parse(found).key),
  )
  const shipped = shippedRules.map((rule): ListedRule => ({
    rule,
    from: 'shipped',
    isPutAway: putAway.has(rule.key),
    version: 1,
    saved: null,
  }))
  const own = rows(
    db,
    `select version, data, saved_at_ms, saved_by from own_rules o
     where version = (select max(version) from own_rules where key = o.key)`,
  ).map((found): ListedRule => {
    const { version, data, saved_at_ms: atMs, saved_by: by } = ownRowSchema.parse(found)
    const rule = fromJson(ruleSchema, data, 'rule')
    return { rule, from: 'own', isPutAway: putAway.has(rule.key), version, saved: { atMs, by } }
  })
  return [...shipped, ...own.sort((a, b) => (a.rule.title < b.rule.title ? -1 : a.rule.title > b.rule.title ? 1 : 0))]
}

/** Writes the next version of an own rule; the ones before stay. */
export function addRuleVersion(db: WriteDb, rule: Rule, saved: { atMs: number; by: string }): void {
  const last = z
    .object({ last: z.number() })
    .parse(row(db, 'select coalesce(max(version), 0) as last from own_rules where key = :key', { key: rule.key })).last
  run(
    db,
    `insert into own_rules (key, version, data, saved_at_ms, saved_by)
     values (:key, :version, :data, :atMs, :by)`,
    { key: rule.key, version: last + 1, data: JSON.stringify(rule), ...saved },
  )
}

/** Puts a rule out of sight, or back. */
export function putRuleAway(db: WriteDb, key: string, isPutAway: boolean): void {
  if (isPutAway) run(db, 'insert into rules_put_away (key) values (:key) on conflict (key) do nothing', { key })
  else run(db, 'delete from rules_put_away where key = :key', { key })
}
