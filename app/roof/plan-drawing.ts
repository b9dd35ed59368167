import type { Degrees } from './angles.ts'
import type { PlanPoint } from '../job/places.ts'
import type { PlanScale } from './plan-sheet/scale.ts'
import type { Zone } from './zones/edition.ts'
import type { Region } from './zones/region.ts'

/**
 * The roof plan as things to draw, in plan feet (x right, y up the sheet). Screens, the packet and `plan.svg` all draw
 * from this, so that they can't differ.
 */
export interface PlanDrawing {
  /** What the drawing covers, feet. */
  readonly bounds: PlanBounds
  /** Azimuth of the sheet's up direction; north is drawn from it. */
  readonly upAzimuthDeg: Degrees
  /** Direction that the front of the house faces, for the front marker; null when not known. */
  readonly frontAzimuthDeg: Degrees | null
  /** The front door, where somebody marked it. */
  readonly doorAt?: PlanPoint | null
  readonly facets: readonly FacetShape[]
  readonly edges: readonly EdgeShape[]
  readonly pins: readonly PinShape[]
  readonly cameras: readonly CameraShape[]
  /** Edge zones, where they are asked for. */
  readonly zones?: readonly ZoneShape[]
  /** Lengths of outer edges; where they are left out, a sheet takes them from the edges. */
  readonly dimensions?: readonly DimensionShape[]
  /** The part of a larger plan that this sheet shows. */
  readonly window?: PlanWindow
  /** On a key plan: which sheet shows which part. */
  readonly sheets?: readonly SheetShape[]
}

/** A piece of a facet that lies in one zone. */
export interface ZoneShape {
  readonly zone: Zone
  readonly region: Region
}

/** A straight run of outer edges and its length in plan. */
export interface DimensionShape {
  readonly from: PlanPoint
  readonly to: PlanPoint
  readonly lengthFt: number
  /** Unit vector at right angles to the run, off the roof. */
  readonly outward: { readonly x: number; readonly y: number }
  /** The run goes on beyond the sheet: `from` and `to` are only the part of it that is drawn. */
  readonly goesOn?: true
}

/** One sheet of several. */
export interface PlanWindow {
  readonly bounds: PlanBounds
  readonly scale: PlanScale
  readonly sheet: number
  readonly of: number
  /** Sides at which the plan goes on, and the sheet that it goes on to. */
  readonly matches: readonly { readonly side: SheetSide; readonly sheet: number }[]
  /** Parts of lines and areas whose markers stand on other sheets. */
  readonly extents: readonly { readonly kind: 'line' | 'area'; readonly points: readonly PlanPoint[] }[]
}

export type SheetSide = 'left' | 'right' | 'top' | 'bottom'

export interface SheetShape {
  readonly sheet: number
  readonly bounds: PlanBounds
}

export interface PlanBounds {
  readonly minXFt: number
  readonly minYFt: number
  readonly maxXFt: number
  readonly maxYFt: number
}

export interface FacetShape {
  readonly id: string
  readonly letter: string
  readonly outline: readonly PlanPoint[]
  /** A point well inside, for the letter. */
  readonly labelAt: PlanPoint
  /** "5:12". */
  readonly pitchLabel: string
  /** Unit vector on the sheet in the downhill direction. */
  readonly downhill: { readonly x: number; readonly y: number }
  /** Shaded, as the facet that a photo shows. */
  readonly picked?: boolean
}

/**
 * Kinds of roof edge, by how the facets on its two sides meet. `pitch-break`: one slope drains onto another across a level or
 * sloping line. `step`: a slope's side meets another slope, so heights differ along it. `top-edge`: the high side of a
 * slope with no facet behind it.
 */
export const edgeKinds = ['ridge', 'hip', 'valley', 'eave', 'rake', 'pitch-break', 'step', 'top-edge'] as const
export type EdgeKind = (typeof edgeKinds)[number]

export interface EdgeShape {
  readonly kind: EdgeKind
  /** Its kind was stated by a person, not found from the slopes. */
  readonly byHand?: true
  readonly from: PlanPoint
  readonly to: PlanPoint
}

export interface PinShape {
  readonly findingId: string
  /** "12": the number in the pin's marker. */
  readonly label: string
  readonly kind: 'point' | 'line' | 'area'
  readonly points: readonly PlanPoint[]
  /** Where the marker stands. */
  readonly markerAt: PlanPoint
  /** Marker shape: damage is filled, everything else is open, so that print without colour tells them apart. */
  readonly filled: boolean
}

export interface CameraShape {
  readonly photoId: string
  readonly label: string
  readonly at: PlanPoint
  /** Direction on the sheet, unit vector; null when the camera wrote none. */
  readonly looking: { readonly x: number; readonly y: number } | null
}
