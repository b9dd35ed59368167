/**
 * The invented house: plan outline, facets and how plan, facet and world coordinates belong together. Everything else
 * (tiles, damage, cameras, job.json) takes its places from here.
 *
 * Plan: feet, x to the right seen from the street, y towards the back. World (three.js): X = x, Y = height, Z = -y.
 */

/** @typedef {[number, number]} Plan */
/** @typedef {'eave' | 'hip' | 'valley' | 'ridge' | 'inner'} EdgeKind */
/** @typedef {{ points: Plan[], kinds: EdgeKind[] }} Piece a convex part of a facet; kinds[i] is of the edge from point i */
/** @typedef {{ letter: string, name: string, eaveStart: Plan, along: Plan, up: Plan, outline: Plan[], pieces: Piece[] }} FacetPlan */

export const PITCH_RISE = 5
export const EAVE_HEIGHT_FT = 9.2
export const OVERHANG_FT = 1.5
/** Direction that the front faces; the sheet's up is the other way. */
export const FRONT_AZIMUTH_DEG = 205
export const UP_AZIMUTH_DEG = (FRONT_AZIMUTH_DEG + 180) % 360
/** Open tidal marsh: nobody lives here. */
export const ANCHOR = { latDeg: 29.115, lonDeg: -82.935 }
/** Mean height of the ground above the sea, feet; only for the altitude that the phone writes. */
export const GROUND_ALTITUDE_FT = 7

const pitch = PITCH_RISE / 12
export const COS_PITCH = 1 / Math.hypot(1, pitch)
export const SIN_PITCH = pitch * COS_PITCH

/** Points written as `x,y x,y`. @param {string} text @returns {Plan[]} */
function corners(text) {
  return text.split(' ').map((pair) => {
    const [x, y] = pair.split(',').map(Number)
    return [x, y]
  })
}

/** Drip-edge outline, anticlockwise from the front left corner. @type {Plan[]} */
export const OUTLINE = corners('0,0 12,0 12,-6 26,-6 26,0 38,0 38,-14 60,-14 60,34 26,34 26,42 8,42 8,34 0,34')

/** @param {Plan[]} points @param {string} kinds one letter per edge: e h v r, i for an inner cut @returns {Piece} */
function piece(points, kinds) {
  const names = { e: 'eave', h: 'hip', v: 'valley', r: 'ridge', i: 'inner' }
  return { points, kinds: [...kinds].map((k) => /** @type {EdgeKind} */ (names[/** @type {'e'} */ (k)])) }
}

