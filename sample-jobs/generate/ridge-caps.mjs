/** Ridge and hip tiles on their mortar beds, some of them off their bed. */
import { EAVE_HEIGHT_FT, PITCH_RISE, RIDGES_AND_HIPS, FACETS } from './house-plan.mjs'
import { CRACKED_BEDS, LOOSE_CAPS } from './damage.mjs'
import { cross, unit } from './mesh-builder.mjs'
import { seedOf, stream } from './seed.mjs'

const CAP_IN = 16.5
const CAP_EXPOSURE_IN = 14
const HALF_WIDTH_IN = 5.1
const WALL_IN = 0.75

/** Height of the deck over a plan point by the planes that meet on a line. @param {[number, number]} at */
function heightFt([x, y]) {
  let best = 0
  for (const f of FACETS) {
    const inside = f.pieces.some((p) =>
      p.points.every((a, i) => {
        const b = p.points[(i + 1) % p.points.length]
        return (b[0] - a[0]) * (y - a[1]) - (b[1] - a[1]) * (x - a[0]) >= -1e-6
      }),
    )
    if (!inside) continue
    const run = (x - f.eaveStart[0]) * f.up[0] + (y - f.eaveStart[1]) * f.up[1]
    best = Math.max(best, (run * PITCH_RISE) / 12)
  }
  return EAVE_HEIGHT_FT + best
}

/** The line's frame: origin, direction up the line, sideways, and out; all in world feet. @param {typeof RIDGES_AND_HIPS[number]} line */
export function lineFrame(line) {
  const start = [line.from[0], heightFt(line.from), -line.from[1]]
  const end = [line.to[0], heightFt(line.to), -line.to[1]]
  const along = unit([end[0] - start[0], end[1] - start[1], end[2] - start[2]])
  const side = unit(cross(along, [0, 1, 0]))
  const out = cross(side, along)
  const lengthFt = Math.hypot(end[0] - start[0], end[1] - start[1], end[2] - start[2])
  const at = (/** @type {number} */ t, /** @type {number} */ s, /** @type {number} */ h) =>
    [0, 1, 2].map((k) => start[k] + (along[k] * t + side[k] * s + out[k] * h) / 12)
  return { at, lengthFt }
}

/** Fall of the slopes beside the line per inch sideways. @param {string} kind */
const fall = (kind) => (kind === 'ridge' ? PITCH_RISE / 12 : PITCH_RISE / 12 / Math.SQRT2)

/** Plan points of the stretch of a line that a group of loose caps takes up. @param {string} group @returns {[number, number][]} */
export function looseStretch(group) {
  const loose = LOOSE_CAPS.find((l) => l.group === group)
  const line = RIDGES_AND_HIPS.find((l) => l.name === loose?.line)
  if (loose === undefined || line === undefined) throw new Error(`No loose caps ${group}.`)
  const { lengthFt } = lineFrame(line)
  const point = (/** @type {number} */ cap) => {
    const t = (cap * CAP_EXPOSURE_IN) / 12 / lengthFt
    return /** @type {[number, number]} */ ([
      line.from[0] + (line.to[0] - line.from[0]) * t,
      line.from[1] + (line.to[1] - line.from[1]) * t,
    ])
  }
  return [point(loose.first), point(loose.first + loose.turns.length)]
}

/** @param {import('./mesh-builder.mjs').MeshBuilder} tiles @param {import('./mesh-builder.mjs').MeshBuilder} mortar */
export function layRidgeCaps(tiles, mortar) {
  for (const line of RIDGES_AND_HIPS) {
    const frame = lineFrame(line)
    const count = Math.ceil((frame.lengthFt * 12 - 3) / CAP_EXPOSURE_IN)
    for (let i = 0; i < count; i++) layCap({ tiles, line, frame, i, count })
    layBed({ mortar, line, frame })
  }
}

/** @param {{ tiles: any, line: any, frame: any, i: number, count: number }} job */
function layCap({ tiles, line, frame, i, count }) {
  const random = stream(seedOf(`${line.name}:${i}`))
  const loose = LOOSE_CAPS.find((l) => l.line === line.name && i >= l.first && i < l.first + l.turns.length)
  const k = loose === undefined ? 0 : i - loose.first
  const turn = ((loose?.turns[k] ?? (random() - 0.5) * 1.4) * Math.PI) / 180
  const rise = loose?.rises[k] ?? 0
  const shift = loose?.shifts[k] ?? (random() - 0.5) * 0.15
  const start = i * CAP_EXPOSURE_IN - (line.kind === 'hip' ? 2 : 0)
  const length = i === count - 1 ? Math.max(5, frame.lengthFt * 12 - start + (line.kind === 'ridge' ? 1 : 2)) : CAP_IN
  const own = [random(), (random() - 0.5) * 0.4, 0.5 + random() * 0.5]
  const crown = line.kind === 'ridge' ? 4.1 : 4.4
  const edge = crown - HALF_WIDTH_IN * fall(line.kind) - 1.55
  const shape = (/** @type {number} */ a, /** @type {number} */ v, /** @type {number} */ down) => {
    const taper = 1 - 0.08 * (v / CAP_IN)
    const round = v < 0.35 ? 0.18 * (1 - v / 0.35) ** 2 : 0
    const s = a * HALF_WIDTH_IN * taper * (1 - down * 0.02)
    const h =
      edge +
      (crown - edge) * Math.cos((a * Math.PI) / 2.25) ** 0.8 -
      down -
      round +
      0.95 * (1 - v / CAP_EXPOSURE_IN) +
      rise * (1 - (0.4 * v) / CAP_IN)
    return frame.at(start + v + s * turn, s + shift - (v - 7) * turn, h)
  }
  const rows = [0, 0.12, 0.35, 5, 10, length]
  const kind = 0
  const columns = 14
  const a = (/** @type {number} */ j) => -1 + (2 * j) / columns
  tiles.sheet({
    rows: rows.length - 1,
    columns,
    at: (r, j) => shape(a(j), rows[r], 0),
    rest: (r, j) => [6 + a(j) * 5.5, rows[r] + 0.3, ...own, kind],
  })
  tiles.sheet({
    rows: 1,
    columns,
    at: (r, j) => shape(a(j), 0, r === 0 ? WALL_IN : 0),
    rest: (r, j) => [6 + a(j) * 5.5, r * 0.7, ...own, 0.25],
  })
  tiles.sheet({
    rows: 1,
    columns: rows.length - 1,
    at: (r, j) => shape(1, rows[j], r === 0 ? WALL_IN : 0),
    rest: (r, j) => [11 + r * 0.8, rows[j], ...own, 0.25],
  })
  tiles.sheet({
    rows: 1,
    columns: rows.length - 1,
    at: (r, j) => shape(-1, rows[rows.length - 1 - j], r === 0 ? WALL_IN : 0),
    rest: (r, j) => [1 - r * 0.8, rows[j], ...own, 0.25],
  })
  tiles.sheet({
    rows: 1,
    columns,
    at: (r, j) => shape(-a(j), length, r === 0 ? WALL_IN : 0),
    rest: (r, j) => [6 + j * 0.8, length + r, ...own, 0.25],
  })
}

