import type { PlanPoint } from '../../job/places.ts'

/** What stands on an outer edge: an eave with a slope rising from it, or a gable wall that the slopes beside it run to. */
export type OutlineEdge =
  | {
      readonly kind: 'eave'
      /** Inches of rise in 12 inches of run, above 0. */
      readonly pitchRise: number
    }
  | { readonly kind: 'gable' }

/** A closed line of a roof plan. Corners run either way round; edge n runs from corner n to the next one. */
export interface OutlineRing {
  readonly corners: readonly PlanPoint[]
  readonly edges: readonly OutlineEdge[]
}

/** One roof as it is drawn: its outside, its open courtyards, and what each edge is. */
export interface RoofOutline {
  readonly outer: OutlineRing
  readonly courtyards: readonly OutlineRing[]
  /** Height of the eaves above the datum, feet; 0 when left out. */
  readonly eaveHeightFt?: number
}

/** An edge of an outline as people count it: ring 0 is the outside, courtyards count from 1, edges count from 1. */
export interface EdgePlace {
  readonly ring: number
  readonly edge: number
}

/** All rings of an outline, the outside first. */
export function ringsOf(outline: RoofOutline): readonly OutlineRing[] {
  return [outline.outer, ...outline.courtyards]
}
