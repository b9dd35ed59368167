import fc from 'fast-check'
import type { PlanPoint } from '../../app/job/places.ts'
import type { OutlineEdge, RoofOutline } from '../../app/roof/skeleton/roof-outline.ts'

/** Corners as text: "0,0 40,0 40,15". */
export function corners(text: string): PlanPoint[] {
  return text.split(' ').map((corner) => {
    const [xFt = NaN, yFt = NaN] = corner.split(',').map(Number)
    return { xFt, yFt }
  })
}

/** An outline without courtyards, its edges by pitch in order: one pitch for all, or 0 for a gable. */
export function outlineOf(text: string, pitches: number | readonly number[]): RoofOutline {
  return { outer: ringOf(corners(text), pitches), courtyards: [] }
}

/** A ring whose edges have these pitches; 0 is a gable. */
export function ringOf(line: readonly PlanPoint[], pitches: number | readonly number[]): RoofOutline['outer'] {
  const edgeAt = (index: number): OutlineEdge => {
    const pitchRise = typeof pitches === 'number' ? pitches : (pitches[index] ?? NaN)
    return pitchRise === 0 ? { kind: 'gable' } : { kind: 'eave', pitchRise }
  }
  return { corners: line, edges: line.map((_, index) => edgeAt(index)) }
}

/** Rings turned about the origin and moved. */
export function turned(line: readonly PlanPoint[], deg: number, moveFt = 0): PlanPoint[] {
  const [cos, sin] = [Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)]
  return line.map(({ xFt, yFt }) => ({ xFt: xFt * cos - yFt * sin + moveFt, yFt: xFt * sin + yFt * cos - moveFt }))
}

/**
 * Rings of a house made of blocks on a grid, the outside first: many walls in line and many equal widths, so that much
 * happens at one height. Blocks may leave courtyards; houses that touch themselves at a corner are left out.
 */
export function blockHouses({ unitCells }: { readonly unitCells: boolean }): fc.Arbitrary<PlanPoint[][]> {
  const block = fc.record({
    x: fc.nat(9),
    y: fc.nat(9),
    wide: fc.integer({ min: 1, max: 5 }),
    deep: fc.integer({ min: 1, max: 5 }),
  })
  const cut = fc.record({
    x: fc.integer({ min: 1, max: 8 }),
    y: fc.integer({ min: 1, max: 8 }),
    wide: fc.integer({ min: 1, max: 2 }),
    deep: fc.integer({ min: 1, max: 2 }),
  })
  const sizes = fc.array(unitCells ? fc.constant(1) : fc.integer({ min: 1, max: 9 }), { minLength: 16, maxLength: 16 })
  return fc
    .record({
      blocks: fc.array(block, { minLength: 1, maxLength: 9 }),
      cuts: fc.array(cut, { maxLength: 4 }),
      across: sizes,
      up: sizes,
    })
    .map(({ blocks, cuts, across, up }) => {
      const cells = new Set<string>()
      for (const { x, y, wide, deep } of blocks) forCells({ x, y, wide, deep }, (cell) => cells.add(cell))
      for (const { x, y, wide, deep } of cuts) forCells({ x, y, wide, deep }, (cell) => cells.delete(cell))
      const lines = ringsAround(largestPart(cells))
      const place = (sizesFt: readonly number[], at: number) => sizesFt.slice(0, at).reduce((sum, ft) => sum + ft, 0)
      return lines.map((line) => line.map(([x, y]) => ({ xFt: place(across, x), yFt: place(up, y) })))
    })
    .filter((rings) => rings.length > 0)
}

type Cell = readonly [number, number]

function forCells(
  { x, y, wide, deep }: { readonly x: number; readonly y: number; readonly wide: number; readonly deep: number },
  visit: (cell: string) => void,
): void {
  for (let i = x; i < x + wide; i++) for (let j = y; j < y + deep; j++) visit(`${i},${j}`)
}

function largestPart(cells: ReadonlySet<string>): ReadonlySet<string> {
  const left = new Set(cells)
  let largest = new Set<string>()
  for (const first of cells) {
    if (!left.delete(first)) continue
    const part = new Set([first])
    for (const cell of part) {
      const [x = 0, y = 0] = cell.split(',').map(Number)
      for (const next of [`${x + 1},${y}`, `${x - 1},${y}`, `${x},${y + 1}`, `${x},${y - 1}`]) {
        if (left.delete(next)) part.add(next)
      }
    }
    if (part.size > largest.size) largest = part
  }
  return largest
}

