import type { FacetId } from '../job/ids.ts'
import type { Facet } from './facet.ts'
import { distanceAlong, houseSide, type Orientation } from './house-sides.ts'

/** The letter that a facet gets. */
export interface FacetLetter {
  readonly facetId: FacetId
  readonly letter: string
}

/**
 * Letters A, B, ... Z, AA for all facets of a new plan, round the house clockwise as seen from above: slopes that face
 * the front first, then the left side, the back and the right side (as seen from the street), corner slopes between
 * them, flat parts last. Within a side the order goes on clockwise, so the first letter is at the right end of the
 * front; of slopes behind each other the outer one comes first. Where the front is not known it starts with slopes that
 * face north. The order in which facets are listed makes no difference.
 */
export function letterOrder(facets: readonly Facet[], orientation: Orientation): readonly FacetLetter[] {
  return nextLetters([], facets, orientation)
}

/**
 * Letters for facets that are added to a plan: the letters not in use, in the order of `letterOrder`. Letters already
 * given stay as they are.
 *
 * @param existing letters in use, in either case
 */
export function nextLetters(
  existing: readonly string[],
  newFacets: readonly Facet[],
  orientation: Orientation,
): readonly FacetLetter[] {
  const used = new Set(existing.map((letter) => letter.toUpperCase()))
  let place = 0
  return roundTheHouse(newFacets, orientation).map(({ id }) => {
    while (used.has(letterAt(place))) place += 1
    return { facetId: id, letter: letterAt(place++) }
  })
}

function roundTheHouse(facets: readonly Facet[], orientation: Orientation): readonly Facet[] {
  const keyed = facets.map((facet) => ({ facet, key: keyOf(facet, orientation) }))
  return keyed
    .toSorted((a, b) => {
      const differs = a.key.findIndex((value, i) => value !== b.key[i])
      if (differs >= 0) return (a.key[differs] ?? 0) - (b.key[differs] ?? 0)
      return a.facet.id < b.facet.id ? -1 : 1
    })
    .map(({ facet }) => facet)
}

/** Side, place along it clockwise, and how far in; to a tenth of a foot, so that rounding doesn't change the order. */
function keyOf(facet: Facet, orientation: Orientation): readonly number[] {
  const { place, outward } = houseSide(facet, orientation)
  const clockwise = { x: outward.y, y: -outward.x }
  const along = facet.outline.map((corner) => distanceAlong(corner, clockwise))
  const out = facet.outline.map((corner) => distanceAlong(corner, outward))
  const middle = (Math.min(...along) + Math.max(...along)) / 2
  return [place, Math.round(middle * 10), Math.round(-Math.max(...out) * 10)]
}

function letterAt(place: number): string {
  const last = String.fromCharCode(65 + (place % 26))
  return place < 26 ? last : letterAt(Math.floor(place / 26) - 1) + last
}
