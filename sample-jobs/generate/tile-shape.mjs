/**
 * One low-profile wavy concrete tile, as a slab in tile inches: u across (0 to 12 covered), v up the slope from the
 * nose (0 to 16.5), w out of the deck. Damaged tiles are made of several slabs.
 */

export const EXPOSURE_IN = 13.5
export const COVER_IN = 12
export const LENGTH_IN = 16.5
export const HEADLAP_IN = LENGTH_IN - EXPOSURE_IN
export const THICKNESS_IN = 0.8
/** How far each nose stands above the tile under it. */
const STEP_IN = 1.12
const BASE_IN = 1.55
const JOINT_IN = 0.09

/** Height of the wave across the tile, inches. @param {number} u */
export function waveIn(u) {
  return 1.05 * (0.5 - 0.5 * Math.cos((2 * Math.PI * (u + 1.5)) / 6)) ** 1.25
}

/** Top of an undisturbed tile over the deck, inches; the nose is rounded. @param {number} u @param {number} v */
export function topIn(u, v) {
  const round = v < 0.4 ? 0.22 * (1 - v / 0.4) ** 2 : 0
  return BASE_IN + STEP_IN * (1 - v / EXPOSURE_IN) + waveIn(u) - round
}

/**
 * @typedef {{
 *   left: (v: number) => number, right: (v: number) => number, rows: number[], columns: number,
 *   move: (u: number, v: number, w: number) => number[],
 *   fractureLeft?: boolean, fractureRight?: boolean,
 * }} Slab `move` takes tile inches to tile inches (slip, lift, tilt)
 */

/** The whole tile as one slab. @param {number[]} rows @param {number} columns @returns {Slab} */
export function wholeTile(rows, columns) {
  return { left: () => JOINT_IN, right: () => COVER_IN - JOINT_IN, rows, columns, move: (u, v, w) => [u, v, w] }
}

export const PLAIN_ROWS = [0, 0.14, 0.4, 7, 14]
export const FINE_ROWS = [0, 0.1, 0.25, 0.4, 1.5, 3, 4.5, 6, 7.5, 9, 10.5, 12, 13.5, 15, LENGTH_IN]

/**
 * The slab's triangles in tile inches: `emit` gets three vertices {p, kind} at a time, with uv as laid before moving.
 * @param {Slab} slab
 * @param {{ grid: (rows: TileVertex[][], flip: boolean) => void }} sink
 */
export function slabSurfaces(slab, sink) {
  const { rows, columns, left, right, move } = slab
  const point = (
    /** @type {number} */ u,
    /** @type {number} */ v,
    /** @type {number} */ down,
    /** @type {number} */ kind,
  ) => ({
    p: move(u, v, topIn(u, v) - down),
    u: u + down * 0.3,
    v: v - down,
    kind,
  })
  const across = (/** @type {number} */ v, /** @type {number} */ j) => left(v) + ((right(v) - left(v)) * j) / columns
  const cols = Array.from({ length: columns + 1 }, (_, j) => j)
  sink.grid(
    rows.map((v) => cols.map((j) => point(across(v, j), v, 0, 0))),
    false,
  )
  const first = rows[0]
  sink.grid(
    [THICKNESS_IN, 0].map((down) => cols.map((j) => point(across(first, j), first, down, 0.25))),
    false,
  )
  const side = (
    /** @type {(v: number) => number} */ edge,
    /** @type {boolean} */ fracture,
    /** @type {boolean} */ flip,
  ) =>
    sink.grid(
      [THICKNESS_IN, 0].map((down) => rows.map((v) => point(edge(v), v, down, fracture ? 1 : 0.25))),
      flip,
    )
  side(right, slab.fractureRight === true, false)
  side(left, slab.fractureLeft === true, true)
  const last = rows[rows.length - 1]
  if (last >= LENGTH_IN || slab.fractureLeft || slab.fractureRight) {
    sink.grid(
      [THICKNESS_IN, 0].map((down) =>
        cols.map((j) => point(across(last, j), last, down, last >= LENGTH_IN ? 0.25 : 1)),
      ),
      true,
    )
  }
}
/** @typedef {{ p: number[], u: number, v: number, kind: number }} TileVertex */
