import type { ComponentKey } from '../../evidence/catalog/keys.ts'
import type { SaidPart } from '../words/component-words.ts'
import type { Marks } from './marks.ts'
import type { Before, Observation } from './observe.ts'
import { componentOf, edgeOf, isEdge, isOnePiece } from './said-part.ts'

/** The part that later sentences may mean without naming it. */
export function partLeft(marks: Marks, observations: readonly Observation[], before: Before): ComponentKey | null {
  const last = observations.at(-1)
  if (last !== undefined && last.component !== 'other') return last.component
  const head = marks.parts.findLast(({ stands, said }) => stands === 'head' && !isEdge(said))
  if (head === undefined) return before.part
  return componentOf(head.said, before.group, lastEdgeOf(marks.parts, before.lastEdge))
}

/** Whether "it" in later sentences means one piece: "there is a field tile by my knee". */
export function isOneLeft({ words, parts }: Marks, before: boolean): boolean {
  const head = parts.findLast(({ stands, said }) => stands === 'head' && !isEdge(said))
  if (head === undefined) return before
  const lead = words.slice(Math.max(0, head.at - 2), head.at)
  return isOnePiece(head) && lead.some(({ text }) => /^(an?|one|this|that|another)$/.test(text))
}

/** The ridge or hip that "caps" in later sentences stand on. */
export function lastEdgeOf(
  parts: readonly { readonly said: SaidPart }[],
  before: 'ridge' | 'hip' | null,
): 'ridge' | 'hip' | null {
  return parts.map(({ said }) => edgeOf(said)).findLast((edge) => edge !== null) ?? before
}
