/** Things that the inspector puts into a picture: a scale, a force gauge, a phone with its clock; and the chalk left by others. */
import { facetOf, facetToWorld, planToFacet } from './house-plan.mjs'
import { CHALK_MARKS, tileOrigin } from './damage.mjs'
import { EXPOSURE_IN, topIn } from './tile-shape.mjs'
import { PRINTS } from './printed-sheet.mjs'

/**
 * @typedef {{ sort: 'scale', facet: string, at: [number, number], turnDeg: number, overIn?: number, upright?: boolean }} ScaleProp
 * @typedef {{ sort: 'gauge', facet: string, at: [number, number], liftIn: number }} GaugeProp
 * @typedef {{ sort: 'phone', at: [number, number] }} PhoneProp
 * @typedef {ScaleProp | GaugeProp | PhoneProp} Prop
 */

const DARK = [0, 0, 0, 2]
const STEEL = [0, 0, 0, 3]

/** @param {any} print @param {Prop} prop */
export function placeProp(print, prop) {
  if (prop.sort === 'scale') placeScale(print, prop)
  else if (prop.sort === 'gauge') placeGauge(print, prop)
  else placePhone(print, prop)
}

/** A printed face and a thin dark box under it. @param {any} print @param {(x: number, y: number, z: number) => number[]} at @param {{ w: number, h: number, d: number, sheet: number[], own: number[] }} card */
function card(print, at, { w, h, d, sheet, own }) {
  const [u0, v0, u1, v1] = sheet
  print.face(
    [at(0, 0, d), at(w, 0, d), at(w, h, d), at(0, h, d)],
    [
      [u0, v0],
      [u1, v0],
      [u1, v1],
      [u0, v1],
    ],
    own,
  )
  const uv = [
    [0, 0],
    [0, 0],
    [0, 0],
    [0, 0],
  ]
  print.face([at(0, 0, 0), at(w, 0, 0), at(w, 0, d), at(0, 0, d)], uv, DARK)
  print.face([at(w, 0, 0), at(w, h, 0), at(w, h, d), at(w, 0, d)], uv, DARK)
  print.face([at(w, h, 0), at(0, h, 0), at(0, h, d), at(w, h, d)], uv, DARK)
  print.face([at(0, h, 0), at(0, 0, 0), at(0, 0, d), at(0, h, d)], uv, DARK)
}

/** @param {any} print @param {ScaleProp} prop */
function placeScale(print, { facet: letter, at, turnDeg, overIn = 3.0, upright = false }) {
  const facet = facetOf(letter)
  const [u, s] = planToFacet(facet, at)
  const a = (turnDeg * Math.PI) / 180
  const onFacet = (/** @type {number} */ x, /** @type {number} */ y, /** @type {number} */ z) =>
    facetToWorld(
      facet,
      u + (x * Math.cos(a) - y * Math.sin(a)) / 12,
      s + (x * Math.sin(a) + y * Math.cos(a)) / 12,
      (overIn + z) / 12,
    )
  const standing = (/** @type {number} */ x, /** @type {number} */ y, /** @type {number} */ z) =>
    facetToWorld(facet, u - y / 12, s - z / 12, (x + overIn) / 12)
  card(print, upright ? standing : onFacet, { w: 12.6, h: 1.15, d: 0.07, sheet: PRINTS.scale, own: [0, 0, 0, 0] })
}

/** A dial gauge with its hook under the lifted nose. @param {any} print @param {GaugeProp} prop */
function placeGauge(print, { facet: letter, at, liftIn }) {
  const facet = facetOf(letter)
  const [u, s] = planToFacet(facet, at)
  const tilt = 0.3
  const point = (/** @type {number} */ x, /** @type {number} */ y, /** @type {number} */ z) =>
    facetToWorld(
      facet,
      u + x / 12,
      s + (-1.2 - z * Math.cos(tilt) + y * Math.sin(tilt)) / 12,
      (liftIn + 4.6 + y * Math.cos(tilt) + z * Math.sin(tilt)) / 12,
    )
  const sides = 40
  const ring = (/** @type {number} */ r, /** @type {number} */ z) =>
    Array.from({ length: sides }, (_, k) =>
      point(r * Math.cos((k / sides) * 6.28318), 3 + r * Math.sin((k / sides) * 6.28318), z),
    )
  const [u0, v0, u1, v1] = PRINTS.dial
  const dial = ring(1.85, 0.62)
  print.face(
    dial,
    dial.map((_, k) => {
      const b = (k / sides) * 6.28318
      return [
        (u0 + u1) / 2 + ((u1 - u0) / 2) * 0.93 * Math.cos(b),
        (v0 + v1) / 2 + ((v1 - v0) / 2) * 0.93 * Math.sin(b),
      ]
    }),
    [0, 0, 0, 0],
  )
  const tube = (/** @type {number[]} */ [ra, za], /** @type {number[]} */ [rb, zb], /** @type {number[]} */ own) => {
    const [p, q] = [ring(ra, za), ring(rb, zb)]
    print.sheet({
      rows: 1,
      columns: sides,
      at: (/** @type {number} */ i, /** @type {number} */ j) => (i === 0 ? p : q)[j % sides],
      rest: () => [0, 0, ...own],
    })
  }
  tube([2.15, -0.6], [2.15, 0.75], DARK)
  tube([2.15, 0.75], [1.85, 0.75], STEEL)
  tube([1.85, 0.75], [1.85, 0.6], STEEL)
  const rod = (/** @type {number[]} */ from, /** @type {number[]} */ to, /** @type {number} */ r) =>
    print.bar({
      from: point(from[0], from[1], from[2]),
      to: point(to[0], to[1], to[2]),
      r0: r / 12,
      r1: r / 12,
      sides: 12,
      own: STEEL,
    })
  rod([0, 1, 0], [0, -2.6, 0], 0.14)
  const hook = facetToWorld(facet, u, s + 0.12, (liftIn + 1.62) / 12)
  print.bar({ from: point(0, -2.6, 0), to: hook, r0: 0.012, r1: 0.012, sides: 12, own: STEEL })
  print.bar({
    from: facetToWorld(facet, u - 0.09, s + 0.12, (liftIn + 1.62) / 12),
    to: facetToWorld(facet, u + 0.09, s + 0.12, (liftIn + 1.62) / 12),
    r0: 0.014,
    r1: 0.014,
    sides: 12,
    own: STEEL,
  })
  rod([-0.9, 5.2, 0], [-0.9, 7.4, 0], 0.12)
  rod([0.9, 5.2, 0], [0.9, 7.4, 0], 0.12)
  print.bar({
    from: point(-2.2, 7.5, 0),
    to: point(2.2, 7.5, 0),
    r0: 0.5 / 12,
    r1: 0.5 / 12,
    sides: 16,
    own: DARK,
    cap: true,
  })
}

