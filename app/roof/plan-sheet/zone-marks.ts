import type { ZoneShape } from '../plan-drawing.ts'
import type { Zone } from '../zones/edition.ts'
import { zoneLabels, zonesInOrder } from '../zones/zone-words.ts'
import { ZONE_LOOKS } from './inks.ts'
import { line, plainText, type PlanMark, type SheetPoint, solidPen } from './marks.ts'
import type { ToSheet } from './plan-sheet.ts'
import { INK } from './inks.ts'

/** Height of the row that explains the zones. */
export const ZONE_LEGEND_PT = 18

const SWATCH = { widthPt: 26, heightPt: 10 }
const TEXT_PT = 8

/** Zones as tint and hatching: each kind has a direction or a dot of its own besides its colour, so that grey prints read the same. */
export function zoneMarks(zones: readonly ZoneShape[], toSheet: ToSheet): readonly PlanMark[] {
  return zones.flatMap(({ zone, region }) =>
    region.flatMap(({ outer, holes }) =>
      hatched(
        zone,
        [outer, ...holes].map((ring) => ring.map(toSheet)),
      ),
    ),
  )
}

/** One row: a swatch and a name for each kind of zone. */
export function zoneLegend(zones: readonly ZoneShape[], at: SheetPoint, widthPt: number): readonly PlanMark[] {
  const kinds = zonesInOrder.filter((zone) => zones.some((shape) => shape.zone === zone))
  const stepPt = Math.min(118, (widthPt - 40) / Math.max(1, kinds.length))
  return [
    plainText('Zones', { xPt: at.xPt, yPt: at.yPt + 8 }, { sizePt: TEXT_PT, colour: INK, strong: true }),
    ...kinds.flatMap((zone, i) => {
      const x = at.xPt + 40 + i * stepPt
      const box = [
        { xPt: x, yPt: at.yPt },
        { xPt: x + SWATCH.widthPt, yPt: at.yPt },
        { xPt: x + SWATCH.widthPt, yPt: at.yPt + SWATCH.heightPt },
        { xPt: x, yPt: at.yPt + SWATCH.heightPt },
      ]
      const frame: PlanMark = { kind: 'path', points: box, closed: true, pen: solidPen(INK, 0.5), fill: null }
      const words = { xPt: x + SWATCH.widthPt + 5, yPt: at.yPt + 8 }
      return [
        ...hatched(zone, [box]),
        frame,
        plainText(zoneLabels[zone].toLowerCase(), words, { sizePt: TEXT_PT, colour: INK, strong: false }),
      ]
    }),
  ]
}

function hatched(zone: Zone, rings: readonly (readonly SheetPoint[])[]): readonly PlanMark[] {
  const { tint, hatches } = ZONE_LOOKS[zone]
  const [outer, ...holes] = rings
  const ground: readonly PlanMark[] =
    tint === null || outer === undefined || holes.length > 0
      ? []
      : [{ kind: 'path', points: outer, closed: true, pen: null, fill: tint }]
  return [
    ...ground,
    ...hatches.flatMap(({ angleDeg, stepPt, pen }) =>
      hatchLines(rings, angleDeg, stepPt).map(([from, to]) => line(from, to, pen)),
    ),
  ]
}

/**
 * Parallel lines over the inside of a figure, holes left out (even-odd rule). Lines of all figures lie on one grid, so
 * that hatching runs on from one piece to the next.
 */
export function hatchLines(
  rings: readonly (readonly SheetPoint[])[],
  angleDeg: number,
  stepPt: number,
): readonly (readonly [SheetPoint, SheetPoint])[] {
  const [c, s] = [Math.cos((angleDeg * Math.PI) / 180), Math.sin((angleDeg * Math.PI) / 180)]
  // In turned coordinates the lines are level.
  const turned = rings.map((ring) => ring.map(({ xPt, yPt }) => ({ u: c * xPt + s * yPt, v: c * yPt - s * xPt })))
  const sides = turned.flatMap((ring) => ring.map((to, i) => ({ from: ring.at(i - 1) ?? to, to })))
  const heights = turned.flat().map(({ v }) => v)
  const first = Math.ceil(Math.min(...heights) / stepPt)
  const last = Math.floor(Math.max(...heights) / stepPt)
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => (first + i) * stepPt).flatMap((v) => {
    const crossings = sides
      .filter(({ from, to }) => from.v > v !== to.v > v)
      .map(({ from, to }) => from.u + ((v - from.v) / (to.v - from.v)) * (to.u - from.u))
      .toSorted((a, b) => a - b)
    return crossings.flatMap((u, k): readonly (readonly [SheetPoint, SheetPoint])[] => {
      const end = crossings[k + 1]
      if (k % 2 === 1 || end === undefined || end - u < 0.3) return []
      const back = (at: number): SheetPoint => ({ xPt: c * at - s * v, yPt: s * at + c * v })
      return [[back(u), back(end)]]
    })
  })
}
