import type { CoveringClass } from '../../job/sheet.ts'
import { components } from './components.ts'
import { conditions } from './conditions.ts'
import type { CoveringGroup } from './entries.ts'
import { componentKeySchema, conditionKeySchema, type ComponentKey, type ConditionKey } from './keys.ts'

/** Something a list offers, with the key that picks it; no key where two coverings would want the same one. */
export interface TagChoice<Key> {
  readonly key: Key
  readonly label: string
  readonly tagKey: string | null
}

const groupOf = {
  'concrete-tile': 'tile',
  'clay-tile': 'tile',
  'asphalt-shingle': 'shingle',
  'metal-panel': 'metal',
  other: null,
  'not-stated': null,
} as const satisfies Record<CoveringClass, CoveringGroup | null>

/**
 * Components to offer on a roof of this covering. Where the covering is not known all are offered, and the keys are
 * those of a tile roof.
 */
export function componentChoices(covering: CoveringClass): readonly TagChoice<ComponentKey>[] {
  return choices(covering, components, componentKeySchema.options)
}

/** Conditions to offer on a roof of this covering; see `componentChoices`. */
export function conditionChoices(covering: CoveringClass): readonly TagChoice<ConditionKey>[] {
  return choices(covering, conditions, conditionKeySchema.options)
}

interface Offered {
  readonly label: string
  readonly tagKey: string
  readonly coverings: readonly CoveringGroup[]
}

function choices<Key extends string>(
  covering: CoveringClass,
  entries: Readonly<Record<Key, Offered>>,
  keys: readonly Key[],
): readonly TagChoice<Key>[] {
  const group = groupOf[covering]
  return keys.flatMap((key) => {
    const { label, tagKey, coverings } = entries[key]
    if (group !== null) return coverings.includes(group) ? [{ key, label, tagKey }] : []
    return [{ key, label, tagKey: coverings.includes('tile') ? tagKey : null }]
  })
}
