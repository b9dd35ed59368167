import type { FacetId } from '../job/ids.ts'
import type { CoveringClass } from '../job/sheet.ts'
import type { RoofEdge } from './edges.ts'
import { facetGeometry, pieceCount, roofTotals, type FacetGeometry } from './facet-geometry.ts'
import type { Facet } from './facet.ts'
import { edgeKinds, type EdgeKind } from './plan-drawing.ts'
import { sheetDirection } from './plan-frame.ts'

/** What one tile or shingle covers, inches. */
export interface PieceSize {
  /** Length left bare, measured up the slope. */
  readonly exposureIn: number
  /** Overall width less side lap. */
  readonly coverWidthIn: number
}

/** A facet's line in the table. Nothing in it is rounded, and waste is not in it. */
export interface FacetQuantity extends FacetGeometry {
  readonly facetId: FacetId
  readonly letter: string
  /** From the lowest to the highest point, along the slope, feet. */
  readonly slopeLengthFt: number
  /** Whole courses that the slope length takes; null where the exposure is not known. */
  readonly courses: number | null
  /** Tiles or shingles that cover it, not rounded; null where their size is not known. */
  readonly pieces: number | null
}

export interface FacetTable {
  readonly rows: readonly FacetQuantity[]
  readonly totals: {
    readonly planAreaSqFt: number
    readonly areaSqFt: number
    readonly squares: number
    readonly pieces: number | null
  }
}

/** All edges of one kind. */
export interface EdgeQuantity {
  readonly kind: EdgeKind
  /** Stretches that the plan has; an eave that two facets share counts as two. */
  readonly count: number
  /** How many of them a person stated the kind of. */
  readonly statedByHand: number
  readonly planLengthFt: number
  readonly trueLengthFt: number
}

/** A waste allowance as a line of its own. The measured quantity stays what it is. */
export interface WasteAllowance {
  readonly percent: number
  /** What the allowance adds, not rounded. */
  readonly areaSqFt: number
  readonly pieces: number | null
  /** Whole pieces to order, measured and allowance together. */
  readonly piecesToOrder: number | null
}

/** A range that people in the trade use for waste. */
export interface UsualWaste {
  readonly roof: string
  readonly fromPercent: number
  readonly toPercent: number
  readonly status: 'common practice, no source'
}

/** Usual waste, for a person to choose from. Nobody is on record for these figures. */
export const usualWaste: readonly UsualWaste[] = [
  { roof: 'simple gable', fromPercent: 5, toPercent: 10, status: 'common practice, no source' },
  { roof: 'hip with few valleys', fromPercent: 10, toPercent: 15, status: 'common practice, no source' },
  {
    roof: 'many valleys or small facets, or a diagonal or staggered layout',
    fromPercent: 15,
    toPercent: 20,
    status: 'common practice, no source',
  },
  { roof: 'tile breakage, on top of cuts', fromPercent: 3, toPercent: 5, status: 'common practice, no source' },
]

/** The usual ranges in a sentence, with what they rest on. */
export const usualWasteWords = `Usual: ${usualWaste
  .map(({ roof, fromPercent, toPercent }) => `${roof} ${fromPercent} to ${toPercent} %`)
  .join('; ')} [common practice, no source].`

/** A count within this of a whole number is that number: 12 courses of 13.5 in must not become 13 by rounding in binary. */
const WHOLE = 1e-9

const POUNDS_PER_SHORT_TON = 2000

/**
 * The facet table: area, squares, slope length, courses and pieces by facet, with totals. Totals are sums of unrounded
 * lines; round once, when a figure is shown (areas to 1 sq ft, squares to 0.01, edges to 0.1 ft, pieces up to whole ones).
 */
export function facetQuantities(
  facets: readonly Facet[],
  roof: { readonly upAzimuthDeg: number; readonly piece: PieceSize | null },
): FacetTable {
  const rows = facets.map((facet) => facetQuantity(facet, roof.upAzimuthDeg, roof.piece))
  const totals = roofTotals(facets)
  return { rows, totals: { ...totals, pieces: roof.piece === null ? null : pieceCount(totals.areaSqFt, roof.piece) } }
}

