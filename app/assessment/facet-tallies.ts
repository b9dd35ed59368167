import type { ComponentKey } from '../evidence/catalog/keys.ts'
import type { Finding, FindingKind } from '../evidence/finding.ts'
import { tally, type TallyRow } from '../evidence/tally.ts'
import type { Facet } from '../roof/facet.ts'
import { facetGeometry, pieceCount } from '../roof/facet-geometry.ts'
import { wholePieces, type PieceSize } from '../roof/quantities.ts'

/** Pieces that area over piece size counts. Ridge, hip and rake pieces lie beside them and are in no facet's number. */
const countedByArea: readonly ComponentKey[] = ['field-tile', 'eave-tile', 'shingle-field']

/** Findings of these kinds are about a condition; the others say what was marked, sound or out of reach. */
const talliedKinds = ['damage', 'wear', 'earlier-repair', 'installation'] as const satisfies readonly FindingKind[]
export type TalliedKind = (typeof talliedKinds)[number]

/** One kind, component and condition on one facet. */
export interface KindTally extends TallyRow {
  readonly kind: TalliedKind
}

/** Tiles with damage out of those on a facet. Only exact counts are in it. */
export type TilesAffected =
  | { readonly kind: 'none-counted'; readonly uncounted: number }
  | { readonly kind: 'unknown-tiles'; readonly affected: number; readonly uncounted: number }
  | {
      readonly kind: 'share'
      readonly affected: number
      /** Findings of damage to tiles that were not counted, and are in no figure. */
      readonly uncounted: number
      /** Whole tiles by area. */
      readonly tiles: number
      /** Tiles by area on the part that was looked at; null while that part is not stated. */
      readonly lookedAt: number | null
    }

export interface FacetTally {
  /** Null for findings that name no facet. */
  readonly facet: Facet | null
  readonly rows: readonly KindTally[]
  readonly affected: TilesAffected
}

/**
 * Findings of a roof by facet, kind, component and condition, with the share of tiles affected. Every facet has its
 * line, also without a finding; findings without a facet come last. Nothing that was not counted becomes a number.
 *
 * @param piece exposure and cover width, null while the sheet lacks one
 */
export function facetTallies(roof: {
  readonly facets: readonly Facet[]
  readonly findings: readonly Finding[]
  readonly piece: PieceSize | null
}): readonly FacetTally[] {
  const { facets, findings, piece } = roof
  const known = new Set(facets.map(({ id }) => id))
  const without = findings.filter(({ facetId }) => facetId === null || !known.has(facetId))
  const lines = [...facets]
    .sort((a, b) => a.letter.length - b.letter.length || (a.letter < b.letter ? -1 : 1))
    .map((facet) => {
      const own = findings.filter(({ facetId }) => facetId === facet.id)
      return { facet, rows: rowsOf(own), affected: affectedOf(own, facet, piece) }
    })
  const rest = { facet: null, rows: rowsOf(without), affected: affectedOf(without, null, piece) }
  return rest.rows.length === 0 ? lines : [...lines, rest]
}

function rowsOf(findings: readonly Finding[]): readonly KindTally[] {
  return talliedKinds.flatMap((kind) =>
    tally(findings.filter((finding) => finding.kind === kind)).map((row): KindTally => ({ ...row, kind })),
  )
}

function affectedOf(findings: readonly Finding[], facet: Facet | null, piece: PieceSize | null): TilesAffected {
  const damage = findings.filter(({ kind, component }) => kind === 'damage' && countedByArea.includes(component))
  const counts = damage.flatMap(({ extent }) => (extent.kind === 'exactly' ? [extent.count] : []))
  const affected = counts.reduce((sum, count) => sum + count, 0)
  const uncounted = damage.length - counts.length
  if (counts.length === 0) return { kind: 'none-counted', uncounted }
  if (facet === null || piece === null) return { kind: 'unknown-tiles', affected, uncounted }
  const exact = pieceCount(facetGeometry(facet).areaSqFt, piece)
  const { percent } = facet.inspected
  const lookedAt = percent === null ? null : wholePieces((exact * percent) / 100)
  return { kind: 'share', affected, uncounted, tiles: wholePieces(exact), lookedAt }
}
