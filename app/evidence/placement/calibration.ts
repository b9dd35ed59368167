/**
 * The numbers that placement takes for granted about walks, phones and words.
 *
 * Those marked "fitted" were chosen on simulated training walks (`tests/placement`: three kinds of house, seeds
 * apart from those of the test walks), to make the stated probabilities fit the share that is right; the test walks over three other
 * kinds of house then measure them. The others are common practice without a source, or follow from the definition named.
 */
export const PLACEMENT_CALIBRATION = {
  /** Radius with 68 % of the errors of a position that states none: phones under open sky, about 4.9 m (GPS.gov). */
  defaultErrorM: 5,
  /** Stated errors are often too small: fitted. */
  statedErrorScale: 1.1,
  /** Share of a position's variance that is new at every fix; the rest wanders slowly: fitted. */
  freshShare: 0.3,
  /** Positions nearer than this say nothing more, as a camera is a few steps from what it shows: fitted. */
  leastSigmaFt: 6,
  /** Lasting and wandering error per axis before anything is learned. */
  offsetSigmaM: 5,
  /** How long a wandering error is remembered: fitted. */
  wanderMemoryS: 220,
  /** Share of positions that are wholly wrong: fitted. */
  grossPosition: 0.04,
  /** Compass error, one standard deviation: what a walk keeps, by what the direction refers to, and what is new each time. */
  lastingDirectionDeg: { true: 9, magnetic: 14, 'not-stated': 14 },
  freshDirectionDeg: 13,
  /** Share of directions that are wholly wrong. */
  grossDirection: 0.1,
  /** Photos of one thing follow each other within this, in the same direction within this: fitted. */
  sameThingS: 11,
  sameThingDeg: 85,
  /**
   * What one take says counts this much beside the next: an inspector works from about the same part of a facet for a
   * while, so that takes repeat each other: fitted.
   */
  takeWorth: 0.75,
  /** Chance that a photo of a take shows another place than one of it that was confirmed. */
  otherThing: 0.02,
  /** Share of photos that show a neighbouring facet rather than the one stood on: fitted. */
  looksAcross: 0.1,
  /** Seconds that an inspector stays on a facet, and on the ground, and on the roof before coming down: fitted. */
  onFacetS: 260,
  onGroundS: 320,
  onRoofS: 3200,
  /** Stages of a stay: with one, the chance to leave is the same at every moment. */
  stages: 4,
  /** Distance over which facets that do not touch are still stepped across to, feet. */
  stepAcrossFt: 11,
  /** Looking out over the eave, or away from the house, beside looking at it: fitted. */
  away: 0.12,
  /** A line of sight that hits a neighbour for its whole length is this much likelier when the neighbour is meant: fitted. */
  aimed: 6.8,
  /** Facing uphill rather than downhill on a slope, and how many photos that is worth before the inspector's habit is known. */
  uphill: 0.98,
  uphillWorthPhotos: 29,
  /** A facet visited never, once, twice, or more often, relative to once: fitted. */
  visitedNever: 0.015,
  visitedTwice: 0.12,
  visitedMore: 0.02,
  /** Rounds in which habits and visits are learned, and how far each moves. */
  rounds: 3,
  damping: 0.6,
  /** Share of hints that are right: fitted. */
  hintTrust: 0.9,
  /** Shares of arrivals, and of other photos, that come with a hint, before the inspector's habit is known: fitted. */
  hintOnArrival: 0.98,
  hintOtherwise: 0.13,
  /** Share of the moments at which a second camera was not where the first one was. */
  apart: 0.05,
  /** Stated probabilities are flattened by this exponent: fitted. */
  flatten: 1,
} as const
