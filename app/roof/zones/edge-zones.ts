import type { FacetId } from '../../job/ids.ts'
import type { RoofEdge } from '../edges.ts'
import { roofEdges } from '../edges.ts'
import type { Facet } from '../facet.ts'
import { slopeFactor } from '../slope.ts'
import { edgeWidth, leastDimension, type EdgeWidth } from './edge-width.ts'
import {
  slopesDrawnDeg,
  zoneNumber,
  zoneOfPart,
  zoneParts,
  type WindEdition,
  type Zone,
  type ZoneNumber,
  type ZonePart,
} from './edition.ts'
import { CuttingFailed, overlapOf, regionAreaSqFt, unite, without, type Region } from './region.ts'
import { roofFigure } from './roof-figure.ts'
import { zoneStrips, type Strip } from './strips.ts'

/** What one part of one facet covers. The pieces of a facet don't overlap and together are the facet. */
export interface ZonePiece {
  readonly facetId: FacetId
  readonly zone: Zone
  readonly part: ZonePart
  readonly number: ZoneNumber
  /** In plan; a piece can have several polygons. */
  readonly region: Region
  readonly planAreaSqFt: number
  /** Sloped area. */
  readonly areaSqFt: number
}

/** The zones of a facet, or why they are not drawn. */
export type FacetZones =
  | { readonly kind: 'drawn'; readonly facetId: FacetId; readonly pieces: readonly ZonePiece[] }
  | { readonly kind: 'refused'; readonly facetId: FacetId; readonly sentence: string }

/** The zones of a roof, or what is missing before they can be drawn. */
export type EdgeZones =
  | {
      readonly kind: 'drawn'
      readonly edition: WindEdition
      readonly width: EdgeWidth
      /** In the order of the facets given. */
      readonly facets: readonly FacetZones[]
    }
  | { readonly kind: 'refused'; readonly sentence: string }

/** What the zones are drawn from. */
export interface ZoneInput {
  readonly facets: readonly Facet[]
  /** Azimuth of the sheet's up direction. */
  readonly upAzimuthDeg: number
  /** Feet; the eave height where the slope is under 10 degrees. */
  readonly meanRoofHeightFt: number
  /**
   * Least horizontal dimension of the building, feet, where it was measured; otherwise it is taken from the outline of all
   * facets together. Give it where the plan also shows a building that stands apart.
   */
  readonly leastDimensionFt?: number
  readonly edition: WindEdition
}

/**
 * Divides every facet of a gable or hip roof into field, edge, corner and ridge, drawn at the width of `edgeWidth`. The
 * layout in plain words is the same for every edition: strips along outer edges, strips on both sides of ridges and
 * hips, corners where two outer strips meet at a corner of the outline, and the ends of ridges at rakes. Where parts
 * overlap, the one that comes first in `zoneParts` has the ground: corners, then outer edges, then ridges and hips.
 * Zone numbers of the edition are data beside it, given only where its figure is known (see `zoneNumber`).
 *
 * Slopes of up to 7 degrees have other widths in later editions and slopes above 45 degrees other figures: facets like
 * that are refused with a sentence. This is context for sampling and for reading a plan, not an engineer's opinion.
 */
export function edgeZones(input: ZoneInput): EdgeZones {
  const { facets, upAzimuthDeg, meanRoofHeightFt, edition } = input
  const leastFt = input.leastDimensionFt ?? leastDimension(facets.flatMap(({ outline }) => outline))
  if (facets.length === 0) return refused('Draw the roof first: zones follow from its facets.')
  if (!(meanRoofHeightFt > 0)) return refused('Enter the mean roof height, in feet above the ground.')
  if (!(leastFt > 0)) return refused('The roof has no width. Enter the least horizontal dimension, in feet.')
  const width = edgeWidth(leastFt, meanRoofHeightFt)
  const edges = roofEdges(facets, upAzimuthDeg)
  try {
    const strips = zoneStrips(facets, edges, width.widthFt)
    return {
      kind: 'drawn',
      edition,
      width,
      facets: facets.map((facet) => facetZones(facet, { edition, edges, strips })),
    }
  } catch (error) {
    if (error instanceof CuttingFailed) return refused(CANNOT_CUT)
    throw error
  }
}

