/** Collects indexed triangles for one material. Vertices are arrays of 12 numbers: position 3, normal 3, uv 2, four values of the material's own. */

/** @typedef {number[]} Vertex */
const STRIDE = 12

export class MeshBuilder {
  /** @type {number[]} */ data = []
  /** @type {number[]} */ index = []

  /** @param {Vertex} vertex @returns {number} */
  vertex(vertex) {
    for (let i = 0; i < STRIDE; i++) this.data.push(vertex[i])
    return this.data.length / STRIDE - 1
  }

  /** @param {number} a @param {number} b @param {number} c */
  triangle(a, b, c) {
    this.index.push(a, b, c)
  }

  /** A flat four-cornered face with its own normal; corners anticlockwise seen from outside.
   * @param {number[][]} corners @param {number[][]} uvs @param {number[]} own */
  face(corners, uvs, own) {
    const normal = faceNormal(corners[0], corners[1], corners[2])
    const at = corners.map((p, i) => this.vertex([...p, ...normal, ...uvs[i], ...own]))
    for (let i = 2; i < at.length; i++) this.triangle(at[0], at[i - 1], at[i])
  }

  /** A box between two world corners. @param {number[]} low @param {number[]} high @param {number[]} own */
  box(low, high, own) {
    const [x0, y0, z0] = low
    const [x1, y1, z1] = high
    const rect = (/** @type {number[][]} */ c, /** @type {number} */ w, /** @type {number} */ h) =>
      this.face(
        c,
        [
          [0, 0],
          [w, 0],
          [w, h],
          [0, h],
        ],
        own,
      )
    rect(
      [
        [x0, y0, z1],
        [x1, y0, z1],
        [x1, y1, z1],
        [x0, y1, z1],
      ],
      x1 - x0,
      y1 - y0,
    )
    rect(
      [
        [x1, y0, z0],
        [x0, y0, z0],
        [x0, y1, z0],
        [x1, y1, z0],
      ],
      x1 - x0,
      y1 - y0,
    )
    rect(
      [
        [x1, y0, z1],
        [x1, y0, z0],
        [x1, y1, z0],
        [x1, y1, z1],
      ],
      z1 - z0,
      y1 - y0,
    )
    rect(
      [
        [x0, y0, z0],
        [x0, y0, z1],
        [x0, y1, z1],
        [x0, y1, z0],
      ],
      z1 - z0,
      y1 - y0,
    )
    rect(
      [
        [x0, y1, z1],
        [x1, y1, z1],
        [x1, y1, z0],
        [x0, y1, z0],
      ],
      x1 - x0,
      z1 - z0,
    )
    rect(
      [
        [x0, y0, z0],
        [x1, y0, z0],
        [x1, y0, z1],
        [x0, y0, z1],
      ],
      x1 - x0,
      z1 - z0,
    )
  }

  /** A grid of points as a smooth surface. `at(i, j)` gives the world point, `own(i, j)` uv and own values.
   * @param {{ rows: number, columns: number, at: (i: number, j: number) => number[], rest: (i: number, j: number) => number[] }} grid */
  sheet({ rows, columns, at, rest }) {
    const base = this.data.length / STRIDE
    for (let i = 0; i <= rows; i++) {
      for (let j = 0; j <= columns; j++) {
        const across = sub(at(i, Math.min(j + 1, columns)), at(i, Math.max(j - 1, 0)))
        const upward = sub(at(Math.min(i + 1, rows), j), at(Math.max(i - 1, 0), j))
        this.vertex([...at(i, j), ...unit(cross(across, upward)), ...rest(i, j)])
      }
    }
    for (let i = 0; i < rows; i++) {
      for (let j = 0; j < columns; j++) {
        const a = base + i * (columns + 1) + j
        this.triangle(a, a + 1, a + columns + 2)
        this.triangle(a, a + columns + 2, a + columns + 1)
      }
    }
  }

  /** A round bar between two points, open ended unless capped. @param {{ from: number[], to: number[], r0: number, r1: number, sides: number, own: number[], cap?: boolean }} bar */
  bar({ from, to, r0, r1, sides, own, cap }) {
    const axis = unit(sub(to, from))
    const side = unit(cross(axis, Math.abs(axis[1]) > 0.9 ? [1, 0, 0] : [0, 1, 0]))
    const other = cross(axis, side)
    const length = Math.hypot(...sub(to, from))
    const ring = (/** @type {number[]} */ c, /** @type {number} */ r, /** @type {number} */ k) => {
      const a = (k / sides) * 2 * Math.PI
      return [0, 1, 2].map((d) => c[d] + r * (Math.cos(a) * side[d] + Math.sin(a) * other[d]))
    }
    this.sheet({
      rows: 1,
      columns: sides,
      at: (i, j) => (i === 0 ? ring(from, r0, -j) : ring(to, r1, -j)),
      rest: (i, j) => [(j / sides) * 6.28 * r0, i * length, ...own],
    })
    if (cap) {
      const points = Array.from({ length: sides }, (_, k) => ring(to, r1, k))
      this.face(
        points,
        points.map((p) => [p[0], p[2]]),
        own,
      )
    }
  }
}

/** @param {number[]} a @param {number[]} b */
export function sub(a, b) {
  return [a[0] - b[0], a[1] - b[1], a[2] - b[2]]
}

/** @param {number[]} a @param {number[]} b */
export function cross(a, b) {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]]
}

/** @param {number[]} a */
export function unit(a) {
  const length = Math.hypot(a[0], a[1], a[2]) || 1
  return [a[0] / length, a[1] / length, a[2] / length]
}

/** @param {number[]} a @param {number[]} b @param {number[]} c */
function faceNormal(a, b, c) {
  return unit(cross(sub(b, a), sub(c, a)))
}
