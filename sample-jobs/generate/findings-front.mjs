/** Findings on the front slope and the entry wing, in the order of the walk. */
import { CHALK_MARKS, near, tileCentre, tilesOf } from './damage.mjs'
import { looseStretch } from './ridge-caps.mjs'

const TAPE = 'steel tape'
const SCALE = '12-inch printed scale'

/** Corners round the tiles of a group that came to the same harm. @param {string} group @param {string} harm @returns {[number, number][]} */
function around(group, harm) {
  const points = tilesOf(group)
    .filter((t) => t.harm === harm)
    .map(tileCentre)
  const [x, y] = [points.map((p) => p[0]), points.map((p) => p[1])]
  const [x0, x1, y0, y1] = [Math.min(...x) - 0.6, Math.max(...x) + 0.6, Math.min(...y) - 0.6, Math.max(...y) + 0.6]
  return [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ]
}

/** @type {any[]} */
export const FRONT_FINDINGS = [
  {
    kind: 'damage',
    component: 'ridge-tile',
    condition: 'cap-loose',
    extent: { kind: 'exactly', count: 6 },
    degree: 'off its bed',
    facet: 'A',
    observation:
      'Six ridge tiles in a row on the main ridge are off their mortar bed and turned to different sides. Mortar below is broken into pieces, some missing. The caps rock and lift with one hand.',
    measurements: [
      { what: 'gap-in', value: 1.1, by: 'instrument', instrument: SCALE, note: 'largest gap between cap and bed' },
      { what: 'length-ft', value: 7, by: 'instrument', instrument: TAPE },
      { what: 'fasteners-per-tile', value: 0, by: 'eye', note: 'no nail, screw or clip seen in these caps' },
    ],
    cause: {
      cause: 'undetermined',
      indicatorsSeen: [
        'a whole run of neighbouring caps',
        'highest line of the roof',
        'some broken mortar faces light in colour',
      ],
      indicatorsLookedForNotSeen: ['caps fallen down the slope', 'mechanical fixing pulled out'],
      otherExplanations: [
        { explanation: 'Old thin mortar with nothing else holding the caps', whyLessLikely: '' },
        {
          explanation: 'Caps lifted by hand by whoever left the chalk marks',
          whyLessLikely: 'Nothing known about that visit.',
        },
      ],
      note: 'Consistent with wind; also consistent with mortar that had let go earlier. Cause not determined by this survey.',
    },
    consequences: ['water-path-possible', 'fall-hazard-to-people-below'],
    pin: { kind: 'line', points: looseStretch('ridge-loose') },
    placeWords: 'Main ridge, from above the right side of the entry to the middle',
    urgent: true,
    photos: [
      ['facet-A', 'overview'],
      ['ridge-loose-mid', 'mid'],
      ['ridge-loose-close', 'close'],
      ['ridge-loose-scale', 'scale'],
    ],
    lookedAt: {
      debris: 'None.',
      fastener: 'None found in the caps; the board below could not be seen.',
      fractureFace: 'Mixed: some faces light, some dark with growth.',
      bedding: 'Mortar adheres to the tiles below, not to the caps.',
      footTraffic: 'Nobody needs to walk the ridge to reach the vents.',
    },
    temporaryMeasure: 'Caps set back on the ridge by hand, not fixed.',
    noteKeys: ['consistent-with'],
  },
  {
    kind: 'earlier-repair',
    component: 'field-tile',
    condition: 'prior-repair',
    extent: { kind: 'exactly', count: 9 },
    degree: 'holds',
    facet: 'A',
    observation:
      'Nine tiles in one group, redder and cleaner than their neighbours, same profile. They lie tight and in line.',
    cause: {
      cause: 'earlier-repair',
      indicatorsSeen: ['shade differs', 'one closed group', 'owner tells of a repair in 2017'],
      note: 'Recorded so that it is not taken for new work or new damage.',
    },
    consequences: [],
    pin: { kind: 'area', points: around('replaced', 'replaced') },
    placeWords: 'Front slope, below the ridge, right of the middle',
    photos: [['replaced-mid', 'mid']],
    lookedAt: { fastener: 'Not opened.' },
  },
  {
    kind: 'damage',
    component: 'field-tile',
    condition: 'crack-to-fastener',
    extent: { kind: 'exactly', count: 2 },
    degree: 'open',
    crackPath: 'to-fastener',
    facet: 'A',
    observation:
      'Two tiles cracked from the nose up towards the right fastener hole. The right piece of the first tile sits lower than the left. Both stay in place.',
    measurements: [
      {
        what: 'crack-length-in',
        value: 13.5,
        by: 'instrument',
        instrument: SCALE,
        note: 'part in view; the rest is under the course above',
      },
      { what: 'crack-width-in', value: 0.1, by: 'eye' },
    ],
    cause: {
      cause: 'undetermined',
      indicatorsSeen: ['crack points to the fastener', 'no growth in the crack'],
      indicatorsLookedForNotSeen: ['raised screw head', 'mark of a blow'],
      otherExplanations: [
        { explanation: 'Fastener driven too deep', whyLessLikely: '' },
        {
          explanation: 'A step near the head of the tile',
          whyLessLikely: 'A step breaks corners and middles more often.',
        },
        { explanation: 'Heat and cold at a tight hole', whyLessLikely: '' },
      ],
      note: 'Consistent with a tile that rocked about its fastener; also consistent with the explanations listed.',
    },
    consequences: ['water-path-possible', 'no-present-leak-seen'],
    pin: { kind: 'point', at: near('crack-fastener', 0, 0, 0) },
    placeWords: 'Front slope, right part; the second is 3 ft right and one course up',
    photos: [
      ['crack-mid', 'mid'],
      ['crack-close', 'scale'],
    ],
    lookedAt: {
      debris: 'None.',
      fastener: 'Screw head felt under the course above, not raised; not seen.',
      fractureFace: 'Light grey, no growth.',
      footTraffic: 'Within a few feet of the way from the ladder to the ridge.',
    },
    noteKeys: ['reading-a-crack'],
  },
  {
    kind: 'damage',
    component: 'field-tile',
    condition: 'lifts-by-hand',
    extent: { kind: 'examples' },
    degree: 'lifts by hand',
    facet: 'A',
    observation:
      'Tiles on the right part of the front slope rise at the nose when pulled. Two of four tested there rose by more than 2 in before the gauge reached 35 lbf; two did not. The tested tiles are examples; the slope was not tested tile by tile.',
    measurements: [
      {
        what: 'lift-in',
        value: 2.75,
        forceLbf: 24,
        by: 'instrument',
        instrument: 'spring gauge with dial',
        note: 'reading 1',
      },
      {
        what: 'lift-in',
        value: 2.5,
        forceLbf: 27,
        by: 'instrument',
        instrument: 'spring gauge with dial',
        note: 'reading 3',
      },
    ],
    cause: {
      cause: 'undetermined',
      indicatorsSeen: ['higher readings near the valley and its corner'],
      indicatorsLookedForNotSeen: ['bright metal at raised screws'],
      otherExplanations: [
        { explanation: 'Never fastened to pattern', whyLessLikely: '' },
        { explanation: 'Holes worn over the years', whyLessLikely: '' },
      ],
      note: 'A lift reading tells how the tile is held today, not since when.',
    },
    consequences: [],
    pin: { kind: 'point', at: near('lift-test', 0, 0, -0.4) },
    placeWords: 'Front slope, left of the valley to the garage',
    photos: [
      ['lift-test-mid', 'test'],
      ['lift-test-close', 'test'],
    ],
    lookedAt: { fastener: 'One screw seen under reading 1, head flush, some rust.' },
    noteKeys: ['hand-lift'],
  },
  {
    kind: 'mark-by-others',
    component: 'field-tile',
    condition: 'other',
    extent: { kind: 'exactly', count: 3 },
    degree: '',
    facet: 'A',
    observation:
      'Three chalk rings on the front slope, one with a tick inside. Found on arrival. The tiles inside the rings show no crack and did not move by hand.',
    cause: { cause: 'not-stated', note: 'Who made the marks, when and why is not known.' },
    pin: { kind: 'point', at: CHALK_MARKS[0].at },
    placeWords: 'Front slope, above the entry wing',
    photos: [
      ['chalk-marks', 'mid'],
      ['facet-A-left', 'overview'],
    ],
  },
  {
    kind: 'damage',
    component: 'field-tile',
    condition: 'missing',
    extent: { kind: 'exactly', count: 2 },
    degree: 'run of units gone',
    facet: 'A',
    observation:
      'Two neighbouring tiles are gone near the left hip. The tile above the left gap has slipped about an inch. No pieces on the roof or in the gutter below.',
    measurements: [{ what: 'slip-in', value: 1.1, by: 'instrument', instrument: TAPE, note: 'tile above the gap' }],
    cause: {
      cause: 'undetermined',
      indicatorsSeen: ['near the hip', 'loose hip caps on the same line'],
      indicatorsLookedForNotSeen: ['pieces of these tiles', 'screws left standing in the batten'],
      otherExplanations: [
        {
          explanation: 'Taken off by someone, for instance to look below',
          whyLessLikely: 'Not known; chalk marks show that somebody was on the roof.',
        },
        {
          explanation: 'Fallen earlier from worn holes',
          whyLessLikely: 'Underlayment in the gap shows little fading.',
        },
      ],
      note: 'Consistent with wind. The owner reports pieces on the lawn; they were not seen. Cause not determined by this survey.',
    },
    consequences: ['opening-exposed', 'water-path-possible'],
    pin: { kind: 'area', points: around('missing', 'missing') },
    placeWords: 'Front slope, above the left edge of the entry wing, near the hip',
    urgent: true,
    photos: [
      ['facet-A-left', 'overview'],
      ['missing-mid', 'mid'],
      ['missing-close', 'close'],
    ],
    lookedAt: {
      debris: 'None on the roof.',
      fastener: 'No screw found where the tiles were; felt for under the course above.',
      footTraffic: 'No route crosses here.',
    },
    temporaryMeasure:
      "Gap covered with two tiles from the owner's garage, laid loose and weighted, after the pictures.",
    noteKeys: ['tile-and-underlayment'],
  },
  {
    kind: 'damage',
    component: 'underlayment',
    condition: 'underlayment-exposed',
    extent: { kind: 'area', areaSqFt: 2.3 },
    degree: 'in view, whole',
    facet: 'A',
    observation:
      'Mineral-faced underlayment bare where the two tiles are missing. No tear, hole or split seen in the bare part. Heads of the course below in view, one screw in each that can be seen.',
    measurements: [{ what: 'area-sqft', value: 2.3, by: 'eye', note: 'two tiles of 12 in by 13 1/2 in' }],
    cause: { cause: 'not-stated', note: 'Bare since the tiles went; see the finding before.' },
    consequences: ['opening-exposed', 'no-present-leak-seen'],
    pin: { kind: 'point', at: near('missing', 0, 0.5, 0) },
    placeWords: 'In the gap of the two missing tiles',
    urgent: true,
    photos: [['missing-close', 'close']],
    temporaryMeasure: 'Covered, see the finding before.',
    noteKeys: ['tile-and-underlayment'],
  },
  {
    kind: 'sound',
    component: 'field-tile',
    condition: 'sound',
    extent: { kind: 'whole-facet' },
    degree: 'fair',
    facet: 'D',
    observation:
      'Walked. No broken, slipped or loose tile found; hip and ridge caps of the entry wing sit tight. One tile tested for comparison rose 1/4 in at 35 lbf.',
    cause: { cause: 'not-stated' },
    placeWords: 'Entry wing, right side',
    photos: [['facet-D', 'overview']],
  },
]
