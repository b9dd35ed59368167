import type { PlanPoint } from '../job/places.ts'
import type { FacetId } from '../job/ids.ts'
import type { Facet } from './facet.ts'
import { withKindsByHand } from './kinds-by-hand.ts'
import { sheetDirection } from './plan-frame.ts'
import type { EdgeKind } from './plan-drawing.ts'
import { lengthFt, sidesOf, signedAreaSqFt } from './polygon.ts'

/** Outlines drawn to the same corner agree within this: half an inch. */
const ON_LINE_FT = 1 / 24

/** Shared stretches shorter than this are two corners that touch, not an edge. */
const LEAST_EDGE_FT = 1 / 12

/** A slope runs along an edge, rather than to or from it, when it is within about 6 degrees of it. */
const ALONG = 0.1

/** Where water leaves at more than about 20 degrees to an outer edge, the edge is an eave; flatter than that, a rake. */
const EAVE = 0.35

/** Slopes that pass over one line within this of each other meet there; farther apart there is a wall between them. */
const ONE_HEIGHT_FT = 1 / 8

/** A line on the roof where facets meet or end, with its lengths. */
export interface RoofEdge {
  readonly kind: EdgeKind
  readonly from: PlanPoint
  readonly to: PlanPoint
  readonly planLengthFt: number
  readonly trueLengthFt: number
  /** One facet at the outside of the roof and on both sides of a step, two where slopes meet. */
  readonly facetIds: readonly FacetId[]
  /** What the edge is by the slopes alone, where a person has stated its kind. */
  readonly foundKind?: EdgeKind
}

interface FacetSide {
  readonly facet: Facet
  readonly from: PlanPoint
  readonly to: PlanPoint
  readonly lengthFt: number
  /** Unit vector along the side. */
  readonly along: { readonly x: number; readonly y: number }
  /** Unit vector at right angles to the side, into the facet. */
  readonly inward: { readonly x: number; readonly y: number }
  /** Unit vector in the direction that water runs. */
  readonly downhill: { readonly x: number; readonly y: number }
  /** How water runs at the side, -1 to 1: negative towards and over it, positive away from it into the facet. */
  readonly awayFromSide: number
  /** Feet of rise along the side per foot of plan length. */
  readonly risePerFt: number
  /** Height of the facet at a place, feet; null where its eave's height is not known. */
  readonly heightAt: (place: PlanPoint) => number | null
}

/** From and to, feet from the start of a side. */
type Stretch = readonly [number, number]

/**
 * Finds every ridge, hip, valley, eave, rake and break of a roof from its facets' outlines, pitches and downslope
 * directions. Sides of two facets that lie on one line are matched where they overlap; what is left over is the outside.
 * Where both heights are known and differ, there are two edges at two heights: the lower slope ends in a step, the higher
 * one at an outer edge of its own. What a person stated about an edge goes before all that.
 *
 * True length of a straight edge is sqrt(plan^2 + rise^2), the rise taken from the facets' own slopes.
 */
export function roofEdges(facets: readonly Facet[], upAzimuthDeg: number): readonly RoofEdge[] {
  const sides = facets.flatMap((facet) => facetSides(facet, upAzimuthDeg))
  const taken = sides.map((): Stretch[] => [])
  const inner: RoofEdge[] = []
  sides.forEach((side, index) => {
    sides.forEach((other, otherIndex) => {
      if (otherIndex <= index || other.facet.id === side.facet.id) return
      const shared = sharedStretches(side, other)
      if (shared === null) return
      taken[index]?.push(shared.onSide)
      taken[otherIndex]?.push(shared.onOther)
      inner.push(...edgesBetween(side, other, shared.onSide))
    })
  })
  const outer = sides.flatMap((side, index) =>
    freeStretches(side.lengthFt, taken[index] ?? []).map((free) => makeEdge(outerKind(side), [side], free)),
  )
  return withKindsByHand([...inner, ...outer], facets, upAzimuthDeg)
}

/** Sum of true lengths by kind, feet; kinds that the roof doesn't have are 0. */
export function edgeTotals(edges: readonly RoofEdge[]): Readonly<Record<EdgeKind, number>> {
  const totals: Record<EdgeKind, number> = {
    ridge: 0,
    hip: 0,
    valley: 0,
    eave: 0,
    rake: 0,
    'pitch-break': 0,
    step: 0,
    'top-edge': 0,
  }
  for (const edge of edges) totals[edge.kind] += edge.trueLengthFt
  return totals
}

