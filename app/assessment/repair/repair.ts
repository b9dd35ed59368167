import type { Finding } from '../../evidence/finding.ts'
import { facetGeometry, pieceCount } from '../../roof/facet-geometry.ts'
import type { Facet } from '../../roof/facet.ts'
import { containsPoint } from '../../roof/polygon.ts'
import { type PieceSize, wholePieces } from '../../roof/quantities.ts'
import { repairActions } from '../../scope/repair-actions.ts'
import type { Assessment, Treatment } from '../assessment.ts'
import { isTileDamage } from '../tile-damage.ts'
import { type Cell, cellAt, fewestLifted, liftedFor, mostLifted, type Range } from './course-grid.ts'

/** What a repair takes on one facet. */
export interface FacetRepair {
  readonly facet: Facet
  /** Tiles of the facet, not rounded. */
  readonly tiles: number
  /** Tiles counted exactly that are replaced, and that are set again. */
  readonly replace: number
  readonly reset: number
  /** Of those, tiles whose place on the course grid is known by a pin. */
  readonly pinned: number
  /** Findings that the work would take in hand but that give no exact count. */
  readonly notCounted: readonly Finding[]
  /** Sound tiles that are lifted to reach them. */
  readonly lifted: Range
  /** Of the tiles that are lifted and set again, those that break, by the allowance; null until one is chosen. */
  readonly broken: Range | null
  /** New tiles that the repair takes; null without an allowance. */
  readonly needed: Range | null
}

/** Needed against available. */
export type RepairVerdict = 'enough' | 'depends' | 'short' | 'not-known' | 'nothing-to-do'

export interface Repair {
  readonly facets: readonly FacetRepair[]
  readonly needed: Range | null
  /** Matching tiles that are known to exist; null while nobody has counted any. */
  readonly available: number | null
  readonly verdict: RepairVerdict
  /** What is missing before needed can be held against available. */
  readonly lacks: readonly string[]
}

export interface RepairSource {
  readonly facets: readonly Facet[]
  readonly findings: readonly Finding[]
  readonly piece: PieceSize | null
  readonly upAzimuthDeg: number
  readonly assessment: Assessment
}

/** What a person decided for a finding's tiles, or what its condition suggests (common practice, no source). */
export function treatmentOf(finding: Finding, { treatments }: Pick<Assessment, 'treatments'>): Treatment {
  const chosen = treatments.find(({ findingId }) => findingId === finding.id)
  if (chosen !== undefined) return chosen.treatment
  switch (repairActions[finding.condition]) {
    case 'replace':
      return 'replace'
    case 'set-again':
      return 'reset'
    case 'clear':
    case null:
      return 'leave'
  }
}

/** Works out, facet by facet, what a repair takes against the matching tile that is known to exist. */
export function repairOf(source: RepairSource): Repair {
  const { facets, findings, piece, assessment } = source
  const work = findings.filter((finding) => isTileDamage(finding) && treatmentOf(finding, assessment) !== 'leave')
  const available = availableOf(assessment)
  const lacks = lacksOf(source, work, available)
  if (work.length === 0) return { facets: [], needed: null, available, verdict: 'nothing-to-do', lacks: [] }
  if (piece === null) return { facets: [], needed: null, available, verdict: 'not-known', lacks }
  const each = facets.flatMap((facet): FacetRepair[] => {
    const own = work.filter(({ facetId }) => facetId === facet.id)
    return own.length === 0 ? [] : [facetRepair(facet, own, { ...source, piece })]
  })
  const needed = assessment.breakage === null ? null : summed(each.map((one) => one.needed ?? NONE))
  return { facets: each, needed, available, verdict: verdictOf({ needed, available, lacks }), lacks }
}

const NONE: Range = { least: 0, most: 0 }

/** Area that a repair works on on a facet, square feet: tiles replaced, set again and lifted; null where it can't be told. */
export function repairAreaSqFt(repair: FacetRepair | undefined, piece: PieceSize | null): Range | null {
  if (repair === undefined || piece === null || repair.notCounted.length > 0) return null
  const { replace, reset, lifted } = repair
  const areaOf = (tiles: number) => (tiles * piece.exposureIn * piece.coverWidthIn) / 144
  return { least: areaOf(replace + reset + lifted.least), most: areaOf(replace + reset + lifted.most) }
}

function availableOf({ stock }: Assessment): number | null {
  const counted = stock.flatMap(({ pieces }) => pieces ?? [])
  return counted.length === 0 ? null : counted.reduce((sum, pieces) => sum + pieces, 0)
}

