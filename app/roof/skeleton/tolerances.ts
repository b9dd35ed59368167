/**
 * How near is the same, for the whole roof builder.
 *
 * Corners of a house are drawn to a quarter of an inch at best, and double precision loses about 1e-12 ft on the way;
 * each tolerance lies far from both, so that it neither hides a drawn shape nor trips over rounding.
 */

/** Places on the wavefront nearer than this meet at one place, and heights closer than this are one height, feet. */
export const SAME_PLACE_FT = 1e-7

/** Edges within this of one line lie on it, feet: nearer than places, so that two ends of one line are one place. */
export const SAME_LINE_FT = 1e-8

/** Directions whose cross product is smaller are parallel: over 100 ft they part by no more than one place. */
export const PARALLEL = 1e-9

/**
 * Neighbouring edges of unequal pitch that turn by less than this sine, a twentieth of a degree, are drawn on one line.
 * The line between their slopes would run along the eave and leave one of them next to no roof.
 */
export const IN_LINE = 1e-3

/** Corners of an outline must stand this far apart: an eighth of an inch, as for facets drawn by hand. */
export const LEAST_EDGE_FT = 1 / 96

/** Edges that are no neighbours must stand this far apart, feet, ten thousand times what counts as one place. */
export const LEAST_GAP_FT = 1e-3

/** Outlines and courtyards smaller than this are none. */
export const LEAST_AREA_SQFT = 0.5

/** Facets' plan areas must sum to the outline's within this share of it. */
export const AREA_SHARE = 1e-6

/** Planes that share a line must agree in height along it within this, feet: a hundredth of what a tape can tell. */
export const SAME_HEIGHT_FT = 1e-4
