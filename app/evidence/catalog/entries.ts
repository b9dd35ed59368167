import type { LookedAt, MeasureKey } from '../finding.ts'
import type { ComponentKey, PhotoRole } from './keys.ts'
import type { PublishedViewKey } from './published-views.ts'

/** Families of roof covering that the catalog tells apart. */
export type CoveringGroup = 'tile' | 'shingle' | 'metal'

/** Every family, for parts and conditions that any roof can have. */
export const anyCovering: readonly CoveringGroup[] = ['tile', 'shingle', 'metal']

/** A part of a roof in plain words. */
export interface ComponentEntry {
  readonly label: string
  /** One of it as a counted noun: "ridge tile", "place in the underlayment". */
  readonly one: string
  readonly many: string
  readonly meaning: string
  readonly coverings: readonly CoveringGroup[]
  /** One or two letters that tag it. No key of a covering begins with another key of the same covering. */
  readonly tagKey: string
}

/** A question that an adjuster will ask of a finding. */
export type LookedAtKey = keyof LookedAt

/** What can be seen on a component, how to look at it, and what else to think of. */
export interface ConditionEntry {
  readonly label: string
  readonly definition: string
  readonly coverings: readonly CoveringGroup[]
  /** Components it is usually found on, likeliest first. */
  readonly components: 'any' | readonly ComponentKey[]
  readonly lookFor: readonly string[]
  /** Indicators that inspectors often read as wind; none of them proves it. */
  readonly oftenReadAsWind: readonly string[]
  readonly otherExplanations: readonly string[]
  readonly photoRoles: readonly PhotoRole[]
  readonly measures: readonly MeasureKey[]
  /** Graded words, from slight to plain. */
  readonly degrees: readonly string[]
  readonly tagKey: string
  readonly lookedAt: readonly LookedAtKey[]
  /** Published statements that bear on it. */
  readonly publishedViews: readonly PublishedViewKey[]
}
