/** Garden, drive, street, palms, shrubs and the tree line of the invented place. */
import { stream } from './seed.mjs'
import { cross, unit } from './mesh-builder.mjs'
import { FROND_AT } from './damage.mjs'
import { deckHeightFt } from './house-plan.mjs'
import { blade, palm, shrub, treeLine } from './plants.mjs'

/** @param {any} ground */
export function layGround(ground) {
  const patch = (/** @type {number[]} */ [x0, y0, x1, y1], /** @type {number} */ h, /** @type {number} */ sort) =>
    ground.face(
      [
        [x0, h, -y0],
        [x1, h, -y0],
        [x1, h, -y1],
        [x0, h, -y1],
      ],
      [
        [x0, y0],
        [x1, y0],
        [x1, y1],
        [x0, y1],
      ],
      [0, 0, 0, sort],
    )
  patch([-900, -900, 960, 940], 0, 0)
  patch([-900, -76, 960, -54], 0.03, 2)
  patch([40, -54, 58, -12.5], 0.06, 1)
  patch([-900, -49, 960, -45], 0.05, 1)
  patch([16.5, -25, 21.5, -4.5], 0.05, 1)
  patch([21.5, -25, 40, -20.5], 0.045, 1)
  patch([15, 35, 50, 47], 0.06, 1)
  patch([1, -2.5, 13.2, 1.5], 0.04, 3)
  patch([25, -2.5, 39.5, 1.5], 0.04, 3)
  patch([-1.6, 2, 1.5, 33], 0.04, 3)
}

/** @param {any} leaf @param {any} white */
export function plantGarden(leaf, white) {
  const random = stream(20261112)
  for (let x = 2.2; x < 12.5; x += 1.9) shrub(leaf, random, { at: [x, 0.2], height: 1.7 + random() * 0.9, width: 1.3 })
  for (let x = 26.5; x < 39; x += 2) shrub(leaf, random, { at: [x, 0.2], height: 1.5 + random() * 0.8, width: 1.3 })
  for (let y = 4; y < 32; y += 3.1) shrub(leaf, random, { at: [-0.2, y], height: 2 + random() * 1.2, width: 1.5 })
  for (let k = 0; k < 5; k++) shrub(leaf, random, { at: [61.5, 10 + k * 4.6], height: 2.2 + random(), width: 1.6 })
  for (const [x, y, h] of [
    [-9, -16, 21],
    [67, -26, 24],
    [78, 44, 22],
    [-15, 44, 25],
    [-4, 62, 22],
    [62, 66, 26],
    [-26, -14, 20],
  ]) {
    palm(leaf, random, { at: [x, y], height: h })
  }
  treeLine(leaf, random)
  frondOnRoof(leaf, random)
  white.box([61.2, 0.1, -8.5], [63.7, 2.9, -6], [0, 0, 0, 2])
}

/** One dead fan leaf in the valley. @param {any} leaf @param {() => number} random */
function frondOnRoof(leaf, random) {
  const [x, y] = FROND_AT
  const hub = [x, deckHeightFt([x, y]) + 0.42, -y]
  const down = unit([-0.75, -0.22, 0.66])
  leaf.bar({
    from: hub.map((v, k) => v - down[k] * 2.6 + (k === 1 ? 0.06 : 0)),
    to: hub,
    r0: 0.05,
    r1: 0.035,
    sides: 6,
    own: [0.5, 0.9, 0, 0],
  })
  const side = unit(cross(down, [0, 1, 0]))
  for (let k = 0; k < 26; k++) {
    const a = ((k / 25) * 2 - 1) * 1.35
    const along = unit([0, 1, 2].map((d) => down[d] * Math.cos(a) + side[d] * Math.sin(a))).map(
      (v) => v * (1.9 + random() * 0.5),
    )
    along[1] += 0.16 * Math.abs(Math.sin(a)) + 0.1 * random() + 0.05
    blade(
      leaf,
      hub,
      along,
      unit(cross(along, [0.1, 1, 0.1])).map((v) => v * 0.15),
      [random(), 0.8 + random() * 0.2, 0.35 + random() * 0.35, 0],
    )
  }
}

/** Blades of grass near the places that ground pictures are taken from. @param {any} grass @param {number[][]} patches */
export function growGrass(grass, patches) {
  const random = stream(515)
  for (const [cx, cy, radius, count] of patches) {
    for (let i = 0; i < count; i++) {
      const r = radius * Math.sqrt(random())
      const a = random() * 2 * Math.PI
      const [x, y] = [cx + r * Math.cos(a), cy + r * Math.sin(a)]
      if (onPavement(x, y)) continue
      const h = 0.1 + random() * 0.16
      const lean = [(random() - 0.5) * h * 1.3, (random() - 0.5) * h * 1.3]
      const w = 0.012 + random() * 0.01
      const t = random() * Math.PI
      const [wx, wy] = [Math.cos(t) * w, Math.sin(t) * w]
      grass.face(
        [
          [x - wx, 0, -(y - wy)],
          [x + wx, 0, -(y + wy)],
          [x + lean[0], h, -(y + lean[1])],
        ],
        [
          [0, 0],
          [1, 0],
          [0.5, 1],
        ],
        [random(), random() < 0.25 ? random() * 0.8 : 0, 0, 2],
      )
    }
  }
}

/** @param {number} x @param {number} y */
function onPavement(x, y) {
  const inside = (/** @type {number[]} */ [x0, y0, x1, y1]) => x > x0 && x < x1 && y > y0 && y < y1
  return [
    [40, -54, 58, -12],
    [-900, -76, 960, -45],
    [16.5, -25, 21.5, 0],
    [21.5, -25, 40, -20.5],
    [15, 35, 50, 47],
    [0, 0, 60, 42],
    [12, -6, 26, 0],
    [38, -14, 60, 0],
    [1, -2.5, 39.5, 1.5],
  ].some(inside)
}
