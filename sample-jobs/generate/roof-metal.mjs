/** What is on the roof besides tiles: deck, battens, valley metal, pipes with mortar collars, vents, gutter and fascia. */
import {
  COS_PITCH,
  EAVE_HEIGHT_FT,
  FACETS,
  OUTLINE,
  SIN_PITCH,
  VALLEYS,
  facetOf,
  facetToWorld,
  planToFacet,
} from './house-plan.mjs'
import { HARMED_TILES, PIPES, tileOrigin } from './damage.mjs'
import { seedOf, stream } from './seed.mjs'

/** Underlayment over the deck, with battens near missing or moved tiles. @param {any} felt @param {any} wood */
export function layDeck(felt, wood) {
  for (const facet of FACETS) {
    for (const piece of facet.pieces) {
      const points = piece.points.map((p) => planToFacet(facet, p))
      felt.face(
        points.map(([u, s]) => facetToWorld(facet, u, s, 0.005)),
        points,
        [0, 0, 0, 0],
      )
    }
  }
  for (const tile of HARMED_TILES) {
    if (tile.harm !== 'missing' && tile.harm !== 'slipped') continue
    const facet = facetOf(tile.facet)
    for (const course of [tile.course - 1, tile.course]) {
      const [u, s] = tileOrigin(course, tile.column)
      slopeBox(wood, facet, { u: [u - 1.2, u + 2.2], s: [s + 1.27, s + 1.39], w: [0.006, 0.062] })
    }
  }
}

/** A box lying on a facet. @param {any} builder @param {any} facet @param {{ u: number[], s: number[], w: number[] }} range */
export function slopeBox(builder, facet, { u, s, w }) {
  const p = (/** @type {number} */ i, /** @type {number} */ j, /** @type {number} */ k) =>
    facetToWorld(facet, u[i], s[j], w[k])
  const own = [0, 0, 0, 0]
  const uv = [
    [u[0], 0],
    [u[1], 0],
    [u[1], 0.12],
    [u[0], 0.12],
  ]
  builder.face([p(0, 0, 1), p(1, 0, 1), p(1, 1, 1), p(0, 1, 1)], uv, own)
  builder.face([p(0, 0, 0), p(1, 0, 0), p(1, 0, 1), p(0, 0, 1)], uv, own)
  builder.face([p(1, 1, 0), p(0, 1, 0), p(0, 1, 1), p(1, 1, 1)], uv, own)
}

/** @param {any} metal */
export function layValleys(metal) {
  for (const valley of VALLEYS) {
    const dx = valley.to[0] - valley.from[0]
    const dy = valley.to[1] - valley.from[1]
    const length = Math.hypot(dx, dy)
    const side = [-dy / length, dx / length]
    const rise = (5 / 12) * (length / Math.SQRT2)
    const cross = [-0.8, -0.42, -0.05, 0, 0.05, 0.42, 0.8]
    metal.sheet({
      rows: 12,
      columns: cross.length - 1,
      at: (/** @type {number} */ i, /** @type {number} */ j) => {
        const t = -0.02 + (1.0 * i) / 12
        const s = -cross[j]
        const lift = Math.abs(s) * (5 / 12 / Math.SQRT2) + (cross[j] === 0 ? 0.075 : 0.03)
        return [
          valley.from[0] + dx * t + side[0] * s,
          EAVE_HEIGHT_FT + rise * t + lift,
          -(valley.from[1] + dy * t + side[1] * s),
        ]
      },
      rest: (/** @type {number} */ i, /** @type {number} */ j) => [cross[j] * 12, i * length, 0.2, 0, 0.5, 1],
    })
  }
}

