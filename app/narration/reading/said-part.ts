import type { ComponentKey } from '../../evidence/catalog/keys.ts'
import type { CoveringGroup } from '../../evidence/catalog/entries.ts'
import { isCounted, type SaidPart } from '../words/component-words.ts'
import type { SpokenWord } from '../words/spoken-words.ts'

/** A part of a roof named in a sentence. */
export interface PartMark {
  readonly said: SaidPart
  readonly at: number
  readonly length: number
  /** How it stands: what the sentence is about, what something is on or at, or what something is only near. */
  readonly stands: 'head' | 'on' | 'near'
  readonly isPlural: boolean
}

const ON = /^(on|in|at|along|around|to|into|through|across|over|onto|against|off|inside|within|up)$/
const NEAR =
  /^(by|from|near|next|beside|under|underneath|beneath|below|above|behind|between|toward|towards|past|before|beyond)$/
const BETWEEN =
  /^(the|this|that|these|those|a|an|its|their|to|of|one|two|each|every|both|right|left|edge|side|top|bottom|upper|lower|main|second|first|next|other|front|back|lead|whole|all|missing|broken|cracked|loose|slipped|damaged|torn)$/

/** How a part at a word stands, by the preposition before it. */
export function standingOf(words: readonly SpokenWord[], at: number): PartMark['stands'] {
  for (let i = at - 1; i >= Math.max(0, at - 4); i -= 1) {
    if (words[i + 1]?.parted !== 'no') return 'head'
    const text = words[i]?.text ?? ''
    if (NEAR.test(text)) return 'near'
    if (ON.test(text)) return text === 'up' ? 'head' : 'on'
    if (!BETWEEN.test(text)) return 'head'
  }
  return 'head'
}

const EDGES = {
  'edge-ridge': { tile: 'ridge-tile', shingle: 'hip-ridge-shingle', metal: 'ridge-flashing' },
  'edge-hip': { tile: 'hip-tile', shingle: 'hip-ridge-shingle', metal: 'ridge-flashing' },
  'edge-rake': { tile: 'rake-tile', shingle: 'starter-strip', metal: 'rake-trim' },
  'edge-eave': { tile: 'eave-tile', shingle: 'starter-strip', metal: 'eave-cleat' },
  'edge-valley': { tile: 'valley-metal', shingle: 'valley-metal', metal: 'valley-metal' },
} as const satisfies Record<string, Record<CoveringGroup, ComponentKey>>

/** Names that a tile roof's parts have on other coverings. */
const ON_SHINGLE: Partial<Record<ComponentKey, ComponentKey>> = {
  'ridge-tile': 'hip-ridge-shingle',
  'hip-tile': 'hip-ridge-shingle',
  'eave-tile': 'starter-strip',
}
const ON_METAL: Partial<Record<ComponentKey, ComponentKey>> = {
  'ridge-tile': 'ridge-flashing',
  'hip-tile': 'ridge-flashing',
  'rake-tile': 'rake-trim',
  fastener: 'exposed-screw',
}

/** The catalog's component for a part as it is said, on a covering. `lastEdge` tells a ridge's cap from a hip's. */
export function componentOf(said: SaidPart, group: CoveringGroup, lastEdge: 'ridge' | 'hip' | null): ComponentKey {
  if (said === 'cap') return componentOf(lastEdge === 'hip' ? 'hip-tile' : 'ridge-tile', group, null)
  if (isEdge(said)) return EDGES[said][group]
  return (group === 'shingle' ? ON_SHINGLE[said] : group === 'metal' ? ON_METAL[said] : undefined) ?? said
}

/** What is counted on a covering when no part is named. */
export function unitOf(group: CoveringGroup): ComponentKey {
  return group === 'tile' ? 'field-tile' : group === 'shingle' ? 'shingle-field' : 'panel'
}

/** True for pieces that are lifted by hand: tiles and caps, shingles, panels. */
export function isUnit(part: ComponentKey): boolean {
  return /^(field|ridge|hip|rake|eave)-tile$|^shingle-|^hip-ridge|^panel$/.test(part)
}

/** True for "ridge", "hip" and the like without "cap" or "tile". */
export function isEdge(said: SaidPart): said is keyof typeof EDGES {
  return said in EDGES
}

/** The edge that a part lies on, where it lies on one. */
export function edgeOf(said: SaidPart): 'ridge' | 'hip' | null {
  if (said === 'edge-ridge' || said === 'ridge-tile') return 'ridge'
  return said === 'edge-hip' || said === 'hip-tile' ? 'hip' : null
}

/** True when the mark speaks of a single piece. */
export function isOnePiece({ said, isPlural }: PartMark): boolean {
  return !isPlural && isCounted(said)
}