/** Lumpy mortar under both cap edges, with open cracks where the caps came loose or the bed is cracked. @param {{ mortar: any, line: any, frame: any }} job */
function layBed({ mortar, line, frame }) {
  const cracked = CRACKED_BEDS.some((b) => b.line === line.name)
  const loose = LOOSE_CAPS.filter((l) => l.line === line.name)
  const lengthIn = frame.lengthFt * 12
  const random = stream(seedOf(`bed:${line.name}`))
  const lumps = Array.from({ length: 4096 }, () => random())
  const lump = (/** @type {number} */ x, /** @type {number} */ k) => {
    const p = Math.abs(x) / 1.7 + k * 37
    const i = Math.floor(p)
    const f = p - i
    return lumps[i % 4096] * (1 - f) + lumps[(i + 1) % 4096] * f
  }
  const crown = line.kind === 'ridge' ? 4.1 : 4.4
  const edge = crown - HALF_WIDTH_IN * fall(line.kind) - 1.55
  const breaks = breakPlaces({ lengthIn, cracked, loose, random })
  for (const sign of [-1, 1]) {
    for (let b = 0; b + 1 < breaks.length; b++) {
      const [from, to] = [breaks[b].at + breaks[b].gap, breaks[b + 1].at]
      if (to - from < 1) continue
      const columns = Math.max(2, Math.round((to - from) / 0.8))
      const sag = breaks[b].sag
      const low = (/** @type {number} */ across, /** @type {number} */ above) => [
        across,
        above - across * fall(line.kind),
      ]
      const profile = [
        [3.2, edge + 1.1 - sag],
        [4.8, edge + 0.95 - sag],
        [5.6, edge + 0.7 - sag],
        low(6.5, 3.65 - sag * 0.7),
        low(7.3, 2.95 - sag * 0.4),
        low(7.9, 1.4),
      ]
      const at = (/** @type {number} */ r, /** @type {number} */ j) => {
        const t = from + ((to - from) * j) / columns
        const n = (lump(t, r) - 0.5) * (r === 0 ? 0.1 : 0.42)
        const ragged = j === 0 || j === columns ? (lump(t, r + 9) - 0.5) * 0.5 : 0
        return frame.at(t + ragged, sign * (profile[r][0] + n * 0.6 + sag * 0.8), profile[r][1] + n)
      }
      const rest = (/** @type {number} */ r, /** @type {number} */ j) => [
        from + ((to - from) * j) / columns,
        r * 1.2,
        0,
        0,
        cracked ? 0.75 : 0.45,
        0,
      ]
      if (sign > 0) mortar.sheet({ rows: 5, columns, at: (r, j) => at(5 - r, j), rest })
      else mortar.sheet({ rows: 5, columns, at, rest })
    }
  }
}

/** Where the bed is broken through: place, width of the gap and how far the piece after it sags. @param {any} job */
function breakPlaces({ lengthIn, cracked, loose, random }) {
  const breaks = [{ at: 0, gap: 0, sag: 0 }]
  for (let t = 9; t < lengthIn - 6; t += cracked ? 7 + random() * 9 : 5 + random() * 6) {
    const inLoose = loose.some(
      (/** @type {any} */ l) =>
        t > l.first * CAP_EXPOSURE_IN - 4 && t < (l.first + l.turns.length) * CAP_EXPOSURE_IN + 4,
    )
    if (inLoose) breaks.push({ at: t, gap: 0.2 + random() * (random() > 0.6 ? 4.5 : 0.5), sag: 0.25 + random() * 0.5 })
    else if (cracked) breaks.push({ at: t, gap: 0.14 + random() * 0.22, sag: random() * 0.15 })
    else if (breaks[breaks.length - 1].sag > 0) breaks.push({ at: t, gap: 0.06, sag: 0 })
  }
  breaks.push({ at: lengthIn, gap: 0, sag: 0 })
  return breaks
}