/** Facets go round the house anticlockwise on the sheet, starting at the front. @type {FacetPlan[]} */
export const FACETS = [
  {
    letter: 'A',
    name: 'front, main slope',
    eaveStart: [0, 0],
    along: [1, 0],
    up: [0, 1],
    outline: corners('0,0 12,0 19,7 26,0 38,0 49,11 43,17 17,17'),
    pieces: [
      piece(corners('0,0 12,0 19,7 19,17 17,17'), 'evirh'),
      piece(corners('26,0 38,0 49,11 43,17 19,17 19,7'), 'evhriv'),
    ],
  },
  facet('B', 'entry wing, left side', [12, 0], [0, -1], [1, 0], corners('12,0 12,-6 19,1 19,7'), 'ehrv'),
  facet('C', 'entry wing, front end', [12, -6], [1, 0], [0, 1], corners('12,-6 26,-6 19,1'), 'ehh'),
  facet('D', 'entry wing, right side', [26, -6], [0, 1], [-1, 0], corners('26,-6 26,0 19,7 19,1'), 'evrh'),
  facet('E', 'garage wing, left side', [38, 0], [0, -1], [1, 0], corners('38,0 38,-14 49,-3 49,11'), 'ehrv'),
  facet('F', 'garage wing, front end', [38, -14], [1, 0], [0, 1], corners('38,-14 60,-14 49,-3'), 'ehh'),
  {
    letter: 'G',
    name: 'right side, garage and main house',
    eaveStart: [60, -14],
    along: [0, 1],
    up: [-1, 0],
    outline: corners('60,-14 60,34 43,17 49,11 49,-3'),
    pieces: [piece(corners('60,-14 60,11 49,11 49,-3'), 'eirh'), piece(corners('60,11 60,34 43,17 49,11'), 'ehhi')],
  },
  {
    letter: 'H',
    name: 'back, main slope',
    eaveStart: [60, 34],
    along: [-1, 0],
    up: [0, -1],
    outline: corners('60,34 26,34 17,25 8,34 0,34 17,17 43,17'),
    pieces: [piece(corners('60,34 26,34 17,25 17,17 43,17'), 'evirh'), piece(corners('8,34 0,34 17,17 17,25'), 'ehiv')],
  },
  facet('I', 'rear wing, right side', [26, 34], [0, 1], [-1, 0], corners('26,34 26,42 17,33 17,25'), 'ehrv'),
  facet('J', 'rear wing, end', [26, 42], [-1, 0], [0, -1], corners('26,42 8,42 17,33'), 'ehh'),
  facet('K', 'rear wing, left side', [8, 42], [0, -1], [1, 0], corners('8,42 8,34 17,25 17,33'), 'evrh'),
  facet('L', 'left side', [0, 34], [0, -1], [1, 0], corners('0,34 0,0 17,17'), 'ehh'),
]

/** Ridges and hips in the order of laying: from their low end. @type {{ name: string, kind: 'ridge' | 'hip', from: Plan, to: Plan }[]} */
export const RIDGES_AND_HIPS = [
  { name: 'main-ridge', kind: 'ridge', from: [17, 17], to: [43, 17] },
  { name: 'entry-ridge', kind: 'ridge', from: [19, 1], to: [19, 7] },
  { name: 'garage-ridge', kind: 'ridge', from: [49, -3], to: [49, 11] },
  { name: 'rear-ridge', kind: 'ridge', from: [17, 33], to: [17, 25] },
  { name: 'hip-A-L', kind: 'hip', from: [0, 0], to: [17, 17] },
  { name: 'hip-B-C', kind: 'hip', from: [12, -6], to: [19, 1] },
  { name: 'hip-C-D', kind: 'hip', from: [26, -6], to: [19, 1] },
  { name: 'hip-E-F', kind: 'hip', from: [38, -14], to: [49, -3] },
  { name: 'hip-F-G', kind: 'hip', from: [60, -14], to: [49, -3] },
  { name: 'hip-A-G', kind: 'hip', from: [49, 11], to: [43, 17] },
  { name: 'hip-G-H', kind: 'hip', from: [60, 34], to: [43, 17] },
  { name: 'hip-I-J', kind: 'hip', from: [26, 42], to: [17, 33] },
  { name: 'hip-J-K', kind: 'hip', from: [8, 42], to: [17, 33] },
  { name: 'hip-H-L', kind: 'hip', from: [0, 34], to: [17, 17] },
]

/** Valleys from their low end. @type {{ name: string, from: Plan, to: Plan }[]} */
export const VALLEYS = [
  { name: 'valley-A-B', from: [12, 0], to: [19, 7] },
  { name: 'valley-A-D', from: [26, 0], to: [19, 7] },
  { name: 'valley-A-E', from: [38, 0], to: [49, 11] },
  { name: 'valley-H-I', from: [26, 34], to: [17, 25] },
  { name: 'valley-H-K', from: [8, 34], to: [17, 25] },
]

/**
 * @param {string} letter @param {string} name @param {Plan} eaveStart @param {Plan} along @param {Plan} up
 * @param {Plan[]} outline @param {string} kinds @returns {FacetPlan}
 */
function facet(letter, name, eaveStart, along, up, outline, kinds) {
  return { letter, name, eaveStart, along, up, outline, pieces: [piece(outline, kinds)] }
}

