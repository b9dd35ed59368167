import type { PlanPoint } from '../../../app/job/places.ts'
import type { FacetShape } from '../../../app/roof/plan-drawing.ts'
import { containsPoint, lengthFt, signedAreaSqFt } from '../../../app/roof/polygon.ts'
import { labelPlace, roomAt } from '../label-place.ts'
import type { ScreenPoint } from '../plan-view.ts'
import { boxesOverlap, lineMeetsBox, type LabelBox } from './boxes.ts'

/** Where a facet's letter stands, pixels from the plan's origin, and how much stands with it. */
export interface FacetPlace {
  readonly facet: FacetShape
  readonly at: ScreenPoint
  readonly detail: 'full' | 'arrow' | 'letter' | 'small'
  /** The place in the facet that a line leads to, where the letter had to stand outside; else null. */
  readonly leadsTo: ScreenPoint | null
  readonly box: LabelBox
}

/** Room to the nearest side, pixels, that each way of writing needs; a letter with less stands beside its facet. */
const ROOM_PX = { full: 34, arrow: 20, letter: 9, small: 4.5 } as const
/** How wide a character of a small letter is, and half its height, pixels. */
const SMALL_PX = { character: 8, halfHeight: 7 } as const
/** How far apart places for a letter alone are tried. */
const LETTER_STEP_PX = 12
const CHARACTER_PX = 12
const HALF_LETTER_PX = 11
/** How far from its facet a letter is tried, pixels, and in how many directions. */
const LEADER_PX = [22, 34, 48, 64, 84] as const
const DIRECTIONS = 16
/** A facet smaller than this on the screen has no line to it: the plan has to be made larger first. */
const LEAST_LED_PX = 40

interface Around {
  readonly pins: readonly PlanPoint[]
  readonly taken: readonly LabelBox[]
  /** The drawn edges, pixels from the plan's origin. */
  readonly lines: readonly { readonly from: ScreenPoint; readonly to: ScreenPoint }[]
}

/**
 * Where the facets' letters stand, clear of what is taken and of each other: inside, with pitch and arrow where there is
 * room, else alone, or beside a sliver with a line that leads to it. The largest facets choose first; one that finds no
 * place has its letter in the table only.
 */
export function facetPlaces(facets: readonly FacetShape[], scale: number, around: Around): readonly FacetPlace[] {
  const taken = [...around.taken]
  const bySize = facets.toSorted((a, b) => Math.abs(signedAreaSqFt(b.outline)) - Math.abs(signedAreaSqFt(a.outline)))
  return bySize.flatMap((facet) => {
    const isFree = (place: FacetPlace) => !taken.some((box) => boxesOverlap(box, place.box))
    const found =
      insidePlaces(facet, scale, around.pins).find(isFree) ??
      besidePlaces(facet, scale).find(
        (place) => isFree(place) && isOffRoof(place, scale, { facets, lines: around.lines }),
      )
    if (found === undefined) return []
    taken.push(found.box)
    return [found]
  })
}

/** At the best place with as much as there is room for, then alone, then alone elsewhere inside. */
function insidePlaces(facet: FacetShape, scale: number, pins: readonly PlanPoint[]): readonly FacetPlace[] {
  const { at, roomFt } = labelPlace(facet.outline, facet.labelAt, pins)
  const roomPx = roomFt * scale
  const details = (['full', 'arrow', 'letter'] as const).filter((detail) => roomPx > ROOM_PX[detail])
  const here = details.map((detail) => placeAt(facet, onScreen(at, scale), detail))
  const elsewhere = spotsIn(facet, LETTER_STEP_PX / scale)
    .filter((spot) => roomAt(facet.outline, spot) * scale > ROOM_PX.letter)
    .toSorted((a, b) => lengthFt(a, facet.labelAt) - lengthFt(b, facet.labelAt))
  const small = roomPx > ROOM_PX.small ? [placeAt(facet, onScreen(at, scale), 'small')] : []
  return [...here, ...elsewhere.map((spot) => placeAt(facet, onScreen(spot, scale), 'letter')), ...small]
}