/** Corners of the lines around cells, the cells on the left; none when the cells touch at a corner only. */
function ringsAround(cells: ReadonlySet<string>): readonly (readonly Cell[])[] {
  const next = new Map<string, Cell>()
  let touches = false
  const wall = ([x1, y1]: Cell, to: Cell) => {
    if (next.has(`${x1},${y1}`)) touches = true
    next.set(`${x1},${y1}`, to)
  }
  for (const cell of cells) {
    const [x = 0, y = 0] = cell.split(',').map(Number)
    if (!cells.has(`${x},${y - 1}`)) wall([x, y], [x + 1, y])
    if (!cells.has(`${x + 1},${y}`)) wall([x + 1, y], [x + 1, y + 1])
    if (!cells.has(`${x},${y + 1}`)) wall([x + 1, y + 1], [x, y + 1])
    if (!cells.has(`${x - 1},${y}`)) wall([x, y + 1], [x, y])
  }
  if (touches) return []
  const rings: Cell[][] = []
  for (const [start] of next) {
    const ring: Cell[] = []
    for (let at = next.get(start); at !== undefined; at = next.get(`${at[0]},${at[1]}`)) {
      next.delete(ring.length === 0 ? start : `${ring.at(-1)?.[0]},${ring.at(-1)?.[1]}`)
      ring.push(at)
    }
    if (ring.length > 0) rings.push(withoutStraightCorners(ring))
  }
  return rings.toSorted((a, b) => extentOf(b) - extentOf(a))
}

function withoutStraightCorners(ring: readonly Cell[]): Cell[] {
  return ring.filter(([x, y], index) => {
    const [before, after] = [ring.at(index - 1), ring[(index + 1) % ring.length]]
    return (
      before !== undefined &&
      after !== undefined &&
      (before[0] === x) !== (x === after[0]) &&
      (before[1] === y) !== (y === after[1])
    )
  })
}

function extentOf(ring: readonly Cell[]): number {
  const xs = ring.map(([x]) => x)
  return Math.max(...xs) - Math.min(...xs)
}

/** An outline around a middle point, with spikes and bays of any depth. */
export const starHouses: fc.Arbitrary<PlanPoint[]> = fc
  .array(
    fc.record({
      turn: fc.double({ min: 0.05, max: 1, noNaN: true }),
      reach: fc.double({ min: 8, max: 50, noNaN: true }),
    }),
    {
      minLength: 4,
      maxLength: 40,
    },
  )
  .map((rays) => {
    const whole = rays.reduce((sum, { turn }) => sum + turn, 0)
    let angle = 0
    return rays.map(({ turn, reach }) => {
      angle += (turn / whole) * 2 * Math.PI
      return { xFt: 60 + reach * Math.cos(angle), yFt: 60 + reach * Math.sin(angle) }
    })
  })

/** A coordinate from 0 to 100 ft that single precision holds as it is. Doubles at random would mostly be next to zero. */
export const evenlySpread: fc.Arbitrary<number> = fc.integer({ min: 0, max: 100 * 2 ** 14 }).map((n) => n / 2 ** 14)

/** Any simple outline through a set of points: a tour with its crossings taken out, two sides at a time. */
export function tangledHouses(coordinate: fc.Arbitrary<number>): fc.Arbitrary<PlanPoint[]> {
  return fc
    .uniqueArray(fc.record({ xFt: coordinate, yFt: coordinate }), {
      minLength: 4,
      maxLength: 30,
      selector: ({ xFt, yFt }) => `${Math.round(xFt * 4)},${Math.round(yFt * 4)}`,
    })
    .map(untangled)
}

function untangled(points: readonly PlanPoint[]): PlanPoint[] {
  const tour = [...points]
  const length = (a: PlanPoint | undefined, b: PlanPoint | undefined) =>
    a === undefined || b === undefined ? 0 : Math.hypot(a.xFt - b.xFt, a.yFt - b.yFt)
  for (let again = true; again;) {
    again = false
    for (let i = 0; i < tour.length - 2; i++) {
      for (let j = i + 2; j < tour.length; j++) {
        const [a, b, c, d] = [tour[i], tour[i + 1], tour[j], tour[(j + 1) % tour.length]]
        if (length(a, c) + length(b, d) > length(a, b) + length(c, d) - 1e-9) continue
        tour.splice(i + 1, j - i, ...tour.slice(i + 1, j + 1).toReversed())
        again = true
      }
    }
  }
  return tour
}
