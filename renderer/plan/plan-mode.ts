import type { PlanPoint } from '../../app/job/places.ts'
import type { FacetId, FindingId, OutlineId, PlanImageId } from '../../app/job/ids.ts'

/** What is being done on the plan. */
export type PlanMode =
  | { readonly kind: 'look' }
  /** Drawing a facet's corners; `path` are those drawn before. */
  | { readonly kind: 'draw'; readonly path: readonly PlanPoint[] }
  /** A closed outline that still needs letter, pitch and direction. */
  | { readonly kind: 'name'; readonly outline: readonly PlanPoint[] }
  | { readonly kind: 'shape'; readonly facetId: FacetId }
  /** Drawing an eaves line: a new outline, or a courtyard of one. */
  | { readonly kind: 'outline'; readonly courtyardOf: OutlineId | null }
  | { readonly kind: 'shape-outline'; readonly outlineId: OutlineId }
  /** Laying an image under the plan; null while one is added. */
  | { readonly kind: 'image'; readonly imageId: PlanImageId | null }
  | { readonly kind: 'door' }
  /** Putting a pin down, for a finding or for a new one. */
  | { readonly kind: 'pin'; readonly findingId: FindingId | null }

/** The mode in which nothing is changed. */
export const LOOK: PlanMode = { kind: 'look' }
