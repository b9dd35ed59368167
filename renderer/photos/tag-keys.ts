import type { PhotoTagsPatch } from '../../app/contract/edits.ts'
import { componentChoices, conditionChoices } from '../../app/evidence/catalog/choices.ts'
import { photoRoleSchema, type PhotoRole } from '../../app/evidence/catalog/keys.ts'
import { photoRoleLabels } from '../../app/evidence/catalog/labels.ts'
import type { CoveringClass } from '../../app/job/sheet.ts'
import type { Facet } from '../../app/roof/facet.ts'

/** What a tagging key is about. Each step is entered by its own key, then the choice is typed. */
export type TagStep = 'facet' | 'component' | 'condition' | 'role'

/** The steps with the key that enters each. */
export const tagSteps = [
  { step: 'facet', key: 'F', label: 'Facet' },
  { step: 'component', key: 'C', label: 'Component' },
  { step: 'condition', key: 'D', label: 'Condition' },
  { step: 'role', key: 'R', label: 'Role' },
] as const satisfies readonly { step: TagStep; key: string; label: string }[]

/** One thing that can be chosen in a step, and the letters that choose it; none for one that is only clicked. */
export interface TagKeyChoice {
  readonly keys: string | null
  readonly label: string
  readonly patch: PhotoTagsPatch
}

/** Takes a tag back, in every step. */
const NOTHING_KEY = '-'

const roleKeys = {
  overview: 'o',
  mid: 'm',
  close: 'c',
  scale: 's',
  test: 't',
  elevation: 'e',
  document: 'd',
  other: 'x',
} as const satisfies Record<PhotoRole, string>

/** What can be chosen in a step on a roof of this covering, with the letters for it. */
export function tagChoices(
  step: TagStep,
  roof: { readonly facets: readonly Facet[]; readonly covering: CoveringClass },
): readonly TagKeyChoice[] {
  switch (step) {
    case 'facet':
      return [
        ...roof.facets.map(({ id, letter, name }) => ({
          keys: letter.toLowerCase(),
          label: name === '' ? letter : `${letter}, ${name}`,
          patch: { facetId: id },
        })),
        { keys: NOTHING_KEY, label: 'No facet', patch: { facetId: null } },
      ]
    case 'component':
      return [
        ...componentChoices(roof.covering).map(({ key, label, tagKey }) => ({
          keys: tagKey,
          label,
          patch: { component: key },
        })),
        { keys: NOTHING_KEY, label: 'No component', patch: { component: null } },
      ]
    case 'condition':
      return [
        ...conditionChoices(roof.covering).map(({ key, label, tagKey }) => ({
          keys: tagKey,
          label,
          patch: { condition: key },
        })),
        { keys: NOTHING_KEY, label: 'No condition', patch: { condition: null } },
      ]
    case 'role':
      return [
        ...photoRoleSchema.options.map((role) => ({
          keys: roleKeys[role],
          label: photoRoleLabels[role],
          patch: { role },
        })),
        { keys: NOTHING_KEY, label: 'No role', patch: { role: null } },
      ]
  }
}

/** What a typed letter leads to: a choice, more letters to come, or nothing that fits. */
export type TagKeyOutcome =
  | { readonly kind: 'chosen'; readonly choice: TagKeyChoice }
  | { readonly kind: 'more'; readonly typed: string }
  | { readonly kind: 'nothing' }

/**
 * Follows the letters typed in a step. A choice is taken as soon as no longer one begins with the same letters; where
 * one does, as with facets A and AA, `Enter` takes the shorter.
 */
export function typedTagKey(typed: string, key: string, choices: readonly TagKeyChoice[]): TagKeyOutcome {
  const exact = (letters: string) => choices.find((choice) => choice.keys === letters)
  if (key === 'Enter') {
    const choice = exact(typed)
    return choice === undefined ? { kind: 'nothing' } : { kind: 'chosen', choice }
  }
  if (key === 'Backspace') return { kind: 'more', typed: typed.slice(0, -1) }
  if ([...key].length !== 1) return { kind: 'nothing' }
  const letters = typed + key.toLowerCase()
  const fitting = choices.filter((choice) => choice.keys?.startsWith(letters) === true)
  const choice = exact(letters)
  if (choice !== undefined && fitting.length === 1) return { kind: 'chosen', choice }
  return fitting.length === 0 ? { kind: 'nothing' } : { kind: 'more', typed: letters }
}

/** Choices whose words have all that is typed, those that begin with it first. */
export function choicesWithWords(choices: readonly TagKeyChoice[], typed: string): readonly TagKeyChoice[] {
  const words = typed.toLowerCase().split(/\s+/)
  const starts = (choice: TagKeyChoice) => Number(choice.label.toLowerCase().startsWith(typed.trim().toLowerCase()))
  return choices
    .filter(({ label }) => words.every((word) => label.toLowerCase().includes(word)))
    .toSorted((a, b) => starts(b) - starts(a))
}