function facetRepair(
  facet: Facet,
  findings: readonly Finding[],
  source: RepairSource & { piece: PieceSize },
): FacetRepair {
  const { assessment, piece } = source
  const tiles = pieceCount(facetGeometry(facet).areaSqFt, piece)
  const counted = findings.flatMap((finding) =>
    finding.extent.kind === 'exactly' ? [{ finding, count: finding.extent.count }] : [],
  )
  const countOf = (treatment: Treatment) =>
    counted.reduce((sum, { finding, count }) => (treatmentOf(finding, assessment) === treatment ? sum + count : sum), 0)
  const [replace, reset] = [countOf('replace'), countOf('reset')]
  const cells = eachOnce(counted.flatMap(({ finding, count }) => cellOf(finding, count, { facet, source })))
  const unplaced = replace + reset - cells.length
  const placed = liftedFor(cells, assessment)
  const sound = Math.max(0, wholePieces(tiles) - replace - reset)
  // Tiles without a place may adjoin the pinned ones, or be among those that are lifted for them.
  const least = Math.max(placed - unplaced, fewestLifted(replace + reset, assessment))
  const lifted = {
    least: Math.min(sound, least),
    most: Math.min(sound, placed + mostLifted(unplaced, assessment)),
  }
  const broken = brokenOf(lifted, reset, assessment)
  return {
    facet,
    tiles,
    replace,
    reset,
    pinned: cells.length,
    notCounted: findings.filter(({ extent }) => extent.kind !== 'exactly'),
    lifted,
    broken,
    needed: broken === null ? null : { least: replace + broken.least, most: replace + broken.most },
  }
}

/** Pins that stand on one tile tell the place of one of their tiles only. */
function eachOnce(cells: readonly Cell[]): readonly Cell[] {
  return [...new Map(cells.map((cell) => [`${cell.course} ${cell.place}`, cell])).values()]
}

/** A single tile under a pin on its facet has its place; of several under one pin nobody knows which they are. */
function cellOf(
  { pin }: Finding,
  count: number,
  { facet, source }: { facet: Facet; source: RepairSource & { piece: PieceSize } },
): readonly Cell[] {
  if (count !== 1 || pin?.kind !== 'point' || !containsPoint(facet.outline, pin.at)) return []
  return [cellAt(pin.at, facet, { piece: source.piece, upAzimuthDeg: source.upAzimuthDeg })]
}

/** Whole tiles: a part of a tile that breaks is a tile. */
function brokenOf(lifted: Range, reset: number, { breakage }: Assessment): Range | null {
  if (breakage === null) return null
  return {
    least: Math.ceil(((lifted.least + reset) * breakage.fromPercent) / 100),
    most: Math.ceil(((lifted.most + reset) * breakage.toPercent) / 100),
  }
}

function summed(ranges: readonly Range[]): Range {
  return ranges.reduce((sum, { least, most }) => ({ least: sum.least + least, most: sum.most + most }), NONE)
}

function lacksOf(
  { facets, piece, assessment }: RepairSource,
  work: readonly Finding[],
  available: number | null,
): readonly string[] {
  const crowded = facets.filter((facet) => {
    const own = work.filter(({ facetId }) => facetId === facet.id)
    const counted = own.reduce((sum, { extent }) => sum + (extent.kind === 'exactly' ? extent.count : 0), 0)
    return piece !== null && counted > Math.ceil(pieceCount(facetGeometry(facet).areaSqFt, piece))
  })
  const uncounted = work.filter(({ extent }) => extent.kind !== 'exactly')
  const placeless = work.filter(({ facetId }) => facetId === null)
  const labels = (findings: readonly Finding[]) => findings.map(({ number }) => `F-${number}`).join(', ')
  return [
    ...(piece === null ? ['Exposure and cover width of the tile are not on the job sheet.'] : []),
    ...(uncounted.length === 0 ? [] : [`No exact count: ${labels(uncounted)}.`]),
    ...crowded.map(({ letter }) => `More tiles are counted on facet ${letter} than it has: correct the counts.`),
    ...(placeless.length === 0 ? [] : [`On no facet: ${labels(placeless)}.`]),
    ...(assessment.breakage === null ? ['No allowance for breaking is chosen.'] : []),
    ...(available === null ? ['No matching tile has been counted.'] : []),
  ]
}

function verdictOf({ needed, available, lacks }: Pick<Repair, 'needed' | 'available' | 'lacks'>): RepairVerdict {
  if (needed === null || available === null) return 'not-known'
  // Whatever is not counted yet can only add to what is needed.
  if (available < needed.least) return 'short'
  if (lacks.length > 0) return 'not-known'
  return available >= needed.most ? 'enough' : 'depends'
}

/** What every such count takes for granted, printed with it. */
export function repairAssumptions({ bond, lockFrom }: Assessment): readonly string[] {
  const above = bond === 'straight' ? 'the tile above it' : 'the two tiles above it, as joints are staggered by half,'
  return [
    `To take a tile out, ${above} and the tile on its ${lockFrom}, whose side lock laps it (seen from the eave), are lifted (common practice, no source).`,
    'A tile that is lifted for two repairs counts once. Where nobody wrote down which tiles they are, the least is for tiles that adjoin in the best shape and the most for tiles that lie apart. Ends of courses and the ridge are not taken into account.',
    'Tiles set again and tiles lifted to reach others may break; the allowance was chosen by a person (common practice, no source).',
    'Findings of different conditions on one facet are taken as different tiles.',
  ]
}

export const repairVerdictWords = {
  enough: 'The matching tile known of is enough for the repair as counted.',
  depends: 'Whether the matching tile known of is enough depends on where the tiles lie and how many break.',
  short: 'The matching tile known of is fewer than the repair as counted takes.',
  'not-known': 'It cannot be judged yet whether the matching tile known of is enough.',
  'nothing-to-do': 'No finding of tile damage calls for work on tiles.',
} as const satisfies Record<RepairVerdict, string>
