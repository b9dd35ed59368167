/** Lays the tiles of a facet, cuts them at hips and valleys and breaks the ones that are to be broken. */
import { FACETS, facetToWorld, planToFacet } from './house-plan.mjs'
import { harmAt, nearHarm, tileOrigin } from './damage.mjs'
import { MeshBuilder, cross, sub, unit } from './mesh-builder.mjs'
import { seedOf, stream } from './seed.mjs'
import { FINE_ROWS, LENGTH_IN, PLAIN_ROWS, THICKNESS_IN, slabSurfaces, wholeTile } from './tile-shape.mjs'
import { brokenSlabs } from './broken-tile.mjs'

/** How far tiles are kept from each kind of edge, plan feet. */
const INSET_FT = { eave: -0.4, hip: 0.12, valley: 0.3, ridge: 0.1, inner: 0 }

/** Side of the squares that tiles are gathered in, so that what a picture can't see is skipped; plan feet. */
const CELL_FT = 9

/** @returns {MeshBuilder[]} one per square of the roof */
export function layTileField() {
  /** @type {Map<string, MeshBuilder>} */
  const cells = new Map()
  const cellAt = (/** @type {number[]} */ [x, , z]) => {
    const key = `${Math.floor(x / CELL_FT)}:${Math.floor(z / CELL_FT)}`
    const cell = cells.get(key) ?? new MeshBuilder()
    cells.set(key, cell)
    return cell
  }
  for (const facet of FACETS) layFacet(cellAt, facet)
  return [...cells.values()]
}

/** @param {(at: number[]) => MeshBuilder} cellAt @param {import('./house-plan.mjs').FacetPlan} facet */
function layFacet(cellAt, facet) {
  const cutters = facet.pieces.map(cutLines)
  const corners = facet.outline.map((p) => planToFacet(facet, p))
  const columnRange = [Math.min(...corners.map((c) => c[0])), Math.max(...corners.map((c) => c[0]))]
  const courses = Math.ceil(Math.max(...corners.map((c) => c[1])) / 1.125) + 1
  for (let course = 0; course < courses; course++) {
    for (let column = Math.floor(columnRange[0]) - 1; column <= columnRange[1] + 1; column++) {
      const harm = harmAt(facet.letter, course, column)
      if (harm?.harm === 'missing') continue
      layTile({ cellAt, facet, cutters, course, column, harm })
    }
  }
}

/**
 * Lines of a convex piece, moved inward: `distance(x, y)` is positive on the kept side.
 * @param {import('./house-plan.mjs').Piece} piece
 */
function cutLines(piece) {
  return piece.points.map((a, i) => {
    const b = piece.points[(i + 1) % piece.points.length]
    const length = Math.hypot(b[0] - a[0], b[1] - a[1])
    const nx = -(b[1] - a[1]) / length
    const ny = (b[0] - a[0]) / length
    return { nx, ny, c: nx * a[0] + ny * a[1] + INSET_FT[piece.kinds[i]], cutFace: piece.kinds[i] !== 'inner' }
  })
}

/** @param {{ cellAt: (at: number[]) => MeshBuilder, facet: any, cutters: any[][], course: number, column: number, harm: any }} job */
function layTile({ cellAt, facet, cutters, course, column, harm }) {
  const [u0, s0] = tileOrigin(course, column)
  const middle = facetToWorld(facet, u0 + 0.5, s0 + 0.6, 0)
  const reach = (/** @type {any[]} */ lines) => Math.min(...lines.map((l) => l.nx * middle[0] - l.ny * middle[2] - l.c))
  const reaches = cutters.map(reach)
  if (Math.max(...reaches) < -1.1) return
  const builder = cellAt(middle)
  const whole = reaches.some((r) => r > 1.1)
  const random = stream(seedOf(`${facet.letter}:${course}:${column}`))
  const own = tileLook(random, harm)
  const wobble = { du: (random() - 0.5) * 0.09, turn: (random() - 0.5) * 0.009, rise: random() * 0.14 }
  const fine = nearHarm(facet.letter, course, column)
  const rows = fine ? FINE_ROWS : PLAIN_ROWS
  const slabs = brokenSlabs(harm, wholeTile(rows, fine ? 22 : 14))
  const place = (/** @type {number[]} */ [u, v, w]) =>
    facetToWorld(
      facet,
      u0 + (u + wobble.du - v * wobble.turn) / 12,
      s0 + (v + (u - 6) * wobble.turn) / 12,
      (w + wobble.rise * (1 - v / LENGTH_IN)) / 12,
    )
  const sink = {
    grid: (/** @type {any[][]} */ rowsOfPoints, /** @type {boolean} */ flip) => {
      const grid = gridVertices(rowsOfPoints, place, flip, own)
      if (whole) emitGrid(builder, grid, flip)
      else for (const lines of cutters) emitCut({ builder, grid, flip, lines, facet })
    },
  }
  for (const slab of slabs) slabSurfaces(slab, sink)
}