/** Places spread over a facet, at most some hundred of them. */
function spotsIn({ outline }: FacetShape, wishedFt: number): readonly PlanPoint[] {
  const [xs, ys] = [outline.map(({ xFt }) => xFt), outline.map(({ yFt }) => yFt)]
  const [left, bottom] = [Math.min(...xs), Math.min(...ys)]
  const [width, height] = [Math.max(...xs) - left, Math.max(...ys) - bottom]
  const stepFt = Math.max(wishedFt, width / 12, height / 12)
  const columns = Array.from({ length: Math.floor(width / stepFt) }, (_, i) => left + (i + 0.5) * stepFt)
  const rows = Array.from({ length: Math.floor(height / stepFt) }, (_, i) => bottom + (i + 0.5) * stepFt)
  return columns.flatMap((xFt) => rows.map((yFt) => ({ xFt, yFt }))).filter((spot) => containsPoint(outline, spot))
}

function besidePlaces(facet: FacetShape, scale: number): readonly FacetPlace[] {
  if (reachFt(facet) * scale < LEAST_LED_PX) return []
  const foot = onScreen(facet.labelAt, scale)
  return LEADER_PX.flatMap((away) =>
    Array.from({ length: DIRECTIONS }, (_, turn): FacetPlace => {
      // Slantwise first: the middle of an edge is where its length stands.
      const angle = ((turn + 2) / DIRECTIONS) * 2 * Math.PI
      const at = { x: foot.x + Math.sin(angle) * away, y: foot.y - Math.cos(angle) * away }
      return { ...placeAt(facet, at, 'letter'), leadsTo: foot }
    }),
  )
}

/** How long a facet is, corner to corner. */
function reachFt({ outline }: FacetShape): number {
  return Math.max(...outline.map((a) => Math.max(...outline.map((b) => lengthFt(a, b)))))
}

/** True where a letter can't be taken for another facet's. */
function isOffRoof(
  { at, box }: FacetPlace,
  scale: number,
  { facets, lines }: Pick<Around, 'lines'> & { readonly facets: readonly FacetShape[] },
): boolean {
  const point = { xFt: at.x / scale, yFt: -at.y / scale }
  return (
    !facets.some(({ outline }) => containsPoint(outline, point)) &&
    !lines.some(({ from, to }) => lineMeetsBox(from, to, box))
  )
}

function placeAt(facet: FacetShape, at: ScreenPoint, detail: FacetPlace['detail']): FacetPlace {
  return { facet, at, detail, leadsTo: null, box: boxOf(facet, at, detail) }
}

/** The letter, and around it the pitch and the downhill arrow that stand with it. */
function boxOf(facet: FacetShape, { x, y }: ScreenPoint, detail: FacetPlace['detail']): LabelBox {
  if (detail === 'small') {
    return { x, y, halfWidth: (facet.letter.length * SMALL_PX.character) / 2 + 2, halfHeight: SMALL_PX.halfHeight }
  }
  const halfLetter = Math.max(HALF_LETTER_PX, (facet.letter.length * CHARACTER_PX) / 2)
  if (detail === 'letter') return { x, y, halfWidth: halfLetter, halfHeight: HALF_LETTER_PX }
  const arrow = 32
  const way = { x: facet.downhill.x * arrow, y: -facet.downhill.y * arrow }
  const halfWords = detail === 'full' ? Math.max(halfLetter, (facet.pitchLabel.length * 7) / 2) : halfLetter
  const halfHigh = detail === 'full' ? 26 : HALF_LETTER_PX
  const left = Math.min(x - halfWords, x + way.x - 4)
  const right = Math.max(x + halfWords, x + way.x + 4)
  const top = Math.min(y - halfHigh, y + way.y - 4)
  const bottom = Math.max(y + halfHigh, y + way.y + 4)
  return {
    x: (left + right) / 2,
    y: (top + bottom) / 2,
    halfWidth: (right - left) / 2,
    halfHeight: (bottom - top) / 2,
  }
}

function onScreen({ xFt, yFt }: PlanPoint, scale: number): ScreenPoint {
  return { x: xFt * scale, y: -yFt * scale }
}