/** @param {string} letter @returns {FacetPlan} */
export function facetOf(letter) {
  const found = FACETS.find((f) => f.letter === letter)
  if (found === undefined) throw new Error(`There is no facet ${letter}.`)
  return found
}

/** True azimuth that a facet's water runs to, degrees. @param {FacetPlan} facet */
export function downslopeAzimuthDeg(facet) {
  return planAzimuthDeg([-facet.up[0], -facet.up[1]])
}

/** True azimuth of a direction on the plan, degrees. @param {Plan} direction */
export function planAzimuthDeg([x, y]) {
  return ((((Math.atan2(x, y) * 180) / Math.PI + UP_AZIMUTH_DEG) % 360) + 360) % 360
}

/**
 * A place on or near a facet in world feet.
 * @param {FacetPlan} facet @param {number} u feet along the eave @param {number} s feet up the slope
 * @param {number} w feet out of the slope @returns {[number, number, number]}
 */
export function facetToWorld(facet, u, s, w) {
  const run = s * COS_PITCH - w * SIN_PITCH
  const x = facet.eaveStart[0] + facet.along[0] * u + facet.up[0] * run
  const y = facet.eaveStart[1] + facet.along[1] * u + facet.up[1] * run
  return [x, EAVE_HEIGHT_FT + s * SIN_PITCH + w * COS_PITCH, -y]
}

/** Facet coordinates of the surface point above a plan point. @param {FacetPlan} facet @param {Plan} at @returns {[number, number]} */
export function planToFacet(facet, at) {
  const dx = at[0] - facet.eaveStart[0]
  const dy = at[1] - facet.eaveStart[1]
  return [dx * facet.along[0] + dy * facet.along[1], (dx * facet.up[0] + dy * facet.up[1]) / COS_PITCH]
}

/** Plan point under a surface point of a facet. @param {FacetPlan} facet @param {number} u @param {number} s @returns {Plan} */
export function facetToPlan(facet, u, s) {
  const [x, , z] = facetToWorld(facet, u, s, 0)
  return [x, -z]
}

/** The facet over a plan point, or null beside the roof. @param {Plan} at @returns {FacetPlan | null} */
export function facetAt(at) {
  return FACETS.find((f) => f.pieces.some((p) => insideConvex(p.points, at))) ?? null
}

/** Height of the deck above a plan point; the ground beside the roof. @param {Plan} at */
export function deckHeightFt(at) {
  const facet = facetAt(at)
  if (facet === null) return 0
  return EAVE_HEIGHT_FT + planToFacet(facet, at)[1] * SIN_PITCH
}

/** @param {Plan[]} points @param {Plan} at */
function insideConvex(points, at) {
  return points.every((a, i) => {
    const b = points[(i + 1) % points.length]
    return (b[0] - a[0]) * (at[1] - a[1]) - (b[1] - a[1]) * (at[0] - a[0]) >= -1e-9
  })
}

/** Plan point to WGS84 degrees, on the local tangent plane. @param {Plan} at */
export function planToEarth([x, y]) {
  const up = (UP_AZIMUTH_DEG * Math.PI) / 180
  const eastM = (x * Math.cos(up) + y * Math.sin(up)) * 0.3048
  const northM = (y * Math.cos(up) - x * Math.sin(up)) * 0.3048
  const lat = (ANCHOR.latDeg * Math.PI) / 180
  const e2 = 0.00669437999014
  const w = Math.sqrt(1 - e2 * Math.sin(lat) ** 2)
  const meridian = (6378137 * (1 - e2)) / w ** 3
  const parallel = (6378137 / w) * Math.cos(lat)
  return {
    latDeg: ANCHOR.latDeg + ((northM / meridian) * 180) / Math.PI,
    lonDeg: ANCHOR.lonDeg + ((eastM / parallel) * 180) / Math.PI,
  }
}
