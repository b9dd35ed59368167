/** Shrubs, cabbage palms and the trees and bushes in the distance, all made of two-triangle leaves. */
import { cross, unit } from './mesh-builder.mjs'

/** A two-triangle leaf; with a normal given, it takes the light of the crown it belongs to. @param {any} leaf @param {number[]} p @param {number[]} along @param {number[]} side @param {number[]} own @param {number[]} [normal] */
export function blade(leaf, p, along, side, own, normal) {
  const tip = p.map((v, k) => v + along[k])
  const mid = (/** @type {number} */ s) => p.map((v, k) => v + along[k] * 0.45 + side[k] * s)
  const corners = [p, mid(0.5), tip, mid(-0.5)]
  if (normal === undefined)
    return leaf.face(
      corners,
      [
        [0, 0],
        [0.5, 0.45],
        [0.5, 1],
        [0, 0.45],
      ],
      own,
    )
  const ids = corners.map((c) => leaf.vertex([...c, ...normal, 0, 0.5, ...own]))
  leaf.triangle(ids[0], ids[1], ids[2])
  leaf.triangle(ids[0], ids[2], ids[3])
}

/** @param {() => number} random */
function direction(random) {
  const y = random() * 2 - 1
  const a = random() * 2 * Math.PI
  const r = Math.sqrt(1 - y * y)
  return [r * Math.cos(a), y, r * Math.sin(a)]
}

/** @param {any} leaf @param {() => number} random @param {{ at: number[], height: number, width: number }} plant */
export function shrub(leaf, random, { at, height, width }) {
  leaf.sheet({
    rows: 7,
    columns: 12,
    at: (/** @type {number} */ i, /** @type {number} */ j) => {
      const [e, a] = [(i / 7 - 0.5) * Math.PI, (j / 12) * 2 * Math.PI]
      const r = 0.78 + 0.1 * Math.sin(j * 2.1 + i * 3.7 + height * 9)
      return [
        at[0] + Math.cos(e) * Math.cos(a) * width * 0.75 * r,
        Math.max(0.02, height * (0.5 + 0.48 * Math.sin(e) * r)),
        -(at[1] + Math.cos(e) * Math.sin(a) * width * 0.75 * r),
      ]
    },
    rest: (/** @type {number} */ i, /** @type {number} */ j) => [j, i, 0.2, 0, 1.1, 0],
  })
  for (let i = 0; i < 620; i++) {
    const d = direction(random)
    const r = 0.72 + random() * 0.34
    const p = [
      at[0] + d[0] * width * r * 0.75,
      Math.max(0.05, height * 0.52 + d[1] * height * 0.5 * r),
      -(at[1] + d[2] * width * r * 0.75),
    ]
    const along = unit([d[0] + random() - 0.5, d[1] + 0.5 + random() * 0.5, -d[2] + random() - 0.5]).map(
      (v) => v * (0.22 + random() * 0.2),
    )
    blade(
      leaf,
      p,
      along,
      unit(cross(along, direction(random))).map((v) => v * 0.12),
      [random(), random() < 0.05 ? 0.6 : 0, Math.max(0, 1.0 - r) * 2.4 + (d[1] < 0 ? 0.3 : 0), 0],
      unit([d[0] + (random() - 0.5) * 0.8, d[1] + 0.2, -d[2] + (random() - 0.5) * 0.8]),
    )
  }
}

/** A cabbage palm: rough trunk, round head of fan leaves, some dead ones hanging. @param {any} leaf @param {() => number} random @param {{ at: number[], height: number }} tree */
export function palm(leaf, random, { at, height }) {
  const lean = [(random() - 0.5) * 1.6, (random() - 0.5) * 1.6]
  const top = [at[0] + lean[0], height, -(at[1] + lean[1])]
  leaf.bar({ from: [at[0], 0, -at[1]], to: top, r0: 0.62, r1: 0.46, sides: 14, own: [0, 0, 0, 1] })
  for (let f = 0; f < 34; f++) {
    const a = f * 2.4 + random() * 0.4
    const pitch = 1.15 - (f / 34) * 2.0 + (random() - 0.5) * 0.3
    const out = [Math.cos(a) * Math.cos(pitch), Math.sin(pitch), Math.sin(a) * Math.cos(pitch)]
    const stalk = 2.4 + random() * 1.2
    const hub = top.map((v, k) => v + out[k] * stalk)
    leaf.bar({ from: top, to: hub, r0: 0.06, r1: 0.035, sides: 4, own: [0.6, 0.1, 0.2, 0] })
    fan(leaf, random, { hub, out, size: 2.6 + random() * 0.7, dry: pitch < -0.62 ? 0.85 : random() * 0.12 })
  }
}

