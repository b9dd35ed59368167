import type { SheetPoint } from './marks.ts'
import { overlaps, type SoftBox } from './pin-places.ts'

const RING_STEP_PT = 4
const RINGS = 24
const DIRECTIONS = 16
/** Where on an edge its tag may stand, from the middle outwards. */
const TAG_SHARES = [0.5, 0.4, 0.6, 0.3, 0.7, 0.22, 0.78] as const
const TAG_HALF_PT = { widthPt: 6, heightPt: 5 }

interface Around {
  readonly half: { readonly widthPt: number; readonly heightPt: number }
  readonly outline: readonly SheetPoint[]
  readonly pins: readonly SoftBox[]
}

/** Where a facet's label stands: at its centre, else as near to it as it stands inside the outline and under no pin; at its centre where there is no such place. */
export function labelPlace(centre: SheetPoint, { half, outline, pins }: Around): SheetPoint {
  const isFree = (at: SheetPoint) =>
    pins.every((pin) => !overlaps(pin, { at, halfWidthPt: half.widthPt, halfHeightPt: half.heightPt }))
  if (isFree(centre)) return centre
  for (let ring = 1; ring <= RINGS; ring += 1) {
    for (let turn = 0; turn < DIRECTIONS; turn += 1) {
      const angle = (turn / DIRECTIONS) * 2 * Math.PI
      const radius = ring * RING_STEP_PT
      const at = { xPt: centre.xPt + radius * Math.cos(angle), yPt: centre.yPt + radius * Math.sin(angle) }
      const roomPt = isInside(at, outline) ? outlineDistance(at, outline) : 0
      if (roomPt > Math.max(half.widthPt, half.heightPt) && isFree(at)) return at
    }
  }
  return centre
}

/** Where an edge's tag stands: in the middle, else aside of the pins on the edge. */
export function tagPlace(from: SheetPoint, to: SheetPoint, pins: readonly SoftBox[]): SoftBox {
  const boxAt = (share: number): SoftBox => ({
    at: { xPt: from.xPt + share * (to.xPt - from.xPt), yPt: from.yPt + share * (to.yPt - from.yPt) },
    halfWidthPt: TAG_HALF_PT.widthPt,
    halfHeightPt: TAG_HALF_PT.heightPt,
  })
  const share = TAG_SHARES.find((candidate) => pins.every((pin) => !overlaps(pin, boxAt(candidate))))
  return boxAt(share ?? TAG_SHARES[0])
}

/** Distance from a point to the nearest side of an outline. */
export function outlineDistance(at: SheetPoint, outline: readonly SheetPoint[]): number {
  return Math.min(...outline.map((to, i) => toSegment(at, outline.at(i - 1) ?? to, to)))
}

function toSegment(p: SheetPoint, a: SheetPoint, b: SheetPoint): number {
  const along = { x: b.xPt - a.xPt, y: b.yPt - a.yPt }
  const lengthSq = along.x ** 2 + along.y ** 2
  const t = lengthSq === 0 ? 0 : ((p.xPt - a.xPt) * along.x + (p.yPt - a.yPt) * along.y) / lengthSq
  const held = Math.min(Math.max(t, 0), 1)
  return Math.hypot(p.xPt - a.xPt - held * along.x, p.yPt - a.yPt - held * along.y)
}

/** True for a point inside an outline, by the number of sides that a ray to the right crosses. */
export function isInside(p: SheetPoint, outline: readonly SheetPoint[]): boolean {
  const crossed = outline.filter((b, i) => {
    const a = outline.at(i - 1) ?? b
    if (a.yPt > p.yPt === b.yPt > p.yPt) return false
    return p.xPt < a.xPt + ((p.yPt - a.yPt) / (b.yPt - a.yPt)) * (b.xPt - a.xPt)
  })
  return crossed.length % 2 === 1
}
