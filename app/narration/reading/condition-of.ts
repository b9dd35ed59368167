import { conditions } from '../../evidence/catalog/conditions.ts'
import type { ComponentKey, ConditionKey } from '../../evidence/catalog/keys.ts'
import type { Sign } from '../words/condition-words.ts'

type Table = readonly (readonly [ConditionKey, readonly ComponentKey[]])[]

const TILES = ['field-tile', 'eave-tile', 'rake-tile'] as const
const CAPS = ['ridge-tile', 'hip-tile'] as const
const UNITS = [...TILES, ...CAPS] as const
const SHEET = ['flashing', 'step-flashing', 'headwall-flashing', 'valley-metal', 'drip-edge'] as const
const THROUGH = ['pipe-penetration', 'chimney', 'vent', 'skylight'] as const
const TRIM = ['ridge-flashing', 'rake-trim', 'eave-cleat'] as const
const PANELS = ['panel', 'pan', 'clip'] as const
const SCREWS = ['exposed-screw', 'washer'] as const
const SHINGLES = ['shingle-field', 'shingle-tab'] as const

const LOOSE: Table = [
  ['cap-loose', [...CAPS, 'nailer']],
  ['lifts-by-hand', TILES],
  ['cap-mortar-cracked', ['mortar-bed']],
  ['pad-released', ['adhesive-pad']],
  ['closure-loose', ['eave-closure']],
  ['flashing-deformed', [...SHEET, ...THROUGH]],
  ['fastener-raised', ['fastener']],
  ['screw-backed-out', SCREWS],
  ['panel-lifted', PANELS],
  ['metal-trim-gone', TRIM],
  ['seam-opened', ['seam']],
  ['unsealed-flat', [...SHINGLES, 'seal-strip']],
  ['lock-broken', ['sidelap']],
]

const BROKEN: Table = [
  ['diagonal-crack', [...UNITS, 'head-lugs']],
  ['impact-fracture', ['nose']],
  ['lock-broken', ['sidelap']],
  ['cap-mortar-cracked', ['mortar-bed']],
  ['fastener-raised', ['fastener']],
  ['screw-backed-out', SCREWS],
  ['closure-loose', ['eave-closure']],
  ['underlayment-exposed', ['underlayment']],
  ['tab-torn', SHINGLES],
  ['ridge-shingle-gone', ['hip-ridge-shingle']],
  ['seam-opened', ['seam']],
  ['pad-released', ['adhesive-pad']],
  ['flashing-deformed', SHEET],
]

