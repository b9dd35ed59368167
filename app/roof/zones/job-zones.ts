import type { Facet } from '../facet.ts'
import { edgeZones, type EdgeZones } from './edge-zones.ts'
import type { WindEdition } from './edition.ts'

/** What the job sheet says that zones are drawn from. */
export interface ZonedProperty {
  readonly windEdition: WindEdition | null
  readonly meanRoofHeightFt: number | null
  /** Least horizontal dimension between walls; null: taken from the plan. */
  readonly leastWidthFt: number | null
}

/** A field of the job sheet that zones need and that is empty. */
export interface ZoneLack {
  readonly field: 'property.windEdition' | 'property.meanRoofHeightFt'
  /** "the edition of the wind standard". */
  readonly words: string
}

/** The zones of a job's roof, or what they lack. */
export type JobZones = EdgeZones | { readonly kind: 'lacking'; readonly lacks: readonly ZoneLack[] }

interface ZonedRoof {
  readonly facets: readonly Facet[]
  /** Azimuth of the sheet's up direction. */
  readonly upAzimuthDeg: number
  readonly property: ZonedProperty
}

/** Cutting a roof takes a while, and many places ask for the zones of the same facets. */
const known = new WeakMap<readonly Facet[], { readonly key: string; readonly zones: JobZones }>()

/**
 * The zones of a job's roof, worked out once for the same list of facets as long as the sheet says the same. Edition and
 * mean roof height come from the job sheet; where one is empty nothing is assumed in its place.
 */
export function jobZones(roof: ZonedRoof): JobZones {
  const { windEdition, meanRoofHeightFt, leastWidthFt } = roof.property
  const key = [roof.upAzimuthDeg, windEdition, meanRoofHeightFt, leastWidthFt].join(' ')
  const held = known.get(roof.facets)
  if (held?.key === key) return held.zones
  const zones = workedOut(roof)
  known.set(roof.facets, { key, zones })
  return zones
}

function workedOut({ facets, upAzimuthDeg, property }: ZonedRoof): JobZones {
  const { windEdition: edition, meanRoofHeightFt, leastWidthFt } = property
  if (edition === null || meanRoofHeightFt === null) {
    const lacks: readonly ZoneLack[] = [
      ...(edition === null
        ? [{ field: 'property.windEdition' as const, words: 'the edition of the wind standard' }]
        : []),
      ...(meanRoofHeightFt === null
        ? [{ field: 'property.meanRoofHeightFt' as const, words: 'the mean roof height' }]
        : []),
    ]
    return { kind: 'lacking', lacks }
  }
  const measured = leastWidthFt === null ? {} : { leastDimensionFt: leastWidthFt }
  return edgeZones({ facets, upAzimuthDeg, meanRoofHeightFt, edition, ...measured })
}
