/** Lift readings of the walk. One was made by hand without a force. */
import { near } from './damage.mjs'

const GAUGE = 'spring gauge with dial, 0 to 50 lbf, no. 3, checked 2 November 2026 against a 20 lb weight'

/** @type {any[]} */
export const READINGS = [
  {
    facet: 'A',
    at: near('lift-test', 0, 0, -0.5),
    liftIn: 2.75,
    forceLbf: 24,
    method: 'gauge',
    instrument: GAUGE,
    photos: ['lift-test-mid', 'lift-test-close'],
    finding: 7,
    note: 'Stopped when the nose reached 2 3/4 in.',
  },
  {
    facet: 'A',
    at: [38.4, 9.3],
    liftIn: 1.25,
    forceLbf: 35,
    method: 'gauge',
    instrument: GAUGE,
    note: 'Held at 35 lbf for five seconds.',
  },
  {
    facet: 'A',
    at: [44.6, 10.3],
    liftIn: 2.5,
    forceLbf: 27,
    method: 'gauge',
    instrument: GAUGE,
    finding: 7,
    note: 'Second tile left of the valley, same course line.',
  },
  {
    facet: 'A',
    at: [27.4, 8.2],
    liftIn: 0.5,
    forceLbf: 35,
    method: 'gauge',
    instrument: GAUGE,
    note: 'Held at 35 lbf for five seconds.',
  },
  {
    facet: 'L',
    at: near('lift-left', 0, 0, -0.5),
    liftIn: 2.25,
    forceLbf: null,
    method: 'by-hand',
    photos: ['lift-left-scale'],
    finding: 13,
    note: 'Raised with one hand; gauge was on the other slope. No force recorded.',
  },
  { facet: 'L', at: [5.3, 21.8], liftIn: 1, forceLbf: 35, method: 'gauge', instrument: GAUGE, note: '' },
  {
    facet: 'D',
    at: [22.9, 2.3],
    liftIn: 0.25,
    forceLbf: 35,
    method: 'gauge',
    instrument: GAUGE,
    finding: 11,
    note: 'Taken on a facet with nothing found, for comparison.',
  },
]