/** What a sign is called on a part, in the catalog's terms. What a list does not name is "other", or nothing (`null` below). */
const TABLES = {
  missing: [
    ['cap-mortar-cracked', ['mortar-bed']],
    ['fastener-raised', ['fastener']],
    ['pad-released', ['adhesive-pad']],
    ['tab-torn', SHINGLES],
    ['ridge-shingle-gone', ['hip-ridge-shingle']],
    ['panel-lifted', PANELS],
    ['metal-trim-gone', TRIM],
    ['closure-loose', ['eave-closure']],
    ['flashing-deformed', ['flashing', 'step-flashing', 'headwall-flashing', 'valley-metal']],
    ['lock-broken', ['sidelap']],
    ['screw-backed-out', SCREWS],
    ['corner-break', ['nose']],
    ['underlayment-exposed', ['underlayment']],
    [
      'missing',
      [...UNITS, 'vent', 'drip-edge', 'gutter', 'nailer', 'batten', 'fascia', 'skylight', 'starter-strip', 'cricket'],
    ],
  ],
  off: [
    ['cap-loose', CAPS],
    ['closure-loose', ['eave-closure']],
    ['missing', [...TILES, 'vent', 'drip-edge', 'gutter']],
    ['flashing-deformed', SHEET],
  ],
  slip: [
    ['slipped', UNITS],
    ['closure-loose', ['eave-closure']],
    ['flashing-deformed', SHEET],
    ['panel-lifted', PANELS],
    ['underlayment-exposed', ['underlayment']],
  ],
  loose: LOOSE,
  lift: LOOSE,
  crack: [['mortar-cracked-at-pipe', ['chimney', 'headwall-flashing']], ['granule-loss', SHINGLES], ...BROKEN],
  'crack-to-fastener': [['crack-to-fastener', [...UNITS, 'fastener']]],
  break: BROKEN,
  shatter: [['other', UNITS], ...BROKEN],
  lengthwise: [['other', UNITS], ...BROKEN],
  across: [['diagonal-crack', UNITS]],
  chip: [
    ['impact-fracture', [...UNITS, 'nose']],
    ['bruise', SHINGLES],
    ['dent', [...PANELS, ...TRIM]],
  ],
  corner: [['corner-break', [...UNITS, 'nose']]],
  lock: [['lock-broken', [...TILES, 'sidelap']]],
  hole: [['hole-elongated', [...UNITS, 'fastener']]],
  scour: [
    ['surface-scour', UNITS],
    ['granule-loss', SHINGLES],
    ['coating-scratched', [...PANELS, ...TRIM]],
  ],
  age: [['surface-ageing', [...UNITS, ...SHINGLES, 'hip-ridge-shingle', 'panel']]],
  debris: [
    [
      'debris-on-roof',
      [...UNITS, 'valley-metal', 'gutter', 'shingle-field', 'panel', 'vent', 'skylight', 'cricket', 'chimney', 'other'],
    ],
  ],
  repair: [],
  mismatch: [['mismatched', [...UNITS, ...SHINGLES, 'hip-ridge-shingle', 'panel', 'mortar-bed']]],
  discontinued: [['discontinued-profile', [...UNITS, 'shingle-field', 'panel']]],
  flaw: [['manufacturing-flaw', UNITS]],
  release: [
    ['pad-released', ['adhesive-pad', ...TILES]],
    ['cap-mortar-cracked', ['mortar-bed']],
    ['cap-loose', CAPS],
    ['unsealed-flat', [...SHINGLES, 'seal-strip']],
    ['flashing-deformed', SHEET],
  ],
  deform: [
    ['flashing-deformed', [...SHEET, ...THROUGH]],
    ['metal-trim-gone', TRIM],
    ['panel-lifted', PANELS],
    ['closure-loose', ['eave-closure']],
    ['fastener-raised', ['fastener']],
    ['seam-opened', ['seam']],
    ['cap-loose', CAPS],
  ],
  expose: [['underlayment-exposed', ['underlayment']]],
  tear: [
    ['underlayment-exposed', ['underlayment']],
    ['tab-torn', SHINGLES],
    ['ridge-shingle-gone', ['hip-ridge-shingle']],
    ['flashing-deformed', SHEET],
  ],
  raise: [
    ['fastener-raised', ['fastener']],
    ['screw-backed-out', SCREWS],
  ],
  rust: [
    ['fastener-raised', ['fastener']],
    ['cut-edge-corrosion', ['panel', 'rake-trim', 'eave-cleat']],
    ['closure-loose', ['eave-closure']],
  ],
  rot: [],
  gap: [
    ['cap-loose', CAPS],
    ['cap-mortar-cracked', ['mortar-bed']],
    ['mortar-cracked-at-pipe', ['pipe-penetration']],
    ['flashing-deformed', [...SHEET, 'chimney', 'skylight']],
    ['seam-opened', ['seam']],
    ['closure-loose', ['eave-closure']],
    ['lock-broken', ['sidelap']],
  ],
  'mark-by-others': [],
  poor: [
    ['cap-mortar-cracked', ['mortar-bed']],
    ['mortar-cracked-at-pipe', []],
    ['underlayment-exposed', ['underlayment']],
    ['pad-released', ['adhesive-pad']],
    ['unsealed-flat', ['seal-strip']],
  ],
  sound: [],
  'weakly-sound': [],
  'no-access': [],
  crease: [
    ['tab-creased', SHINGLES],
    ['panel-lifted', PANELS],
    ['flashing-deformed', SHEET],
  ],
  unsealed: [['unsealed-flat', [...SHINGLES, 'seal-strip']]],
  'dirty-seal': [['seal-dirty', ['seal-strip', ...SHINGLES]]],
  'clean-seal': [['seal-clean-torn', ['seal-strip', ...SHINGLES]]],
  granules: [['granule-loss', [...SHINGLES, 'hip-ridge-shingle']]],
  bruise: [['bruise', [...SHINGLES, 'hip-ridge-shingle']]],
  'high-nail': [['nail-off-pattern', ['fastener', ...SHINGLES]]],
  'stair-step': [['stair-step-loss', SHINGLES]],
  wavy: [['oil-canning', ['panel', 'pan']]],
  dent: [
    ['dent', [...PANELS, ...TRIM, 'vent', 'gutter']],
    ['flashing-deformed', SHEET],
  ],
  scratch: [
    ['coating-scratched', [...PANELS, ...TRIM]],
    ['surface-scour', UNITS],
  ],
  'edge-rust': [['cut-edge-corrosion', ['panel', 'rake-trim', 'eave-cleat', 'drip-edge']]],
} as const satisfies Record<Sign, Table>

