import { z } from 'zod'

/** Parts of a roof that a finding can be about. Labels and meanings stand in `components.ts`. */
export const componentKeySchema = z.enum([
  'field-tile', 'ridge-tile', 'hip-tile', 'rake-tile', 'eave-tile', 'eave-closure', 'headlap', 'sidelap', 'nose',
  'head-lugs', 'batten', 'fastener', 'mortar-bed', 'adhesive-pad', 'nailer', 'underlayment', 'deck', 'valley-metal',
  'flashing', 'step-flashing', 'headwall-flashing', 'pipe-penetration', 'vent', 'skylight', 'chimney', 'cricket',
  'drip-edge', 'fascia', 'gutter', 'shingle-field', 'shingle-tab', 'seal-strip', 'hip-ridge-shingle', 'starter-strip',
  'panel', 'seam', 'clip', 'pan', 'ridge-flashing', 'rake-trim', 'eave-cleat', 'exposed-screw', 'washer', 'other',
])
export type ComponentKey = z.output<typeof componentKeySchema>

/** What can be seen on a component. Definitions and questions stand in `conditions.ts`. */
export const conditionKeySchema = z.enum([
  // tile
  'missing', 'slipped', 'lifts-by-hand', 'fastener-raised', 'hole-elongated', 'crack-to-fastener', 'corner-break',
  'lock-broken', 'diagonal-crack', 'impact-fracture', 'surface-scour', 'cap-loose', 'cap-mortar-cracked',
  'mortar-cracked-at-pipe', 'pad-released', 'underlayment-exposed', 'closure-loose', 'flashing-deformed',
  'debris-on-roof', 'prior-repair', 'mismatched', 'discontinued-profile', 'surface-ageing', 'manufacturing-flaw',
  // asphalt shingle
  'tab-creased', 'tab-torn', 'unsealed-flat', 'seal-dirty', 'seal-clean-torn', 'stair-step-loss', 'nail-off-pattern',
  'granule-loss', 'bruise', 'ridge-shingle-gone', 'scuff',
  // metal
  'panel-lifted', 'seam-opened', 'oil-canning', 'metal-trim-gone', 'screw-backed-out', 'dent', 'coating-scratched',
  'cut-edge-corrosion',
  // any covering
  'sound', 'not-accessible', 'other',
])
export type ConditionKey = z.output<typeof conditionKeySchema>

/** What a person may think brought a condition about. Always an opinion, never filled in by the program. */
export const causeKeySchema = z.enum([
  'undetermined', 'not-stated', 'wind', 'wind-borne-debris', 'hail', 'foot-traffic', 'installation', 'age-and-weather',
  'corrosion', 'thermal-movement', 'building-movement', 'manufacture', 'earlier-repair', 'mechanical-impact',
  'animals', 'test-itself', 'other',
])
export type CauseKey = z.output<typeof causeKeySchema>

/** The part a photo plays in showing a finding or the house. */
export const photoRoleSchema = z.enum(['overview', 'mid', 'close', 'scale', 'test', 'elevation', 'document', 'other'])
export type PhotoRole = z.output<typeof photoRoleSchema>
