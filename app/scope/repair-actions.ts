import type { ComponentKey, ConditionKey } from '../evidence/catalog/keys.ts'

/** What a repair bid proposes for a condition. */
export type RepairAction = 'replace' | 'set-again' | 'clear'

/**
 * The work that a repair bid proposes for each condition; null where no work follows by rule. Common practice, no source:
 * a person leaves lines out or adds their own.
 */
export const repairActions = {
  missing: 'replace',
  slipped: 'set-again',
  'lifts-by-hand': 'set-again',
  'fastener-raised': 'set-again',
  'hole-elongated': 'replace',
  'crack-to-fastener': 'replace',
  'corner-break': 'replace',
  'lock-broken': 'replace',
  'diagonal-crack': 'replace',
  'impact-fracture': 'replace',
  'surface-scour': null,
  'cap-loose': 'set-again',
  'cap-mortar-cracked': 'set-again',
  'mortar-cracked-at-pipe': 'set-again',
  'pad-released': 'set-again',
  'underlayment-exposed': 'replace',
  'closure-loose': 'set-again',
  'flashing-deformed': 'replace',
  'debris-on-roof': 'clear',
  'prior-repair': null,
  mismatched: null,
  'discontinued-profile': null,
  'surface-ageing': null,
  'manufacturing-flaw': null,
  'tab-creased': 'replace',
  'tab-torn': 'replace',
  'unsealed-flat': 'set-again',
  'seal-dirty': 'set-again',
  'seal-clean-torn': 'set-again',
  'stair-step-loss': 'replace',
  'nail-off-pattern': null,
  'granule-loss': null,
  bruise: null,
  'ridge-shingle-gone': 'replace',
  scuff: null,
  'panel-lifted': 'replace',
  'seam-opened': 'set-again',
  'oil-canning': null,
  'metal-trim-gone': 'replace',
  'screw-backed-out': 'replace',
  dent: null,
  'coating-scratched': null,
  'cut-edge-corrosion': null,
  sound: null,
  'not-accessible': null,
  other: null,
} as const satisfies Record<ConditionKey, RepairAction | null>

/** Parts that can't be worked on by themselves, and the piece that is taken in hand for them (common practice, no source). */
const wholePiece: Partial<Record<ComponentKey, ComponentKey>> = {
  headlap: 'field-tile',
  sidelap: 'field-tile',
  nose: 'field-tile',
  'head-lugs': 'field-tile',
  'shingle-tab': 'shingle-field',
  'seal-strip': 'shingle-field',
  pan: 'panel',
  seam: 'panel',
  washer: 'exposed-screw',
}

/** The piece that work on a component takes in hand: the tile for its side lock, else the component itself. */
export function pieceOf(component: ComponentKey): ComponentKey {
  return wholePiece[component] ?? component
}

/** Pieces of the covering that are bought, fastened and carted away by the piece. */
export const coveringPieces: readonly ComponentKey[] = [
  'field-tile',
  'eave-tile',
  'rake-tile',
  'ridge-tile',
  'hip-tile',
  'shingle-field',
  'hip-ridge-shingle',
]