/** Signs that say something of any part. */
const ANYWHERE: Partial<Record<Sign, ConditionKey>> = {
  repair: 'prior-repair',
  sound: 'sound',
  'weakly-sound': 'sound',
  'no-access': 'not-accessible',
  'mark-by-others': 'other',
}

/** Signs that are worth a finding on a part for which the catalog has no name of its own. */
const OTHERWISE: ReadonlySet<Sign> = new Set<Sign>([
  'crack',
  'break',
  'tear',
  'rust',
  'rot',
  'loose',
  'deform',
  'dent',
  'missing',
])

/** Parts whose conditions the catalog names so well that another word for one is no condition of theirs. */
const NAMED_WELL: ReadonlySet<ComponentKey> = new Set<ComponentKey>([
  ...UNITS,
  'fastener',
  'mortar-bed',
  'underlayment',
  'eave-closure',
  'sidelap',
  'nose',
  'adhesive-pad',
  'other',
])

/** Mortar that closes a join at one of these is a collar or fillet, not a cap's bed. */
const COLLARED: ReadonlySet<ComponentKey> = new Set<ComponentKey>([
  'pipe-penetration',
  'chimney',
  'vent',
  'headwall-flashing',
])

/** Mortar's own signs, at a pipe or wall. */
const MORTAR_SIGNS: ReadonlySet<Sign> = new Set<Sign>([
  'crack',
  'break',
  'gap',
  'loose',
  'missing',
  'release',
  'across',
  'poor',
])

/**
 * The catalog's condition for what is seen on a part; null where the two don't go together.
 *
 * @param isMortar true when the part is a pipe, chimney or wall and its mortar is spoken of
 */
export function conditionOf(sign: Sign, part: ComponentKey, isMortar = false): ConditionKey | null {
  const anywhere = ANYWHERE[sign]
  if (anywhere !== undefined) return anywhere
  if (isMortar && COLLARED.has(part) && MORTAR_SIGNS.has(sign)) return 'mortar-cracked-at-pipe'
  if (isMortar && isCap(part) && MORTAR_SIGNS.has(sign)) return 'cap-mortar-cracked'
  const table: Table = TABLES[sign]
  const named = table.find(([, parts]) => parts.includes(part))?.[0]
  if (named !== undefined) return named
  return OTHERWISE.has(sign) && !NAMED_WELL.has(part) ? 'other' : null
}

/** True for the pieces that lie in a bed of mortar. */
export function isCap(part: ComponentKey): boolean {
  return part === 'ridge-tile' || part === 'hip-tile'
}

/** True when mortar at this part is a collar or fillet. */
export function hasCollar(part: ComponentKey): boolean {
  return COLLARED.has(part)
}

/** Signs that fit too many parts to tell which is meant. */
const TELL_NO_PART: ReadonlySet<Sign> = new Set<Sign>([
  ...(['raise', 'rust', 'rot', 'deform', 'gap', 'expose', 'tear', 'sound', 'weakly-sound'] as const),
  ...(['release', 'off', 'poor'] as const),
])

/** The part meant where none is named: on a tile roof "two slipped" are tiles. Null where the sign fits many parts. */
export function impliedPart(sign: Sign, unit: ComponentKey): ComponentKey | null {
  if (TELL_NO_PART.has(sign)) return null
  if (sign === 'lock') return 'sidelap'
  if (sign === 'no-access') return 'other'
  return conditionOf(sign, unit) === null ? null : unit
}

/** Other conditions that the same words can stand for: a plain "cracked tile" doesn't say how the crack runs. */
export function otherReadings(sign: Sign, chosen: ConditionKey): readonly ConditionKey[] {
  if (chosen === 'other' && sign === 'shatter') return ['diagonal-crack', 'impact-fracture']
  if (chosen === 'other' && sign === 'lengthwise') return ['diagonal-crack', 'crack-to-fastener']
  if (chosen === 'diagonal-crack' && (sign === 'crack' || sign === 'break'))
    return ['crack-to-fastener', 'corner-break', 'impact-fracture']
  return []
}

/** True when the catalog expects the condition on the part, so that a part named earlier may be meant. */
export function fitsPart(condition: ConditionKey, part: ComponentKey): boolean {
  const { components } = conditions[condition]
  return components === 'any' || components.includes(part) || (condition === 'other' && part !== 'other')
}
