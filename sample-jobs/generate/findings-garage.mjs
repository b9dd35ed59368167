/** Findings on the garage wing and its valley. Observation, measurement and opinion stay apart. */
import { FROND_AT, near } from './damage.mjs'

const TAPE = 'steel tape'
const SCALE = '12-inch printed scale'

/** @type {any[]} */
export const GARAGE_FINDINGS = [
  {
    kind: 'damage',
    component: 'field-tile',
    condition: 'diagonal-crack',
    extent: { kind: 'exactly', count: 1 },
    degree: 'tile in two, in place',
    crackPath: 'diagonal',
    facet: 'E',
    observation:
      'One tile cracked from the left edge near its nose to the right edge near the course above. Both pieces are in place; the lower one has dropped a little at the crack.',
    measurements: [
      {
        what: 'crack-length-in',
        value: 14,
        by: 'instrument',
        instrument: SCALE,
        note: 'along the crack, part under the course above not seen',
      },
    ],
    cause: {
      cause: 'undetermined',
      indicatorsSeen: ['single tile, neighbours whole'],
      indicatorsLookedForNotSeen: ['star or chip at a point of strike', 'object or pieces of another tile near it'],
      otherExplanations: [
        { explanation: 'A step on the unsupported middle of the tile', whyLessLikely: '' },
        { explanation: 'A piece of tile or branch dropped on it', whyLessLikely: 'No point of strike seen.' },
      ],
      note: 'Cause not determined. The age of the broken face could not be told with the tile in place.',
    },
    consequences: ['water-path-possible', 'no-present-leak-seen'],
    pin: { kind: 'point', at: near('diagonal', 0, 0, 0) },
    placeWords: 'Garage wing left side, about the middle of the slope',
    photos: [
      ['facet-E', 'overview'],
      ['diagonal-mid', 'mid'],
      ['diagonal-close', 'scale'],
    ],
    lookedAt: {
      debris: 'None within ten feet.',
      fastener: 'Not seen, under the course above.',
      fractureFace: 'Edge grey, no growth; only the top edge could be seen.',
      footTraffic: 'No route to equipment crosses this slope.',
    },
    noteKeys: ['reading-a-crack'],
  },
  {
    kind: 'wear',
    component: 'mortar-bed',
    condition: 'cap-mortar-cracked',
    extent: { kind: 'length', lengthFt: 14 },
    degree: 'open',
    facet: 'E',
    observation:
      'Mortar bed of the garage ridge cracked across at many places along its whole length. Dark growth in the cracks. No cap moved under one hand.',
    measurements: [
      { what: 'crack-width-in', value: 0.2, by: 'eye', note: 'the wider ones' },
      { what: 'length-ft', value: 14, by: 'instrument', instrument: TAPE },
    ],
    cause: {
      cause: 'age-and-weather',
      indicatorsSeen: ['growth in the cracks', 'cracks at even distances', 'caps sit still'],
      indicatorsLookedForNotSeen: ['fresh faces', 'caps out of line'],
      otherExplanations: [
        { explanation: 'Movement of the roof structure', whyLessLikely: 'Ridge line straight by eye.' },
      ],
      note: 'Consistent with shrinkage and age.',
    },
    consequences: ['no-present-leak-seen'],
    pin: {
      kind: 'line',
      points: [
        [49, -3],
        [49, 11],
      ],
    },
    placeWords: 'Garage ridge, whole length',
    photos: [
      ['garage-ridge-mid', 'mid'],
      ['garage-ridge-close', 'close'],
    ],
    lookedAt: {
      bedding: 'Caps bear on the bed on both sides where looked at.',
      fractureFace: 'Dark, with growth.',
      fastener: 'No fastener seen in the caps.',
    },
  },
  {
    kind: 'wear',
    component: 'valley-metal',
    condition: 'debris-on-roof',
    extent: { kind: 'exactly', count: 1 },
    degree: 'loose',
    facet: 'A',
    observation:
      'One dead palm leaf lies across the valley between facets A and E. The tiles beside it are whole. The valley metal is open above and below it.',
    cause: { cause: 'not-stated', note: '' },
    consequences: ['no-present-leak-seen'],
    pin: { kind: 'point', at: FROND_AT },
    placeWords: 'Valley between main house and garage, about the middle',
    photos: [['valley-frond', 'mid']],
    temporaryMeasure: 'Leaf taken off after the picture.',
    lookedAt: { debris: 'The leaf itself; palms of this kind stand on the lot.' },
  },
]