/** Seed, shade and dirt of one tile. A replaced tile is cleaner and of another shade; a slipped one has lost its screw (dirt over 2). @param {() => number} random @param {any} harm */
function tileLook(random, harm) {
  const seed = random()
  if (harm?.harm === 'replaced') return [seed, 1, 0.15]
  const dirt = 0.45 + random() * 0.5
  return [seed, (random() - 0.5) * 0.5, harm?.harm === 'slipped' ? dirt + 2 : dirt]
}

/** @param {any[][]} points @param {(p: number[]) => number[]} place @param {boolean} flip @param {number[]} own */
function gridVertices(points, place, flip, own) {
  const world = points.map((row) => row.map((q) => place(q.p)))
  const last = points.length - 1
  return points.map((row, i) =>
    row.map((q, j) => {
      const across = sub(world[i][Math.min(j + 1, row.length - 1)], world[i][Math.max(j - 1, 0)])
      const upward = sub(world[Math.min(i + 1, last)][j], world[Math.max(i - 1, 0)][j])
      const normal = unit(flip ? cross(upward, across) : cross(across, upward))
      return [...world[i][j], ...normal, q.u, q.v, ...own, q.kind]
    }),
  )
}

/** @param {any} builder @param {number[][][]} grid @param {boolean} flip */
function emitGrid(builder, grid, flip) {
  const ids = grid.map((row) => row.map((v) => builder.vertex(v)))
  for (let i = 0; i + 1 < ids.length; i++) {
    for (let j = 0; j + 1 < ids[i].length; j++) {
      const [a, b, c, d] = [ids[i][j], ids[i][j + 1], ids[i + 1][j + 1], ids[i + 1][j]]
      if (flip) {
        builder.triangle(a, c, b)
        builder.triangle(a, d, c)
      } else {
        builder.triangle(a, b, c)
        builder.triangle(a, c, d)
      }
    }
  }
}

/** Cuts each triangle to one convex piece and closes the cut with a face a tile thick. @param {any} job */
function emitCut({ builder, grid, flip, lines, facet }) {
  for (let i = 0; i + 1 < grid.length; i++) {
    for (let j = 0; j + 1 < grid[i].length; j++) {
      const [a, b, c, d] = [grid[i][j], grid[i][j + 1], grid[i + 1][j + 1], grid[i + 1][j]]
      for (const triangle of flip
        ? [
            [a, c, b],
            [a, d, c],
          ]
        : [
            [a, b, c],
            [a, c, d],
          ]) {
        let polygon = triangle
        const cuts = []
        for (const line of lines) {
          const { kept, edge } = cutByLine(polygon, line)
          polygon = kept
          if (polygon.length === 0) break
          if (edge !== null && line.cutFace) cuts.push(edge)
        }
        if (polygon.length < 3) continue
        const ids = polygon.map((v) => builder.vertex(v))
        for (let k = 2; k < ids.length; k++) builder.triangle(ids[0], ids[k - 1], ids[k])
        if (a[11] === 0) for (const edge of cuts) closeCut(builder, edge, facet)
      }
    }
  }
}

/** @param {number[][]} polygon @param {any} line */
function cutByLine(polygon, line) {
  const distance = (/** @type {number[]} */ v) => line.nx * v[0] - line.ny * v[2] - line.c
  const kept = []
  const edge = []
  for (let i = 0; i < polygon.length; i++) {
    const a = polygon[i]
    const b = polygon[(i + 1) % polygon.length]
    const da = distance(a)
    const db = distance(b)
    if (da >= 0) kept.push(a)
    if (da >= 0 !== db >= 0) {
      const t = da / (da - db)
      const at = a.map((x, k) => x + (b[k] - x) * t)
      kept.push(at)
      edge.push(at)
    }
  }
  return { kept, edge: edge.length === 2 ? edge : null }
}

/** @param {any} builder @param {number[][]} edge @param {any} facet */
function closeCut(builder, [a, b], facet) {
  const down = facetToWorld(facet, 0, 0, -THICKNESS_IN / 12)
  const zero = facetToWorld(facet, 0, 0, 0)
  const drop = sub(down, zero)
  const low = (/** @type {number[]} */ v) => [v[0] + drop[0], v[1] + drop[1], v[2] + drop[2]]
  const corners = [a.slice(0, 3), b.slice(0, 3), low(b), low(a)]
  builder.face(corners, [a.slice(6, 8), b.slice(6, 8), b.slice(6, 8), a.slice(6, 8)], [a[8], a[9], a[10], 0.5])
}