/** @param {any} metal @param {any} mortar */
export function setPipes(metal, mortar) {
  for (const pipe of PIPES) {
    const facet = facetOf(pipe.facet)
    const [u, s] = planToFacet(facet, pipe.at)
    const base = facetToWorld(facet, u, s, 0)
    const r = pipe.radiusIn / 12
    metal.bar({ from: base, to: [base[0], base[1] + 1.15, base[2]], r0: r, r1: r, sides: 24, own: [0.5, 0, 0.3, 2] })
    metal.bar({
      from: [base[0], base[1] + 1.15, base[2]],
      to: [base[0], base[1] + 0.7, base[2]],
      r0: r,
      r1: r * 0.86,
      sides: 24,
      own: [0.5, 0, 1, 2],
    })
    collar(mortar, { facet, u, s, pipe })
  }
}

/** A hand-formed ring of mortar; a cracked one is broken into pieces that stand a little apart. @param {any} mortar @param {any} at */
function collar(mortar, { facet, u, s, pipe }) {
  const random = stream(seedOf(pipe.name))
  const bump = Array.from({ length: 64 }, () => random() - 0.5)
  const r0 = pipe.radiusIn
  const cracked = pipe.mortar === 'cracked'
  const cuts = cracked ? [0.2, 1.55, 2.9, 4.6, 2 * Math.PI + 0.2] : [0, 2 * Math.PI]
  for (let c = 0; c + 1 < cuts.length; c++) {
    const gap = cracked ? 0.035 : 0
    const from = cuts[c] + gap
    const to = cuts[c + 1] - gap
    const columns = Math.round((to - from) * 9)
    const outward = cracked ? 0.08 + (c % 2) * 0.28 : 0
    const mid = (from + to) / 2
    const rings = [
      [r0 + (cracked ? 0.28 : 0.02), 2.6],
      [r0 + 0.1, 4.4 + (cracked ? 0 : 0.2)],
      [r0 + 0.5, 4.5],
      [r0 + 1.3, 3.9],
      [r0 + 2.3, 3.0],
      [r0 + 3.2, 2.2],
      [r0 + 4.0, 1.2],
      [r0 + 4.2, 0.4],
    ]
    const at = (/** @type {number} */ i, /** @type {number} */ j) => {
      const rag = cracked && (j === 0 || j === columns) ? bump[(i * 7 + c * 5 + j) % 64] * 0.09 : 0
      const a = from + ((to - from) * j) / columns + rag
      const n = bump[(j + c * 13 + i * 3) % 64] * 0.35
      const r = rings[i][0] + (i > 1 ? n : 0)
      const x = r * Math.cos(a) + outward * Math.cos(mid)
      const y = r * Math.sin(a) + outward * Math.sin(mid)
      const lean = [1, 1, 0.95, 0.75, 0.5, 0.25, 0.1, 0][i] * rings[i][1] * (SIN_PITCH / COS_PITCH)
      return facetToWorld(
        facet,
        u + x / 12,
        s + (y + lean) / 12,
        (rings[i][1] + n * 0.5 - (cracked && c === 1 ? 0.25 : 0)) / 12,
      )
    }
    const n = rings.length - 1
    mortar.sheet({
      rows: n,
      columns,
      at: (i, j) => at(n - i, j),
      rest: (i, j) => [j * 1.1, i * 1.2, 0, 0, cracked ? 0.75 : 0.35, 0],
    })
    if (cracked)
      for (const j of [0, columns]) {
        const flip = j !== 0
        mortar.sheet({
          rows: n,
          columns: 1,
          at: (i, k) => {
            const p = at(i, j)
            return (k === 0) === flip ? p : [p[0], p[1] - 0.12, p[2]]
          },
          rest: (i, k) => [k, i, 0, 0, 0.2, 1],
        })
      }
  }
}

