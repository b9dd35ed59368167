/** Walls with windows, doors and the garage door, set in from the drip edge by the overhang. */
import { EAVE_HEIGHT_FT, OUTLINE, OVERHANG_FT } from './house-plan.mjs'

const SOFFIT_FT = EAVE_HEIGHT_FT - 0.6

/** @typedef {{ x0: number, x1: number, low: number, high: number, sort: 'window' | 'door' | 'garage' | 'glass-door' }} Opening distances along the wall from its start */

/** Openings by wall, walls numbered along the outline. @type {Record<number, Opening[]>} */
const OPENINGS = {
  0: [{ x0: 3.2, x1: 8.8, low: 2.6, high: 7.2, sort: 'window' }],
  2: [
    { x0: 3.4, x1: 7.6, low: 0.25, high: 7.6, sort: 'door' },
    { x0: 0.9, x1: 2.4, low: 2.6, high: 7.2, sort: 'window' },
    { x0: 8.6, x1: 10.1, low: 2.6, high: 7.2, sort: 'window' },
  ],
  4: [
    { x0: 3.0, x1: 6.6, low: 2.6, high: 7.2, sort: 'window' },
    { x0: 8.4, x1: 12, low: 2.6, high: 7.2, sort: 'window' },
  ],
  6: [{ x0: 1.6, x1: 17.4, low: 0.05, high: 7.3, sort: 'garage' }],
  7: [
    { x0: 5, x1: 8, low: 0.25, high: 7.1, sort: 'door' },
    { x0: 18, x1: 21, low: 3.6, high: 7.2, sort: 'window' },
    { x0: 27, x1: 32, low: 2.6, high: 7.2, sort: 'window' },
    { x0: 37, x1: 41, low: 2.6, high: 7.2, sort: 'window' },
  ],
  8: [
    { x0: 4, x1: 9, low: 2.6, high: 7.2, sort: 'window' },
    { x0: 15, x1: 27, low: 0.3, high: 7.3, sort: 'glass-door' },
  ],
  10: [{ x0: 4.5, x1: 10.5, low: 2.6, high: 7.2, sort: 'window' }],
  13: [
    { x0: 4, x1: 8, low: 2.6, high: 7.2, sort: 'window' },
    { x0: 13, x1: 16, low: 4, high: 7.2, sort: 'window' },
    { x0: 22, x1: 27, low: 2.6, high: 7.2, sort: 'window' },
  ],
}

/** @param {{ stucco: any, white: any, glass: any }} builders */
export function raiseWalls(builders) {
  const corners = OUTLINE.map((_, i) => insetCorner(i))
  corners.forEach((a, i) => {
    const b = corners[(i + 1) % corners.length]
    raiseWall(builders, { a, b, openings: OPENINGS[i] ?? [] })
  })
}

/** @param {number} i @returns {[number, number]} */
function insetCorner(i) {
  const n = OUTLINE.length
  const [p, q, r] = [OUTLINE[(i + n - 1) % n], OUTLINE[i], OUTLINE[(i + 1) % n]]
  const inward = (/** @type {number[]} */ a, /** @type {number[]} */ b) => {
    const length = Math.hypot(b[0] - a[0], b[1] - a[1])
    return [-(b[1] - a[1]) / length, (b[0] - a[0]) / length]
  }
  const [m, k] = [inward(p, q), inward(q, r)]
  return [q[0] + OVERHANG_FT * (m[0] + k[0]), q[1] + OVERHANG_FT * (m[1] + k[1])]
}

/** @param {any} builders @param {{ a: number[], b: number[], openings: Opening[] }} wall */
function raiseWall({ stucco, white, glass }, { a, b, openings }) {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1])
  const t = [(b[0] - a[0]) / length, (b[1] - a[1]) / length]
  const out = [t[1], -t[0]]
  const at = (/** @type {number} */ x, /** @type {number} */ h, /** @type {number} */ d) => [
    a[0] + t[0] * x + out[0] * d,
    h,
    -(a[1] + t[1] * x + out[1] * d),
  ]
  const panel = (
    /** @type {any} */ builder,
    /** @type {number[]} */ [x0, x1, h0, h1],
    /** @type {number} */ d,
    /** @type {number[]} */ own,
  ) =>
    builder.face(
      [at(x0, h0, d), at(x1, h0, d), at(x1, h1, d), at(x0, h1, d)],
      [
        [x0, h0],
        [x1, h0],
        [x1, h1],
        [x0, h1],
      ],
      own,
    )
  const slab = (
    /** @type {any} */ builder,
    /** @type {number[]} */ [x0, x1, h0, h1],
    /** @type {number[]} */ [d0, d1],
    /** @type {number[]} */ own,
  ) => {
    panel(builder, [x0, x1, h0, h1], d1, own)
    const side = (/** @type {number[][]} */ c) =>
      builder.face(
        c,
        [
          [x0, h0],
          [x1, h0],
          [x1, h1],
          [x0, h1],
        ],
        own,
      )
    side([at(x0, h0, d0), at(x0, h0, d1), at(x0, h1, d1), at(x0, h1, d0)])
    side([at(x1, h0, d1), at(x1, h0, d0), at(x1, h1, d0), at(x1, h1, d1)])
    side([at(x0, h1, d1), at(x1, h1, d1), at(x1, h1, d0), at(x0, h1, d0)])
    side([at(x0, h0, d0), at(x1, h0, d0), at(x1, h0, d1), at(x0, h0, d1)])
  }
  const plain = [0, 0, 0, 0]
  let x = 0
  for (const o of [...openings].sort((p, q) => p.x0 - q.x0)) {
    panel(stucco, [x, o.x0, 0, SOFFIT_FT], 0, plain)
    panel(stucco, [o.x0, o.x1, 0, o.low], 0, plain)
    panel(stucco, [o.x0, o.x1, o.high, SOFFIT_FT], 0, plain)
    const depth = o.sort === 'garage' ? -0.55 : o.sort === 'door' ? -1.1 : -0.35
    reveal(stucco, at, o, depth)
    fill({ panel, slab, white, glass }, o, depth)
    if (o.sort === 'window') slab(stucco, [o.x0 - 0.3, o.x1 + 0.3, o.low - 0.32, o.low - 0.04], [0, 0.2], [0, 0, 0, 1])
    for (const r of [
      [o.x0 - 0.4, o.x0, o.low, o.high + 0.4],
      [o.x1, o.x1 + 0.4, o.low, o.high + 0.4],
      [o.x0, o.x1, o.high, o.high + 0.4],
    ]) {
      slab(stucco, r, [0, 0.1], [0, 0, 0, 1])
    }
    x = o.x1
  }
  panel(stucco, [x, length, 0, SOFFIT_FT], 0, plain)
}