/** Lying on the drive, face up. @param {any} print @param {PhoneProp} prop */
function placePhone(print, { at: [x, y] }) {
  const a = 0.12
  const at = (/** @type {number} */ i, /** @type {number} */ j, /** @type {number} */ k) => [
    x + (i * Math.cos(a) - j * Math.sin(a)) / 12,
    0.06 + k / 12,
    -(y + (i * Math.sin(a) + j * Math.cos(a)) / 12),
  ]
  card(print, at, { w: 3.1, h: 6.5, d: 0.36, sheet: [0, 0, 0, 0], own: DARK })
  const inner = (/** @type {number} */ i, /** @type {number} */ j, /** @type {number} */ k) => at(i + 0.13, j + 0.16, k)
  card(print, inner, { w: 2.84, h: 6.18, d: 0.365, sheet: PRINTS.clock, own: [0, 0, 0, 1] })
}

/** Chalk rings and ticks rubbed on the waves of the tiles. @param {any} chalk */
export function drawChalk(chalk) {
  for (const mark of CHALK_MARKS) {
    const facet = facetOf(mark.facet)
    const [u, s] = planToFacet(facet, mark.at)
    const ring = Array.from({ length: 61 }, (_, k) => {
      const a = (k / 60) * 2 * Math.PI * 1.04
      const r = 0.44 + 0.03 * Math.sin(a * 3 + u)
      return [u + r * Math.cos(a) * 0.92, s + r * Math.sin(a)]
    })
    stroke(chalk, facet, ring)
    if (mark.tick)
      stroke(
        chalk,
        facet,
        [
          [-0.2, 0.05],
          [-0.1, -0.1],
          [-0.05, -0.16],
          [0.05, 0.0],
          [0.15, 0.18],
          [0.24, 0.32],
        ].map(([x, y]) => [u + x, s + y]),
      )
  }
}

/** @param {any} chalk @param {any} facet @param {number[][]} path */
function stroke(chalk, facet, path) {
  const fine = path
    .slice(1)
    .flatMap((b, i) =>
      Array.from({ length: 5 }, (_, k) => [
        path[i][0] + ((b[0] - path[i][0]) * k) / 5,
        path[i][1] + ((b[1] - path[i][1]) * k) / 5,
      ]),
    )
  const across = [-0.5, -0.17, 0.17, 0.5]
  chalk.sheet({
    rows: fine.length - 1,
    columns: 3,
    at: (/** @type {number} */ i, /** @type {number} */ j) => {
      const p = fine[i]
      const q = fine[Math.min(i + 1, fine.length - 1)]
      const o = fine[Math.max(i - 1, 0)]
      const length = Math.hypot(q[0] - o[0], q[1] - o[1]) || 1
      const [nu, ns] = [((q[1] - o[1]) / length) * 0.055, (-(q[0] - o[0]) / length) * 0.055]
      return onTile(facet, p[0] + nu * across[j], p[1] + ns * across[j])
    },
    rest: (/** @type {number} */ i, /** @type {number} */ j) => [fine[i][0] * 12 + j, fine[i][1] * 12, j / 3, 0, 0, 0],
  })
}

/** A point just above the tiles. @param {any} facet @param {number} u @param {number} s */
function onTile(facet, u, s) {
  const course = Math.floor((s - tileOrigin(0, 0)[1]) / (EXPOSURE_IN / 12))
  const [u0, s0] = tileOrigin(course, 0)
  const across = ((((u - u0) * 12) % 12) + 12) % 12
  const v = (s - s0) * 12
  return facetToWorld(facet, u, s, (topIn(across, v) + 0.2) / 12)
}