/** Low exhaust vents of painted metal near the back of the ridge. @param {any} metal */
export function setVents(metal) {
  const facet = facetOf('H')
  for (const at of /** @type {[number, number][]} */ ([
    [24.5, 21.8],
    [36.2, 21.5],
  ])) {
    const [u, s] = planToFacet(facet, at)
    const base = facetToWorld(facet, u, s, 0.1)
    const top = (/** @type {number} */ h) => [base[0], base[1] + h, base[2]]
    metal.bar({
      from: facetToWorld(facet, u, s, 0.02),
      to: top(0.5),
      r0: 0.46,
      r1: 0.42,
      sides: 28,
      own: [0.3, 0, 0.6, 3],
    })
    metal.bar({ from: top(0.4), to: top(0.48), r0: 0.82, r1: 0.8, sides: 32, own: [0.3, 0, 0.6, 3] })
    metal.bar({ from: top(0.48), to: top(0.68), r0: 0.8, r1: 0.22, sides: 32, own: [0.3, 0, 0.6, 3], cap: true })
    slopeBox(metal, facet, { u: [u - 0.75, u + 0.75], s: [s - 0.6, s + 1.0], w: [0.13, 0.24] })
  }
}

/** Fascia board, drip edge, gutter and soffit along the whole outline. @param {any} white @param {any} metal */
export function hangEaves(white, metal) {
  const e = EAVE_HEIGHT_FT
  OUTLINE.forEach((a, i) => {
    const b = OUTLINE[(i + 1) % OUTLINE.length]
    const length = Math.hypot(b[0] - a[0], b[1] - a[1])
    const t = [(b[0] - a[0]) / length, (b[1] - a[1]) / length]
    const n = [t[1], -t[0]]
    const turnAt = (/** @type {number} */ k) => {
      const p = OUTLINE[(i + k + OUTLINE.length) % OUTLINE.length]
      const q = OUTLINE[(i + k + 1 + OUTLINE.length) % OUTLINE.length]
      return t[0] * (q[1] - p[1]) - t[1] * (q[0] - p[0])
    }
    const startSign = turnAt(-1) < 0 ? 1 : -1
    const endSign = turnAt(1) > 0 ? 1 : -1
    const section = (/** @type {number[][]} */ profile, /** @type {any} */ builder, /** @type {number[]} */ own) =>
      builder.sheet({
        rows: profile.length - 1,
        columns: 1,
        at: (/** @type {number} */ r, /** @type {number} */ j) => {
          const [outward, h] = profile[profile.length - 1 - r]
          const along = j === 0 ? -startSign * outward : length + endSign * outward
          return [a[0] + t[0] * along + n[0] * outward, e + h, -(a[1] + t[1] * along + n[1] * outward)]
        },
        rest: (/** @type {number} */ r, /** @type {number} */ j) => [j * length, r, ...own],
      })
    const flat = (/** @type {number[][]} */ p, /** @type {any} */ b, /** @type {number[]} */ o) =>
      p.slice(1).forEach((q, k) => section([p[k], q], b, o))
    flat(
      [
        [-0.1, 0.06],
        [0.02, 0.02],
        [0.03, -0.1],
      ],
      metal,
      [0.8, 0, 0.1, 4],
    )
    flat(
      [
        [-0.02, -0.02],
        [-0.02, -0.62],
        [-0.14, -0.62],
        [-2.2, -0.62],
      ],
      white,
      [0, 0, 0.3, 0],
    )
    flat(
      [
        [0.03, -0.42],
        [0.2, -0.42],
        [0.3, -0.2],
        [0.36, -0.13],
        [0.36, -0.08],
        [0.33, -0.08],
        [0.33, -0.12],
        [0.2, -0.36],
        [0.04, -0.36],
      ],
      metal,
      [0.8, 0, 0.15, 4],
    )
  })
}

/** Downspouts at some corners, from the gutter to the ground. @param {any} metal */
export function hangDownspouts(metal) {
  for (const [x, y] of [
    [1.5, 1.2],
    [13.2, -4.2],
    [39.2, -12.2],
    [58.8, -12.2],
    [58.8, 32.8],
    [1.2, 32.2],
    [24.8, 40.8],
    [9.2, 40.8],
  ]) {
    metal.box([x - 0.13, 0.1, -(y + 0.1)], [x + 0.13, EAVE_HEIGHT_FT - 0.5, -(y - 0.1)], [0.8, 0, 0.1, 4])
  }
}
