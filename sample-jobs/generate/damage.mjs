/**
 * What is wrong with the invented roof, and where: the one source that the scene (geometry), the walk (what a camera
 * looks at) and job.json (pins, counts, measurements) share.
 */
import { facetOf, facetToPlan, planToFacet } from './house-plan.mjs'
import { COVER_IN, EXPOSURE_IN } from './tile-shape.mjs'

/** The first nose hangs over the drip edge by this much, feet up the slope. */
const EAVE_START_FT = -0.12
const EXPOSURE_FT = EXPOSURE_IN / 12
const COVER_FT = COVER_IN / 12

/** @typedef {'missing'|'slipped'|'lifts'|'crack'|'diagonal'|'corner'|'lock'|'replaced'} TileHarm */
/** @typedef {{ group: string, facet: string, course: number, column: number, harm: TileHarm, amount: number, turn: number }} HarmedTile */

/** Lower left corner of a tile in facet feet; every other course is shifted by half a tile. @param {number} course @param {number} column @returns {[number, number]} */
export function tileOrigin(course, column) {
  return [column * COVER_FT + (course % 2 === 0 ? 0 : COVER_FT / 2), EAVE_START_FT + course * EXPOSURE_FT]
}

/** The tile whose bare face is over a plan point. @param {string} letter @param {[number, number]} at */
function tileUnder(letter, at) {
  const [u, s] = planToFacet(facetOf(letter), at)
  const course = Math.floor((s - EAVE_START_FT) / EXPOSURE_FT)
  const column = Math.floor((u - (course % 2 === 0 ? 0 : COVER_FT / 2)) / COVER_FT)
  return { course, column }
}

/**
 * @param {string} group @param {string} facet @param {TileHarm} harm
 * @param {[x: number, y: number, amount?: number, turn?: number][]} places
 * @returns {HarmedTile[]}
 */
function tiles(group, facet, harm, places) {
  return places.map(([x, y, amount = 1, turn = 0]) => ({
    group,
    facet,
    harm,
    amount,
    turn,
    ...tileUnder(facet, [x, y]),
  }))
}

/** Amount: slip or lift in inches; turn: degrees. @type {HarmedTile[]} */
export const HARMED_TILES = [
  ...tiles('missing', 'A', 'missing', [
    [13.9, 10.2],
    [14.9, 10.2],
  ]),
  ...tiles('missing', 'A', 'slipped', [[13.4, 11.3, 1.1, -2.5]]),
  ...tiles('crack-fastener', 'A', 'crack', [
    [33.5, 6.1, 1],
    [36.4, 7.2, 0.6],
  ]),
  ...tiles('replaced', 'A', 'replaced', [
    [29.5, 12.4],
    [30.5, 12.4],
    [31.5, 12.4],
    [30, 13.5],
    [31, 13.5],
    [30, 11.4],
    [31, 11.4],
    [32, 11.4],
    [29.5, 10.3],
  ]),
  ...tiles('lift-test', 'A', 'lifts', [[41.4, 9.3, 2.75]]),
  ...tiles('slipped', 'L', 'slipped', [
    [6.2, 18.3, 4.2, 3.5],
    [6.2, 19.3, 3.6, -2],
    [7.2, 16.8, 3.4, 2],
  ]),
  ...tiles('lift-left', 'L', 'lifts', [[4.1, 24.2, 2.25]]),
  ...tiles('locks', 'G', 'lock', [
    [54.3, 6.2],
    [54.3, 8.2],
    [55.3, 3.6],
  ]),
  ...tiles('corners', 'H', 'corner', [
    [31.5, 27.3, 1],
    [32.6, 26.2, 0.8],
    [34.5, 27.3, 1.15],
    [36.4, 25.2, 0.7],
    [38.6, 26.2, 0.9],
  ]),
  ...tiles('diagonal', 'E', 'diagonal', [[44.2, -1.2]]),
]

/** @param {string} group */
export function tilesOf(group) {
  return HARMED_TILES.filter((t) => t.group === group)
}

/** Plan point under the middle of a tile's bare face. @param {{ facet: string, course: number, column: number }} tile @returns {[number, number]} */
export function tileCentre(tile) {
  const [u, s] = tileOrigin(tile.course, tile.column)
  return facetToPlan(facetOf(tile.facet), u + COVER_FT / 2, s + EXPOSURE_FT / 2)
}

/**
 * Plan point near a harmed tile: feet along the eave and up the slope from the middle of its bare face.
 * @param {string} group @param {number} index @param {number} along @param {number} up @returns {[number, number]}
 */
export function near(group, index, along, up) {
  const tile = tilesOf(group)[index]
  const [u, s] = tileOrigin(tile.course, tile.column)
  return facetToPlan(facetOf(tile.facet), u + COVER_FT / 2 + along, s + EXPOSURE_FT / 2 + up)
}

/** @type {Map<string, HarmedTile>} */
const byPlace = new Map(HARMED_TILES.map((t) => [`${t.facet}:${t.course}:${t.column}`, t]))

/** @param {string} facet @param {number} course @param {number} column @returns {HarmedTile | undefined} */
export function harmAt(facet, course, column) {
  return byPlace.get(`${facet}:${course}:${column}`)
}

/** Whether a harmed tile lies within a few tiles, where hidden parts may show. @param {string} facet @param {number} course @param {number} column */
export function nearHarm(facet, course, column) {
  return HARMED_TILES.some(
    (t) => t.facet === facet && Math.abs(t.course - course) <= 1 && Math.abs(t.column - column) <= 1,
  )
}

/** Caps off their bed: which line, which caps from its low end, how far they turned (degrees), rose and shifted (inches). */
export const LOOSE_CAPS = [
  {
    group: 'ridge-loose',
    line: 'main-ridge',
    first: 6,
    turns: [3, -6, 10, -4, 7, -3],
    rises: [0.3, 0.5, 1.1, 0.5, 0.9, 0.4],
    shifts: [0.2, 0.7, -0.9, 1.2, -0.7, 0.5],
  },
  {
    group: 'hip-loose',
    line: 'hip-A-L',
    first: 8,
    turns: [5, -9, 6],
    rises: [0.5, 1.0, 0.6],
    shifts: [0.6, -1.1, 0.8],
  },
]
/** Lines whose mortar bed is cracked although the caps sit still. */
export const CRACKED_BEDS = [{ group: 'garage-bed', line: 'garage-ridge' }]

/** Pipes through the roof: plan place, radius in inches, and the state of the mortar round them. */
export const PIPES = [
  {
    name: 'pipe-H-1',
    facet: 'H',
    at: /** @type {[number, number]} */ ([40.5, 26.8]),
    radiusIn: 1.7,
    mortar: 'cracked',
  },
  {
    name: 'pipe-H-2',
    facet: 'H',
    at: /** @type {[number, number]} */ ([30.6, 23.4]),
    radiusIn: 1.3,
    mortar: 'cracked',
  },
  { name: 'pipe-G-1', facet: 'G', at: /** @type {[number, number]} */ ([53.2, 19.5]), radiusIn: 1.7, mortar: 'sound' },
]

/** Chalk rings found on arrival. @type {{ facet: string, at: [number, number], tick: boolean }[]} */
export const CHALK_MARKS = [
  { facet: 'A', at: [22.6, 12.3], tick: true },
  { facet: 'A', at: [24.5, 13.4], tick: false },
  { facet: 'A', at: [21.4, 14.4], tick: false },
]
/** The palm frond in the valley. @type {[number, number]} */
export const FROND_AT = [43.4, 5.6]
