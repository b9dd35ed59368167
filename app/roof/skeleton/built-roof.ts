import type { PlanPoint } from '../../job/places.ts'
import type { EdgeKind } from '../plan-drawing.ts'
import type { EdgePlace } from './roof-outline.ts'

/** A corner of the roof surface. Above a wall two corners may share a place and differ in height. */
export interface RoofVertex extends PlanPoint {
  readonly heightFt: number
}

/** One plane of a built roof, with every eave that it rises from: eaves of one line and pitch make one facet where they join. */
export interface BuiltFacet {
  readonly eaves: readonly EdgePlace[]
  /** Positions in the roof's `vertices`, counter-clockwise. */
  readonly corners: readonly number[]
  /** The same corners as plan points. */
  readonly outline: readonly PlanPoint[]
  /**
   * What stands free inside the facet, clockwise, also as positions in `vertices`: a courtyard that the slope runs round,
   * with gables on its sides. Nearly always none.
   */
  readonly holes: readonly (readonly number[])[]
  readonly pitchRise: number
  /** Unit vector on the sheet in the direction that water runs. */
  readonly downhill: { readonly x: number; readonly y: number }
  /** Without the holes. */
  readonly planAreaSqFt: number
}

/**
 * A line of a built roof. At a wall inside the roof the higher slope's side is a rake or top edge of its own, and the
 * lower slope's side is a step: one line in plan, two edges at two heights.
 */
export interface BuiltEdge {
  readonly kind: EdgeKind
  /** Positions in the roof's `vertices`. */
  readonly from: number
  readonly to: number
  readonly planLengthFt: number
  readonly trueLengthFt: number
  /** Positions in the roof's `facets`: two where slopes meet, one at a wall or outside. */
  readonly facets: readonly number[]
}

/** A roof surface over one outline. */
export interface BuiltRoof {
  readonly vertices: readonly RoofVertex[]
  readonly facets: readonly BuiltFacet[]
  readonly edges: readonly BuiltEdge[]
}
