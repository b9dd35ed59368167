import type { Finding } from '../evidence/finding.ts'

/** Parts that are counted as tiles of a facet's field; caps of ridges and hips are not. */
const FIELD: ReadonlySet<Finding['component']> = new Set([
  'field-tile',
  'eave-tile',
  'rake-tile',
  'shingle-field',
  'sidelap',
  'headlap',
  'nose',
  'head-lugs',
])

/** True for a finding of damage to pieces of the covering's field. */
export function isTileDamage({ kind, component }: Pick<Finding, 'kind' | 'component'>): boolean {
  return kind === 'damage' && FIELD.has(component)
}