/** The edge table: one line for each kind of edge that the roof has, in the order of `edgeKinds`. Lengths in feet, not rounded. */
export function edgeQuantities(edges: readonly RoofEdge[]): readonly EdgeQuantity[] {
  return edgeKinds.flatMap((kind) => {
    const own = edges.filter((edge) => edge.kind === kind)
    const sum = (pick: (edge: RoofEdge) => number) => own.reduce((total, edge) => total + pick(edge), 0)
    if (own.length === 0) return []
    return [
      {
        kind,
        count: own.length,
        statedByHand: own.filter(({ foundKind }) => foundKind !== undefined).length,
        planLengthFt: sum((edge) => edge.planLengthFt),
        trueLengthFt: sum((edge) => edge.trueLengthFt),
      },
    ]
  })
}

/** "Tiles" on a tile roof, "Pieces" on others. */
export function piecesWord(covering: CoveringClass): string {
  return covering === 'concrete-tile' || covering === 'clay-tile' ? 'Tiles' : 'Pieces'
}

/** A column of the facet table with the total that is summed before rounding. */
interface SummedColumn {
  /** What stands after the sum: "sq ft of area". */
  readonly unit: string
  readonly values: readonly number[]
  readonly total: number
  /** Places that lines and total are shown with. */
  readonly decimals: number
}

/** The columns of the facet table that have a total, with the places they are shown with. */
export function summedColumns({ rows, totals }: FacetTable, pieces: string): readonly SummedColumn[] {
  const column = (unit: string, decimals: number, pick: { of: (row: FacetQuantity) => number; total: number }) => ({
    unit,
    values: rows.map(pick.of),
    total: pick.total,
    decimals,
  })
  return [
    column('sq ft of plan', 0, { of: (row) => row.planAreaSqFt, total: totals.planAreaSqFt }),
    column('sq ft of area', 0, { of: (row) => row.areaSqFt, total: totals.areaSqFt }),
    column('squares', 2, { of: (row) => row.squares, total: totals.squares }),
    ...(totals.pieces === null
      ? []
      : [column(pieces.toLowerCase(), 0, { of: (row) => row.pieces ?? 0, total: totals.pieces })]),
  ]
}

/**
 * A waste allowance on a measured area and its pieces.
 *
 * @param measured area in square feet, and pieces not rounded
 * @param percent of the measured quantity, 0 or more, chosen by a person
 */
export function wasteAllowance(
  measured: { readonly areaSqFt: number; readonly pieces: number | null },
  percent: number,
): WasteAllowance {
  const share = percent / 100
  const pieces = measured.pieces === null ? null : measured.pieces * share
  return {
    percent,
    areaSqFt: measured.areaSqFt * share,
    pieces,
    piecesToOrder: measured.pieces === null || pieces === null ? null : wholePieces(measured.pieces + pieces),
  }
}

/** Tiles or shingles per square of 100 sq ft: 14400 / (exposure x cover width), not rounded (general tile-coverage guides). */
export function piecesPerSquare(piece: PieceSize): number {
  return pieceCount(100, piece)
}

/** Whole pieces that a count takes: up to the next whole one. */
export function wholePieces(count: number): number {
  return Math.ceil(count - WHOLE)
}

/** Whole courses on a slope: slope length over exposure, up (feet and inches; common practice, no source). */
export function courseCount(slopeLengthFt: number, exposureIn: number): number {
  return wholePieces((12 * slopeLengthFt) / exposureIn)
}

/** Whole ridge or hip pieces on a length: 12 x feet / exposure in inches, up (common practice, no source). */
export function ridgePieceCount(lengthFt: number, exposureIn: number): number {
  return wholePieces((12 * lengthFt) / exposureIn)
}

/** Weight of a covering, from the weight of one piece. */
export function coveringWeight(
  squares: number,
  perSquare: { readonly pieces: number; readonly poundsEach: number },
): { readonly pounds: number; readonly shortTons: number } {
  const pounds = squares * perSquare.pieces * perSquare.poundsEach
  return { pounds, shortTons: pounds / POUNDS_PER_SHORT_TON }
}

function facetQuantity(facet: Facet, upAzimuthDeg: number, piece: PieceSize | null): FacetQuantity {
  const geometry = facetGeometry(facet)
  const downhill = sheetDirection(facet.downslopeAzimuthDeg, upAzimuthDeg)
  const reach = facet.outline.map(({ xFt, yFt }) => xFt * downhill.x + yFt * downhill.y)
  const slopeLengthFt = (Math.max(...reach) - Math.min(...reach)) * geometry.slopeFactor
  return {
    facetId: facet.id,
    letter: facet.letter,
    ...geometry,
    slopeLengthFt,
    courses: piece === null ? null : courseCount(slopeLengthFt, piece.exposureIn),
    pieces: piece === null ? null : pieceCount(geometry.areaSqFt, piece),
  }
}
