import type { Skeleton } from 'straight-skeleton'
import type { PlanPoint } from '../../app/job/places.ts'

/**
 * The straight skeleton of the CGAL library, an implementation that shares nothing with ours: npm package
 * `straight-skeleton`, a WebAssembly build under the MIT licence of CGAL's straight skeleton package, which is GPL-3. It is
 * a tool of tests and benches alone and is never shipped. It knows no weights and no gables; it computes with doubles but
 * takes and gives single precision, so that outlines are rounded to it first.
 */
type Library = typeof import('straight-skeleton').SkeletonBuilder

/** A face as the library has it. */
export interface OutsideFace {
  readonly areaSqFt: number
  /** How far the area may be off by the rounding of its corners to single precision alone. */
  readonly roundingSqFt: number
}

/** What the library says of an outline. `passed` says why an answer is not one to compare with. */
export type OutsideAnswer =
  | { readonly ok: true; readonly faceAt: (ring: number, edge: number) => OutsideFace | undefined }
  | { readonly ok: false; readonly passed: 'no answer' | 'faces do not fill the outline' | 'corners off their planes' }

type Corner = readonly [x: number, y: number, height: number]

/** Half the distance to the next number in single precision, as a share of the number. */
const HALF_ULP = 2 ** -24

/** The library computes a corner with doubles; what that loses is this share of single precision's own rounding, at most. */
const DOUBLES = 1 / 16

let library: Library | null = null

/** Makes the library ready. Its loader looks for a browser, and Node gives its exports as a default. */
export async function loadOutsideSkeleton(): Promise<void> {
  const page: { self?: unknown; window?: unknown } = globalThis
  page.self ??= globalThis
  page.window ??= globalThis
  const loaded: { SkeletonBuilder?: Library; default?: { SkeletonBuilder: Library } } =
    await import('straight-skeleton')
  library = loaded.default?.SkeletonBuilder ?? loaded.SkeletonBuilder ?? null
  if (library === null) throw new Error('The package straight-skeleton has no SkeletonBuilder.')
  await library.init()
}

/** Rings in single precision, the outside counter-clockwise and courtyards clockwise, as the library takes them. */
export function inSinglePrecision(rings: readonly (readonly PlanPoint[])[]): PlanPoint[][] {
  return rings.map((ring, index) => {
    const line = ring.map(({ xFt, yFt }) => ({ xFt: Math.fround(xFt), yFt: Math.fround(yFt) }))
    return twiceArea(line.map(({ xFt, yFt }) => [xFt, yFt])) > 0 === (index === 0) ? line : line.toReversed()
  })
}

/**
 * The faces of the straight skeleton inside rings from `inSinglePrecision`; rings count from 0, edges from 1.
 *
 * Its answer is passed over when it can be seen to be wrong without ours: when its faces do not fill the outline, or when a
 * corner's height is not its distance from the edge of its face, to within the rounding of the four numbers.
 */
export async function outsideSkeleton(rings: readonly (readonly PlanPoint[])[]): Promise<OutsideAnswer> {
  const lines = rings.map((ring) => ring.map(({ xFt, yFt }): number[] => [xFt, yFt]))
  const found = await answerOf(lines.map((line) => [...line, line[0] ?? []]))
  if (found === null) return { ok: false, passed: 'no answer' }
  const faces = new Map<string, OutsideFace>()
  let sumSqFt = 0
  let isOff = false
  for (const polygon of found.polygons) {
    const corners = polygon.map((at): Corner => found.vertices[at] ?? [NaN, NaN, NaN])
    const face = { areaSqFt: Math.abs(twiceArea(corners)) / 2, roundingSqFt: roundingOf(corners) }
    sumSqFt += face.areaSqFt
    corners.forEach((from, i) => {
      const to = corners[(i + 1) % corners.length] ?? from
      if (from[2] !== 0 || to[2] !== 0) return
      faces.set(nameOf(from, to), face)
      isOff ||= corners.some((corner) => !liesInPlane(corner, from, to))
    })
  }
  const wholeSqFt = lines.reduce((sum, line) => sum + twiceArea(line) / 2, 0)
  if (!(Math.abs(sumSqFt - wholeSqFt) < 1e-3 * wholeSqFt)) return { ok: false, passed: 'faces do not fill the outline' }
  if (isOff) return { ok: false, passed: 'corners off their planes' }
  return {
    ok: true,
    faceAt: (ring, edge) => {
      const line = lines[ring] ?? []
      return faces.get(nameOf(line[edge - 1] ?? [], line[edge % line.length] ?? []))
    },
  }
}

/**
 * Area error from rounding each corner: a corner moved by (dx, dy) changes the shoelace sum by its neighbours' distance
 * across, dx (y after - y before) - dy (x after - x before), halved; dx and dy are half a unit in the last place at most.
 */
function roundingOf(corners: readonly Corner[]): number {
  return corners.reduce((sum, [x, y], i) => {
    const [before, after] = [corners.at(i - 1), corners[(i + 1) % corners.length]]
    if (before === undefined || after === undefined) return NaN
    return sum + (HALF_ULP / 2) * (Math.abs(x * (after[1] - before[1])) + Math.abs(y * (after[0] - before[0])))
  }, 0)
}

function liesInPlane([x, y, height]: Corner, from: Corner, to: Corner): boolean {
  const lengthFt = Math.hypot(to[0] - from[0], to[1] - from[1])
  const [inX, inY] = [-(to[1] - from[1]) / lengthFt, (to[0] - from[0]) / lengthFt]
  const offFt = (x - from[0]) * inX + (y - from[1]) * inY - height
  const roundingFt = HALF_ULP * (Math.abs(x * inX) + Math.abs(y * inY) + Math.abs(height))
  return Math.abs(offFt) <= roundingFt * (1 + DOUBLES)
}

function twiceArea(line: readonly (readonly number[])[]): number {
  return line.reduce((sum, [x = 0, y = 0], i) => {
    const [nextX = 0, nextY = 0] = line[(i + 1) % line.length] ?? []
    return sum + x * nextY - nextX * y
  }, 0)
}

/** An assertion that fails inside the library leaves it unusable, so that it is made afresh. */
async function answerOf(rings: number[][][]): Promise<Skeleton | null> {
  try {
    return library?.buildFromPolygon(rings) ?? null
  } catch {
    await library?.init()
    return null
  }
}

function nameOf(a: readonly number[], b: readonly number[]): string {
  return [a, b]
    .map(([x = 0, y = 0]) => `${x},${y}`)
    .toSorted()
    .join(' ')
}
