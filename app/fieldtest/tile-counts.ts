import type { FacetId } from '../job/ids.ts'
import type { Facet } from '../roof/facet.ts'
import { pieceCount } from '../roof/facet-geometry.ts'
import { wholePieces, type PieceSize } from '../roof/quantities.ts'
import { zonePieces } from '../roof/zones/edge-zones.ts'
import type { JobZones } from '../roof/zones/job-zones.ts'
import { whyNoZones } from '../roof/zones/zone-words.ts'
import type { RoofArea } from './roof-area.ts'

/** Tiles that the plan has on each facet and area, by area over tile size; or what is missing before they can be counted. */
export type TileCounts =
  | { readonly kind: 'counted'; readonly tiles: (facetId: FacetId | null, area: RoofArea) => number }
  | { readonly kind: 'lacking'; readonly sentence: string }

/**
 * Counts tiles from sloped area, exposure and cover width. With null for a facet, those of the whole roof. A facet whose
 * zones are not drawn refuses the whole count: a sum without it would be too small.
 */
export function tileCounts(roof: {
  readonly facets: readonly Facet[]
  readonly zones: JobZones
  readonly piece: PieceSize | null
}): TileCounts {
  const { facets, zones, piece } = roof
  if (piece === null) return lacking('To count tiles, enter exposure and cover width of the tile on the job sheet.')
  if (facets.length === 0) return lacking('To count tiles, draw the roof plan.')
  if (zones.kind !== 'drawn') return lacking(whyNoZones(zones) ?? '')
  const refused = zones.facets.find((facet) => facet.kind === 'refused')
  if (refused?.kind === 'refused') return lacking(refused.sentence)
  const pieces = zonePieces(zones)
  return {
    kind: 'counted',
    tiles: (facetId, area) => {
      const own = pieces.filter((one) => one.zone === area && (facetId === null || one.facetId === facetId))
      return wholePieces(
        pieceCount(
          own.reduce((sum, { areaSqFt }) => sum + areaSqFt, 0),
          piece,
        ),
      )
    },
  }
}

function lacking(sentence: string): TileCounts {
  return { kind: 'lacking', sentence }
}
