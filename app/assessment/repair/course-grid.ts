import type { PlanPoint } from '../../job/places.ts'
import type { Facet } from '../../roof/facet.ts'
import { sheetDirection } from '../../roof/plan-frame.ts'
import type { PieceSize } from '../../roof/quantities.ts'
import { slopeFactor } from '../../roof/slope.ts'
import type { Assessment } from '../assessment.ts'

/** A tile's place on a facet: its course from the eave up, and its place in the course from the left, seen from the eave. */
export interface Cell {
  readonly course: number
  readonly place: number
}

/** How tiles lie on each other. */
export type Laying = Pick<Assessment, 'bond' | 'lockFrom'>

/**
 * Tiles that must be lifted to take one out: those of the course above that lap its head, one where joints run straight up
 * and two where they are staggered by half, and the one beside it whose side lock laps over its own (common practice,
 * no source).
 */
export function tilesOver({ course, place }: Cell, { bond, lockFrom }: Laying): readonly Cell[] {
  const beside: Cell = { course, place: lockFrom === 'left' ? place - 1 : place + 1 }
  const above: Cell = { course: course + 1, place }
  if (bond === 'straight') return [above, beside]
  // Every other course is shifted to the right by half a tile.
  const other: Cell = { course: course + 1, place: course % 2 === 0 ? place - 1 : place + 1 }
  return [above, other, beside]
}

/** How many tiles are lifted to reach these, each counted once, and none that is itself among them. */
export function liftedFor(cells: readonly Cell[], laying: Laying): number {
  const key = ({ course, place }: Cell) => `${course} ${place}`
  const own = new Set(cells.map(key))
  const over = new Set(cells.flatMap((cell) => tilesOver(cell, laying)).map(key))
  return [...over].filter((one) => !own.has(one)).length
}

/** A number that is only known to lie between two others. */
export interface Range {
  readonly least: number
  readonly most: number
}

/**
 * The fewest tiles that are ever lifted to reach so many, wherever they lie within a facet. With a tile and its two
 * neighbours as a triangle, a triangle of tiles is the best shape: k (k + 1) / 2 of them need k + 1 lifted. With two tiles
 * above, the tile and its neighbours are a lozenge, and so is the best shape: a by b need a + b + 1. (The smallest sum of
 * two sets on a grid is that of sets of one shape: the theorem of Brunn and Minkowski; small counts are tried out in
 * full in the tests.)
 */
export function fewestLifted(count: number, { bond }: Pick<Laying, 'bond'>): number {
  if (count === 0) return 0
  if (bond === 'straight') return Math.ceil((Math.sqrt(8 * count + 1) - 1) / 2) + 1
  let least = Infinity
  for (let wide = 1; wide <= Math.ceil(Math.sqrt(count)) + 1; wide += 1) {
    least = Math.min(least, wide + Math.ceil(count / wide) + 1)
  }
  return least
}

/** The most that are lifted to reach so many: each lies by itself. */
export function mostLifted(count: number, laying: Laying): number {
  return count * tilesOver({ course: 0, place: 0 }, laying).length
}

/** The tile of a facet under a point of the plan, on a grid of courses from the facet's lowest point up. */
export function cellAt(
  at: PlanPoint,
  facet: Facet,
  { piece, upAzimuthDeg }: { piece: PieceSize; upAzimuthDeg: number },
): Cell {
  const down = sheetDirection(facet.downslopeAzimuthDeg, upAzimuthDeg)
  const upFt = ({ xFt, yFt }: PlanPoint) => -(xFt * down.x + yFt * down.y)
  const rightFt = ({ xFt, yFt }: PlanPoint) => yFt * down.x - xFt * down.y
  const lowest = Math.min(...facet.outline.map(upFt))
  const left = Math.min(...facet.outline.map(rightFt))
  return {
    course: Math.floor(((upFt(at) - lowest) * slopeFactor(facet.pitchRise) * 12) / piece.exposureIn),
    place: Math.floor(((rightFt(at) - left) * 12) / piece.coverWidthIn),
  }
}