function facetSides(facet: Facet, upAzimuthDeg: number): readonly FacetSide[] {
  const downhill = sheetDirection(facet.downslopeAzimuthDeg, upAzimuthDeg)
  const heightAt = heightOver(facet, downhill)
  const handed = signedAreaSqFt(facet.outline) >= 0 ? 1 : -1
  return sidesOf(facet.outline).flatMap(({ from, to }) => {
    const length = lengthFt(from, to)
    if (length < LEAST_EDGE_FT) return []
    const along = { x: (to.xFt - from.xFt) / length, y: (to.yFt - from.yFt) / length }
    const inward = { x: -along.y * handed, y: along.x * handed }
    return [
      {
        facet,
        from,
        to,
        lengthFt: length,
        along,
        inward,
        downhill,
        awayFromSide: downhill.x * inward.x + downhill.y * inward.y,
        risePerFt: (facet.pitchRise / 12) * Math.abs(downhill.x * along.x + downhill.y * along.y),
        heightAt,
      },
    ]
  })
}

/** A facet that follows an outline has its lowest corners on its eave. */
function heightOver(
  { from, outline, pitchRise }: Facet,
  downhill: { readonly x: number; readonly y: number },
): FacetSide['heightAt'] {
  const eaveHeightFt = from?.eaveHeightFt
  if (eaveHeightFt === undefined) return () => null
  const reachFt = ({ xFt, yFt }: PlanPoint) => xFt * downhill.x + yFt * downhill.y
  const eaveFt = Math.max(...outline.map(reachFt))
  return (place) => eaveHeightFt + ((eaveFt - reachFt(place)) * pitchRise) / 12
}

/** What lies along a stretch that two sides share: one edge where the slopes meet, two where a wall stands between them. */
function edgesBetween(side: FacetSide, other: FacetSide, stretch: Stretch): readonly RoofEdge[] {
  const gapAt = (alongFt: number): number => {
    const place = pointOn(side, alongFt)
    const [own, others] = [side.heightAt(place), other.heightAt(place)]
    return own === null || others === null ? 0 : own - others
  }
  const [start, end] = stretch
  const [first, last] = isMeantToMeet(side.facet, other.facet) ? [0, 0] : [gapAt(start), gapAt(end)]
  if (Math.max(Math.abs(first), Math.abs(last)) < ONE_HEIGHT_FT) {
    const meets = side.heightAt(side.from) !== null && other.heightAt(other.from) !== null
    return meets && isOneSlope(side, other) ? [] : [makeEdge(innerKind(side, other), [side, other], stretch)]
  }
  const crossesAt = start + ((end - start) * first) / (first - last)
  const crosses = first * last < 0 && crossesAt - start >= LEAST_EDGE_FT && end - crossesAt >= LEAST_EDGE_FT
  const parts: readonly Stretch[] = crosses
    ? [
        [start, crossesAt],
        [crossesAt, end],
      ]
    : [stretch]
  return parts.flatMap((part) => {
    const onOther = part.map((ft) => placeOn(other, pointOn(side, ft)).alongFt).toSorted((a, b) => a - b)
    const otherPart: Stretch = [onOther[0] ?? 0, onOther[1] ?? 0]
    const isHigher = gapAt((part[0] + part[1]) / 2) > 0
    const [higher, lower] = isHigher ? [side, other] : [other, side]
    const [higherPart, lowerPart] = isHigher ? [part, otherPart] : [otherPart, part]
    return [makeEdge(outerKind(higher), [higher], higherPart), makeEdge('step', [lower], lowerPart)]
  })
}

/** A slope that runs on over the line where two outlines meet has no edge there. */
function isOneSlope(a: FacetSide, b: FacetSide): boolean {
  const isOneWay = a.downhill.x * b.downhill.x + a.downhill.y * b.downhill.y > 1 - ALONG ** 2 / 2
  return isOneWay && a.facet.pitchRise === b.facet.pitchRise && a.facet.from?.outlineId !== b.facet.from?.outlineId
}

/** A pitch or direction that was corrected by hand puts a slope out of its neighbours' heights; it meets them all the same. */
function isMeantToMeet(a: Facet, b: Facet): boolean {
  return a.from?.outlineId === b.from?.outlineId && a.setByHand.length + b.setByHand.length > 0
}

