/** Turns a whole tile into the slabs of a slipped, lifted, cracked or broken one. */
import { stream } from './seed.mjs'
import { COVER_IN, FINE_ROWS, LENGTH_IN } from './tile-shape.mjs'

const JOINT = 0.09
const rad = Math.PI / 180

/**
 * @param {import('./damage.mjs').HarmedTile | undefined} harm
 * @param {import('./tile-shape.mjs').Slab} whole
 * @returns {import('./tile-shape.mjs').Slab[]}
 */
export function brokenSlabs(harm, whole) {
  if (harm === undefined) return [whole]
  const makers = { slipped, lifts, crack, diagonal, corner, lock, replaced: () => [whole], missing: () => [] }
  return makers[harm.harm](whole, harm)
}

/** @param {any} whole @param {any} harm */
function slipped(whole, harm) {
  const turn = harm.turn * rad
  return [
    {
      ...whole,
      move: (/** @type {number} */ u, /** @type {number} */ v, /** @type {number} */ w) => [
        u - (v - 8) * turn,
        v - harm.amount + (u - 6) * turn,
        w + 0.06 + harm.amount * 0.082,
      ],
    },
  ]
}

/** @param {any} whole @param {any} harm */
function lifts(whole, harm) {
  return [
    {
      ...whole,
      move: (/** @type {number} */ u, /** @type {number} */ v, /** @type {number} */ w) => [
        u,
        v + harm.amount * 0.04,
        w + harm.amount * (1 - v / LENGTH_IN),
      ],
    },
  ]
}

/** A wandering line from one height to another, seeded. @param {number} seed @param {number} rough */
function wander(seed, rough) {
  const random = stream(seed)
  const steps = Array.from({ length: 40 }, () => (random() - 0.5) * 2)
  return (/** @type {number} */ v) => {
    const x = Math.max(0, Math.min(38.9, v * 2))
    const i = Math.floor(x)
    return rough * (steps[i] + (steps[i + 1] - steps[i]) * (x - i))
  }
}

const DENSE_ROWS = Array.from({ length: 46 }, (_, i) =>
  i < 4 ? [0, 0.1, 0.25, 0.4][i] : 0.4 + ((i - 3) / 42) * (LENGTH_IN - 0.4),
)

/** Two slabs either side of a line u = path(v), the second one moved. @param {any} whole @param {(v: number) => number} path @param {(u: number, v: number, w: number) => number[]} moved */
function split(whole, path, moved) {
  const inside = (/** @type {number} */ v) => Math.max(JOINT, Math.min(COVER_IN - JOINT, path(v)))
  return [
    {
      ...whole,
      rows: DENSE_ROWS,
      columns: 18,
      right: (/** @type {number} */ v) => Math.max(JOINT, inside(v) - 0.02),
      fractureRight: true,
    },
    {
      ...whole,
      rows: DENSE_ROWS,
      columns: 18,
      left: (/** @type {number} */ v) => Math.min(COVER_IN - JOINT, inside(v) + 0.02),
      fractureLeft: true,
      move: moved,
    },
  ]
}

/** From the nose up to the fastener hole near the head. @param {any} whole @param {any} harm */
function crack(whole, harm) {
  const jag = wander(71 + harm.column, 0.22)
  const path = (/** @type {number} */ v) => 6.1 + (2.9 * v) / 15.4 + jag(v)
  return split(whole, path, (u, v, w) => [
    u + 0.045 * harm.amount,
    v - 0.14 * harm.amount + (u - 9) * 0.004,
    w - 0.12 * harm.amount,
  ])
}

/** Across the middle from side to side. @param {any} whole */
function diagonal(whole) {
  const jag = wander(97, 0.3)
  const path = (/** @type {number} */ v) => 0.6 + 11.4 * ((v - 2.2) / 8.6) + jag(v)
  return split(whole, path, (u, v, w) => [u + 0.05, v - 0.15, w - 0.11 + (9 - v) * 0.008])
}

/** The lower right corner gone, the piece lying below on the next tile. @param {any} whole @param {any} harm */
function corner(whole, harm) {
  const jag = wander(13 + harm.column * 7, 0.16)
  const size = 4.2 * harm.amount
  const edge = (/** @type {number} */ v) =>
    Math.min(COVER_IN - JOINT, COVER_IN - size + v * 0.95 + jag(v) * (v < size ? 1 : 0))
  const main = { ...whole, rows: DENSE_ROWS, columns: 22, right: edge, fractureRight: true }
  if (harm.column % 2 === 0) return [main]
  const turn = 24 * rad
  const piece = {
    ...whole,
    rows: FINE_ROWS.filter((v) => v < size),
    columns: 8,
    left: (/** @type {number} */ v) => edge(v) + 0.05,
    fractureLeft: true,
    move: (/** @type {number} */ u, /** @type {number} */ v, /** @type {number} */ w) => {
      const [du, dv] = [u - 10, v - 2]
      return [
        9.2 + du * Math.cos(turn) - dv * Math.sin(turn),
        -4.4 + du * Math.sin(turn) + dv * Math.cos(turn),
        w - 0.35 + (v - 2) * 0.03,
      ]
    },
  }
  return [main, piece]
}

/** A strip of the side lock snapped off from the nose up. @param {any} whole */
function lock(whole) {
  const jag = wander(31, 0.14)
  const edge = (/** @type {number} */ v) =>
    v < 7.2 ? COVER_IN - 0.95 + jag(v) + Math.max(0, v - 6.4) * 1.2 : COVER_IN - JOINT
  const main = { ...whole, rows: DENSE_ROWS, columns: 22, right: edge, fractureRight: true }
  const strip = {
    ...whole,
    rows: DENSE_ROWS.filter((v) => v > 1.6 && v < 6.6),
    columns: 4,
    left: (/** @type {number} */ v) => edge(v) + 0.12,
    fractureLeft: true,
    move: (/** @type {number} */ u, /** @type {number} */ v, /** @type {number} */ w) => [
      u + 0.2 + (v - 3) * 0.07,
      v - 1.3,
      w - 0.38,
    ],
  }
  const ledge = {
    ...whole,
    rows: [0.6, 3, 6, 9, 12],
    columns: 3,
    left: (/** @type {number} */ v) => edge(v) - 0.3,
    right: () => COVER_IN + 0.1,
    move: (/** @type {number} */ u, /** @type {number} */ v, /** @type {number} */ w) => [u, v, w - 0.72],
  }
  return [main, strip, ledge]
}