const CANNOT_CUT =
  'The zones could not be worked out: corners or sides of the plan nearly coincide. Move them together or apart.'

/** Plan and sloped area by zone over all facets that are drawn, square feet. */
export function zoneTotals(
  zones: EdgeZones,
): Readonly<Record<Zone, { readonly planAreaSqFt: number; readonly areaSqFt: number }>> {
  const pieces = zonePieces(zones)
  const total = (zone: Zone) => {
    const own = pieces.filter((piece) => piece.zone === zone)
    return {
      planAreaSqFt: own.reduce((sum, piece) => sum + piece.planAreaSqFt, 0),
      areaSqFt: own.reduce((sum, piece) => sum + piece.areaSqFt, 0),
    }
  }
  return { field: total('field'), edge: total('edge'), corner: total('corner'), ridge: total('ridge') }
}

/** Every piece of every facet that is drawn. */
export function zonePieces(zones: EdgeZones): readonly ZonePiece[] {
  if (zones.kind === 'refused') return []
  return zones.facets.flatMap((facet) => (facet.kind === 'drawn' ? facet.pieces : []))
}

function refused(sentence: string): EdgeZones {
  return { kind: 'refused', sentence }
}

interface RoofParts {
  readonly edition: WindEdition
  readonly edges: readonly RoofEdge[]
  readonly strips: readonly Strip[]
}

function facetZones(facet: Facet, { edition, edges, strips }: RoofParts): FacetZones {
  const slopeDeg = (Math.atan(facet.pitchRise / 12) * 180) / Math.PI
  if (slopeDeg <= slopesDrawnDeg.above || slopeDeg > slopesDrawnDeg.upTo) {
    return { kind: 'refused', facetId: facet.id, sentence: slopeSentence(facet, slopeDeg, edition) }
  }
  const roof = { figure: roofFigure(facet.id, edges), slopeDeg }
  const factor = slopeFactor(facet.pitchRise)
  const pieces = partRegions(facet, strips).map(({ part, region }): ZonePiece => {
    const planAreaSqFt = regionAreaSqFt(region)
    const number = zoneNumber(edition, roof, part)
    const areaSqFt = planAreaSqFt * factor
    return { facetId: facet.id, zone: zoneOfPart[part], part, number, region, planAreaSqFt, areaSqFt }
  })
  return { kind: 'drawn', facetId: facet.id, pieces }
}

interface PartRegion {
  readonly part: ZonePart
  readonly region: Region
}

function slopeSentence(facet: Facet, slopeDeg: number, edition: WindEdition): string {
  const { above, upTo } = slopesDrawnDeg
  const rule = slopeDeg <= above ? `slopes of up to ${above} degrees` : `slopes above ${upTo} degrees`
  return `Facet ${facet.letter} has a slope of ${slopeDeg.toFixed(1)} degrees. The ASCE ${edition} rule for ${rule} is not built in. Take its zones from the printed edition.`
}

/** The facet divided: each part takes what its strips cover of what earlier parts left over. */
function partRegions(facet: Facet, strips: readonly Strip[]): readonly PartRegion[] {
  let left = unite([facet.outline])
  const near = strips.filter(({ facetIds }) => facetIds === null || facetIds.includes(facet.id))
  const covered = zoneParts.map((part): PartRegion => {
    const cover = unite(near.filter((strip) => strip.part === part).map(({ outline }) => outline))
    const region = overlapOf(left, cover)
    left = without(left, region)
    return { part, region }
  })
  return [...covered, { part: 'field' as const, region: left }].filter(({ region }) => region.length > 0)
}