/** @param {any} leaf @param {() => number} random @param {{ hub: number[], out: number[], size: number, dry: number }} at */
function fan(leaf, random, { hub, out, size, dry }) {
  const side = unit(cross(out, [0, 1, 0]))
  for (let k = 0; k < 22; k++) {
    const a = ((k / 21) * 2 - 1) * 1.75
    const droop = -0.25 - 0.25 * random() - 0.12 * Math.abs(a)
    const along = unit([0, 1, 2].map((d) => out[d] * Math.cos(a) + side[d] * Math.sin(a) + (d === 1 ? droop : 0))).map(
      (v) => v * size * (0.85 + 0.15 * Math.cos(a)),
    )
    blade(
      leaf,
      hub,
      along,
      unit(cross(along, [side[1] + 0.2, out[1] + 0.9, side[2]])).map((v) => v * 0.22),
      [0.2 + random() * 0.6, dry, 0.1, 0],
    )
  }
}

/** Bushes in front, trees behind, all round. @param {any} leaf @param {() => number} random */
export function treeLine(leaf, random) {
  const ring = (
    /** @type {{ count: number, near: number, deep: number, size: (k: number) => [number, number] }} */ {
      count,
      near,
      deep,
      size,
    },
  ) => {
    for (let i = 0; i < count; i++) {
      const a = ((i + random() * 0.7) / count) * 2 * Math.PI
      const far = near + random() * deep
      const at = [30 + Math.cos(a) * far, 10 + Math.sin(a) * far]
      if (at[1] > -84 && at[1] < -40) continue
      const [w, h] = size(random())
      if (h <= 15) crown(leaf, random, { at, w, middle: h * 0.42, half: h * 0.55, leaves: 540 })
      else tree(leaf, random, { at, w, h })
    }
  }
  ring({ count: 120, near: 165, deep: 50, size: (k) => [8 + k * 6, 7 + k * 6] })
  ring({ count: 120, near: 200, deep: 90, size: (k) => [11 + k * 9, 24 + k * 22] })
}

/** A trunk and a head of several crowns of different sizes. @param {any} leaf @param {() => number} random @param {{ at: number[], w: number, h: number }} plant */
function tree(leaf, random, { at, w, h }) {
  leaf.bar({ from: [at[0], 0, -at[1]], to: [at[0], h * 0.6, -at[1]], r0: 0.8, r1: 0.5, sides: 6, own: [0, 0, 0.3, 1] })
  for (let k = 0; k < 7; k++) {
    const a = k * 2.4 + random()
    const out = k === 0 ? 0 : w * (0.35 + random() * 0.4)
    const size = w * (k === 0 ? 0.62 : 0.34 + random() * 0.26)
    const middle = h * (k === 0 ? 0.68 : 0.4 + random() * 0.42)
    crown(leaf, random, {
      at: [at[0] + out * Math.cos(a), at[1] + out * Math.sin(a)],
      w: size,
      middle,
      half: size * 0.72,
      leaves: 270,
    })
  }
}

/** A lumpy dark body with leaves standing out of it. @param {any} leaf @param {() => number} random @param {{ at: number[], w: number, middle: number, half: number, leaves: number }} plant */
function crown(leaf, random, { at, w, middle, half, leaves }) {
  const phase = random() * 20
  const point = (/** @type {number[]} */ d, /** @type {number} */ r) => {
    const lump =
      r *
      (1 +
        0.22 * Math.sin(d[0] * 4 + phase) * Math.cos(d[2] * 5 + phase * 2) +
        0.14 * Math.sin(d[1] * 9 + d[0] * 7 + phase * 3))
    return [at[0] + d[0] * w * lump, Math.max(0.2, middle + d[1] * half * lump), -(at[1] + d[2] * w * lump)]
  }
  leaf.sheet({
    rows: 7,
    columns: 10,
    at: (/** @type {number} */ i, /** @type {number} */ j) => {
      const [e, a] = [(i / 7 - 0.5) * Math.PI, (j / 10) * 2 * Math.PI]
      return point([Math.cos(e) * Math.cos(a), Math.sin(e), Math.cos(e) * Math.sin(a)], 0.66)
    },
    rest: (/** @type {number} */ i, /** @type {number} */ j) => [j, i, 0.1, 0, 0.95, 0],
  })
  const shade = random() * 0.45
  for (let k = 0; k < leaves; k++) {
    const d = direction(random)
    const r = 0.7 + random() * 0.38
    const along = unit([d[0] + random() - 0.5, d[1] + random() - 0.3, -d[2] + random() - 0.5]).map(
      (v) => v * (1.1 + random() * 0.9),
    )
    blade(
      leaf,
      point(d, r),
      along,
      unit(cross(along, direction(random))).map((v) => v * 0.95),
      [shade + random() * 0.4, random() * 0.15, (1.06 - r) * 1.5 + (d[1] < 0 ? 0.2 : 0), 0],
      unit([d[0] + (random() - 0.5) * 0.9, d[1] + 0.15 + (random() - 0.5) * 0.9, -d[2] + (random() - 0.5) * 0.9]),
    )
  }
}