/**
 * The stretch that two sides share, feet from the start of each; null when they are not on one line or their facets lie
 * on the same side of it. The longer side is the line: a short one says too little of where a line runs far away.
 */
function sharedStretches(side: FacetSide, other: FacetSide): { onSide: Stretch; onOther: Stretch } | null {
  if (side.inward.x * other.inward.x + side.inward.y * other.inward.y > 0) return null
  const [line, short] = other.lengthFt > side.lengthFt ? [other, side] : [side, other]
  if (placeOn(line, short.from).offFt > ON_LINE_FT || placeOn(line, short.to).offFt > ON_LINE_FT) return null
  const onSide = overlap(side, other)
  const onOther = overlap(other, side)
  return onSide === null || onOther === null ? null : { onSide, onOther }
}

function placeOn(line: FacetSide, p: PlanPoint): { readonly alongFt: number; readonly offFt: number } {
  const x = p.xFt - line.from.xFt
  const y = p.yFt - line.from.yFt
  return { alongFt: x * line.along.x + y * line.along.y, offFt: Math.abs(x * line.along.y - y * line.along.x) }
}

function pointOn({ from, along }: FacetSide, ft: number): PlanPoint {
  return { xFt: from.xFt + along.x * ft, yFt: from.yFt + along.y * ft }
}

function overlap(side: FacetSide, other: FacetSide): Stretch | null {
  const a = placeOn(side, other.from).alongFt
  const b = placeOn(side, other.to).alongFt
  const start = Math.max(0, Math.min(a, b))
  const end = Math.min(side.lengthFt, Math.max(a, b))
  return end - start < LEAST_EDGE_FT ? null : [start, end]
}

function freeStretches(lengthFt: number, taken: readonly Stretch[]): readonly Stretch[] {
  const free: Stretch[] = []
  let at = 0
  for (const [start, end] of [...taken].sort((p, q) => p[0] - q[0])) {
    if (start - at >= LEAST_EDGE_FT) free.push([at, start])
    at = Math.max(at, end)
  }
  if (lengthFt - at >= LEAST_EDGE_FT) free.push([at, lengthFt])
  return free
}

function innerKind(a: FacetSide, b: FacetSide): EdgeKind {
  const flows = flowsAt(a, b).toSorted().join('+')
  switch (flows) {
    case 'away+away':
      return isLevel(a) && isLevel(b) ? 'ridge' : 'hip'
    case 'toward+toward':
      return 'valley'
    case 'away+toward':
      return 'pitch-break'
    default:
      return 'step'
  }
}

function outerKind(side: FacetSide): EdgeKind {
  if (side.awayFromSide <= -EAVE || side.facet.pitchRise === 0) return 'eave'
  return side.awayFromSide > ALONG ? 'top-edge' : 'rake'
}

/** A flat facet sheds water nowhere: a slope beside it drains onto it or takes what runs off it, unless it runs past. */
function flowsAt(a: FacetSide, b: FacetSide): readonly Flow[] {
  const isFlat = (side: FacetSide) => side.facet.pitchRise === 0
  if (isFlat(a) === isFlat(b)) return isFlat(a) ? ['along', 'along'] : [flowOf(a), flowOf(b)]
  const flow = flowOf(isFlat(a) ? b : a)
  return flow === 'along' ? ['along', 'along'] : ['away', 'toward']
}

type Flow = 'away' | 'toward' | 'along'

function flowOf(side: FacetSide): Flow {
  if (side.awayFromSide > ALONG) return 'away'
  return side.awayFromSide < -ALONG ? 'toward' : 'along'
}

function isLevel(side: FacetSide): boolean {
  return Math.abs(side.awayFromSide) > 1 - ALONG ** 2
}

function makeEdge(kind: EdgeKind, sides: readonly [FacetSide, ...FacetSide[]], stretch: Stretch): RoofEdge {
  const [side] = sides
  const planLengthFt = stretch[1] - stretch[0]
  const rises = sides.map((s) => s.risePerFt)
  // Two slopes that meet climb alike along the line. At a step they need not: what covers it follows the steeper one.
  const risePerFt = kind === 'step' ? Math.max(...rises) : rises.reduce((sum, rise) => sum + rise, 0) / rises.length
  return {
    kind,
    from: pointOn(side, stretch[0]),
    to: pointOn(side, stretch[1]),
    planLengthFt,
    trueLengthFt: planLengthFt * Math.hypot(1, risePerFt),
    facetIds: sides.map((s) => s.facet.id),
  }
}