/** @param {any} stucco @param {any} at @param {Opening} o @param {number} d */
function reveal(stucco, at, o, d) {
  const own = [0, 0, 0, 1]
  const uv = [
    [0, 4],
    [0.3, 4],
    [0.3, 7],
    [0, 7],
  ]
  stucco.face([at(o.x0, o.low, d), at(o.x0, o.low, 0), at(o.x0, o.high, 0), at(o.x0, o.high, d)], uv, own)
  stucco.face([at(o.x1, o.low, 0), at(o.x1, o.low, d), at(o.x1, o.high, d), at(o.x1, o.high, 0)], uv, own)
  stucco.face([at(o.x0, o.high, 0), at(o.x1, o.high, 0), at(o.x1, o.high, d), at(o.x0, o.high, d)], uv, own)
  stucco.face([at(o.x0, o.low, d), at(o.x1, o.low, d), at(o.x1, o.low, 0), at(o.x0, o.low, 0)], uv, own)
}

/** Glass, frames and leaves inside an opening. @param {any} draw @param {Opening} o @param {number} d */
function fill({ panel, slab, white, glass }, o, d) {
  const { x0, x1, low, high } = o
  if (o.sort === 'garage') {
    const rows = 4
    const columns = 8
    panel(white, [x0, x1, low, high], d, [0, 0, 0, 0])
    for (let r = 0; r < rows; r++) {
      for (let c = 0; c < columns; c++) {
        const [w, h] = [(x1 - x0) / columns, (high - low) / rows]
        const box = [x0 + c * w + 0.16, x0 + (c + 1) * w - 0.16, low + r * h + 0.2, low + (r + 1) * h - 0.2]
        slab(white, box, [d, d + 0.06], [0, 0, 0, 0])
      }
      slab(
        white,
        [x0, x1, low + (r * (high - low)) / rows - 0.02, low + (r * (high - low)) / rows + 0.03],
        [d - 0.05, d + 0.005],
        [0, 0, 0, 2],
      )
    }
    return
  }
  if (o.sort === 'door') {
    panel(white, [x0, x1, low, high], d, [0, 0, 0, 3])
    const middle = (x0 + x1) / 2
    const leaves =
      x1 - x0 > 3.5
        ? [
            [x0, middle],
            [middle, x1],
          ]
        : [[x0, x1]]
    for (const [l, r] of leaves) {
      for (const [h0, h1] of [
        [low + 0.5, low + 2.2],
        [low + 2.6, low + 4.6],
      ])
        slab(white, [l + 0.4, r - 0.4, h0, h1], [d, d + 0.06], [0, 0, 0, 3])
      panel(glass, [l + 0.45, r - 0.45, low + 5, high - 0.5], d + 0.02, [99, 0, 0, 0])
      slab(white, [l - 0.03, l + 0.05, low, high], [d, d + 0.08], [0, 0, 0, 3])
    }
    slab(white, [middle + 0.12, middle + 0.2, low + 2.9, low + 3.4], [d, d + 0.2], [0, 0, 0, 0])
    return
  }
  panel(glass, [x0, x1, low, high], d, [o.sort === 'window' ? low + (high - low) * 0.62 : 99, 0, 0, 0])
  const bars = o.sort === 'glass-door' ? 3 : Math.max(1, Math.round((x1 - x0) / 2.6))
  for (let k = 0; k <= bars; k++) {
    const x = x0 + ((x1 - x0) * k) / bars
    slab(white, [Math.max(x0, x - 0.1), Math.min(x1, x + 0.1), low, high], [d, d + 0.09], [0, 0, 0, 0])
  }
  const rails = o.sort === 'glass-door' ? [low, high - 0.16] : [low, (low + high) / 2 - 0.06, high - 0.14]
  for (const h of rails) slab(white, [x0, x1, h, h + 0.15], [d, d + 0.1], [0, 0, 0, 0])
}
