import type { CaseFile } from '../evidence/case-file.ts'
import type { Finding } from '../evidence/finding.ts'
import type { CoveringClass } from '../job/sheet.ts'
import type { Facet } from '../roof/facet.ts'
import { piecesPerSquare, piecesWord } from '../roof/quantities.ts'
import type { Decimal } from './decimal.ts'
import { printedDecimal, readDecimal } from './decimal.ts'
import type { Bid, Scope } from './scope-record.ts'

/** What a scope is made from. */
export type ScopeSource = Pick<CaseFile, 'job' | 'facets' | 'findings'>

/** A figure that lines are worked out with, and what it rests on. */
export interface StatedFigure {
  readonly value: Decimal
  readonly basis: string
  readonly isAssumed: boolean
}

/** What the rules need to know of a roof and of a person's choices, looked up once. */
export interface ScopeFacts {
  readonly facets: readonly Facet[]
  readonly findings: readonly Finding[]
  readonly upAzimuthDeg: number
  /** "tiles", "pieces". */
  readonly pieces: string
  /** Pieces that cover a square, not rounded; null where their size is not known. */
  readonly piecesPerSquare: number | null
  readonly pieceSizeWords: string
  readonly weightLbPerSquare: StatedFigure | null
  readonly wastePercent: Decimal | null
  readonly fastenersPerPiece: number | null
  readonly battensLaid: boolean
  readonly exposureIn: number | null
  readonly setting: { readonly kind: 'mortar' | 'foam'; readonly basis: string; readonly isStated: boolean } | null
}

/** Usual weight of a covering as laid, pounds a square. Common practice, no source: a person's own figure goes before it. */
const usualWeightLb = {
  'concrete-tile': '950',
  'clay-tile': '900',
  'asphalt-shingle': '250',
  'metal-panel': '130',
  other: null,
  'not-stated': null,
} as const satisfies Record<CoveringClass, string | null>

/** Gathers what the rules of one bid work with: its facets, its findings, and what is stated of the covering. */
export function scopeFacts({ job, facets, findings }: ScopeSource, scope: Scope, bid: Bid): ScopeFacts {
  const { covering } = job.sheet
  const chosen = scope.facets[bid]
  const { exposureIn, coverWidthIn } = covering
  const piece = exposureIn === null || coverWidthIn === null ? null : { exposureIn, coverWidthIn }
  return {
    facets: chosen === null ? facets : facets.filter(({ id }) => chosen.includes(id)),
    findings:
      chosen === null ? findings : findings.filter(({ facetId }) => facetId !== null && chosen.includes(facetId)),
    upAzimuthDeg: job.frame.upAzimuthDeg,
    pieces: piecesWord(covering.class).toLowerCase(),
    piecesPerSquare: piece === null ? null : piecesPerSquare(piece),
    pieceSizeWords: piece === null ? '' : `14,400 / (${piece.exposureIn} in x ${piece.coverWidthIn} in)`,
    weightLbPerSquare: weightOf(scope, covering.class),
    wastePercent: covering.wastePercent === null ? null : trimmed(covering.wastePercent),
    fastenersPerPiece: scope.stated.fastenersPerPiece,
    battensLaid: scope.stated.battens === 'laid',
    exposureIn,
    setting: settingOf(scope, covering.fastening),
  }
}

function trimmed(value: number): Decimal {
  return readDecimal(String(Number(value.toFixed(4))))
}

function weightOf({ stated }: Scope, covering: CoveringClass): StatedFigure | null {
  if (stated.weightLbPerSquare !== null) {
    const source = stated.weightSource.trim()
    return {
      value: readDecimal(stated.weightLbPerSquare),
      basis: source === '' ? 'stated, its source not given' : `stated: ${source}`,
      isAssumed: false,
    }
  }
  const usual = usualWeightLb[covering]
  if (usual === null) return null
  return { value: readDecimal(usual), basis: 'common practice, no source', isAssumed: true }
}

function settingOf({ stated }: Scope, fastening: string): ScopeFacts['setting'] {
  switch (stated.setting) {
    case 'mortar':
    case 'foam':
      return { kind: stated.setting, basis: `Set in ${stated.setting}: stated on the scope.`, isStated: true }
    case 'neither':
      return null
    case 'by-sheet': {
      const basis = `The job sheet says of the fastening: "${fastening.trim()}"`
      if (/\bmortar\b/i.test(fastening)) return { kind: 'mortar', basis, isStated: false }
      return /\b(?:foam|adhesive)\b/i.test(fastening) ? { kind: 'foam', basis, isStated: false } : null
    }
  }
}

/** A quantity in squares as it is printed. */
export function printedSquares(areaSqFt: number): Decimal {
  return printedDecimal(areaSqFt / 100, 2)
}
