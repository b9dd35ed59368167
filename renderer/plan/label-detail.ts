import type { PlanPoint } from '../../app/job/places.ts'

/** How much of a facet's label there is room for; `none` leaves even the letter to the table and to a closer look. */
export type LabelDetail = 'full' | 'arrow' | 'letter' | 'small' | 'none'

/** Half the width and height that a label takes, pixels. The pitch under a full one and its arrow may reach further. */
const HALF_PX = { full: 12, arrow: 11, letter: 9, small: 6, none: 0 } as const satisfies Record<LabelDetail, number>

/** The label that fits between a facet's sides, by how far the nearest one is, pixels. */
function fitting(roomPx: number): LabelDetail {
  if (roomPx > 34) return 'full'
  if (roomPx > 20) return 'arrow'
  if (roomPx > 9) return 'letter'
  return roomPx > 4.5 ? 'small' : 'none'
}

/**
 * What each facet's label shows at a scale, so that no letter stands on another: facets with more room choose first, and
 * a letter that finds its place taken is left away.
 *
 * @param places where the labels stand and how far the nearest side is, feet
 * @param scale pixels per foot
 */
export function labelDetails(
  places: readonly { readonly at: PlanPoint; readonly roomFt: number }[],
  scale: number,
): readonly LabelDetail[] {
  const details = places.map(({ roomFt }) => fitting(roomFt * scale))
  const taken: { readonly x: number; readonly y: number; readonly half: number }[] = []
  const order = places.map((_, index) => index).toSorted((a, b) => roomOf(places[b]) - roomOf(places[a]))
  for (const index of order) {
    const [place, detail] = [places[index], details[index]]
    if (place === undefined || detail === undefined || detail === 'none') continue
    const box = { x: place.at.xFt * scale, y: place.at.yFt * scale, half: HALF_PX[detail] }
    const isFree = taken.every(
      (other) => Math.max(Math.abs(other.x - box.x), Math.abs(other.y - box.y)) >= other.half + box.half,
    )
    if (isFree) taken.push(box)
    else details[index] = 'none'
  }
  return details
}

function roomOf(place: { readonly roomFt: number } | undefined): number {
  return place?.roomFt ?? 0
}
