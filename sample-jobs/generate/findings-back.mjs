/** Findings on the left side, the back, the rear wing, the right side and the roof as a whole, in the order of the walk. */
import { PIPES, near, tileCentre, tilesOf } from './damage.mjs'
import { FACETS } from './house-plan.mjs'
import { looseStretch } from './ridge-caps.mjs'

const TAPE = 'steel tape'
const SCALE = '12-inch printed scale'
/** @param {string} name */
const pipe = (name) => PIPES.find((p) => p.name === name)?.at
const rearEnd = FACETS.find((f) => f.letter === 'J')?.outline

/** @type {any[]} */
export const BACK_FINDINGS = [
  {
    kind: 'damage',
    component: 'hip-tile',
    condition: 'cap-loose',
    extent: { kind: 'at-least', count: 3 },
    degree: 'off its bed',
    facet: 'L',
    observation:
      'At least three hip tiles between facets A and L are off their bed and turned. More caps below them sound hollow when tapped and were not lifted.',
    measurements: [
      { what: 'gap-in', value: 1, by: 'eye', note: 'largest gap between cap and bed' },
      { what: 'fasteners-per-tile', value: 0, by: 'eye' },
    ],
    cause: {
      cause: 'undetermined',
      indicatorsSeen: ['on a hip at the left front corner of the roof', 'neighbouring caps'],
      indicatorsLookedForNotSeen: ['caps fallen down the slope'],
      otherExplanations: [
        { explanation: 'Mortar old and thin, caps not fastened', whyLessLikely: '' },
        { explanation: 'Stepped on while crossing the hip', whyLessLikely: 'The easier way across is at the ridge.' },
      ],
      note: 'Consistent with wind; also consistent with aged mortar. Cause not determined by this survey.',
    },
    consequences: ['water-path-possible', 'fall-hazard-to-people-below'],
    pin: { kind: 'line', points: looseStretch('hip-loose') },
    placeWords: 'Left front hip, middle third',
    urgent: true,
    photos: [
      ['hip-loose-mid', 'mid'],
      ['hip-loose-close', 'close'],
    ],
    lookedAt: {
      fastener: 'None seen in the caps.',
      bedding: 'Mortar in pieces; some left on the caps.',
      fractureFace: 'Light on some pieces, dark on others.',
      debris: 'None.',
    },
    temporaryMeasure: 'Caps set back by hand, not fixed.',
    noteKeys: ['consistent-with'],
  },
  {
    kind: 'damage',
    component: 'field-tile',
    condition: 'lifts-by-hand',
    extent: { kind: 'several' },
    degree: 'lifts by hand',
    facet: 'L',
    observation:
      'Several tiles on the rear half of the left side rise at the nose under one hand; not counted. One was propped for the picture.',
    measurements: [
      { what: 'lift-in', value: 2.25, by: 'hand', note: 'reading 5, no force read; height taken from the scale' },
    ],
    cause: { cause: 'not-stated', note: '' },
    consequences: [],
    pin: { kind: 'point', at: near('lift-left', 0, 0, -0.4) },
    placeWords: 'Left side, rear half, lower courses',
    photos: [
      ['lift-left-scale', 'test'],
      ['facet-L', 'overview'],
    ],
    showsPoorly: true,
    noteKeys: ['hand-lift'],
  },
  {
    kind: 'damage',
    component: 'field-tile',
    condition: 'slipped',
    extent: { kind: 'exactly', count: tilesOf('slipped').length },
    degree: 'headlap lost',
    facet: 'L',
    observation:
      'Three tiles have slipped down the slope and sit askew. Their heads and the old screw holes in them are bare. No screw in the holes that could be seen; rust stain round two of them. The strip that the course above used to cover is lighter than the rest.',
    measurements: [
      { what: 'slip-in', value: 4.2, by: 'instrument', instrument: SCALE, note: 'largest' },
      { what: 'slip-in', value: 3.6, by: 'instrument', instrument: TAPE },
      { what: 'slip-in', value: 3.4, by: 'instrument', instrument: TAPE },
      {
        what: 'bared-exposure-in',
        value: 1.2,
        by: 'instrument',
        instrument: SCALE,
        note: 'open above the head of the largest',
      },
    ],
    cause: {
      cause: 'undetermined',
      indicatorsSeen: ['bared strip light, not weathered', 'three within a few feet'],
      indicatorsLookedForNotSeen: ['bent or freshly broken screws', 'dirt line at the old place of the nose'],
      otherExplanations: [
        {
          explanation: 'Screws rusted through near the coast, tiles crept',
          whyLessLikely: 'Bared strip looks newly bared; the rust round the holes speaks for it.',
        },
        { explanation: 'Walked on', whyLessLikely: 'No route crosses this slope.' },
      ],
      note: 'Consistent with wind on tiles whose screws had rusted; also consistent with rust alone. Cause not determined by this survey.',
    },
    consequences: ['water-path-possible', 'opening-exposed'],
    pin: { kind: 'point', at: tileCentre(tilesOf('slipped')[0]) },
    placeWords: 'Left side, middle of the slope',
    urgent: true,
    photos: [
      ['facet-L', 'overview'],
      ['slipped-mid', 'mid'],
      ['slipped-scale', 'scale'],
    ],
    lookedAt: {
      debris: 'None.',
      fastener: 'No screw in the bared holes; rust stain at two.',
      bedding: 'Batten lugs whole where felt.',
      fractureFace: 'No broken face.',
      footTraffic: 'No route to equipment crosses here.',
    },
    temporaryMeasure: 'Slid back under the course above after the pictures, not fastened.',
  },
  {
    kind: 'damage',
    component: 'field-tile',
    condition: 'corner-break',
    extent: { kind: 'about', count: 5 },
    degree: 'corner gone, lap lost',
    crackPath: 'corner',
    facet: 'H',
    observation:
      'About five tiles with the lower right corner broken off, in a loose line between the two vents and the eave. Pieces of some lie on the tile below. Counted while walking, not marked one by one.',
    measurements: [
      { what: 'size-in', value: 4.5, by: 'instrument', instrument: SCALE, note: 'largest corner, along the nose' },
    ],
    cause: {
      cause: 'foot-traffic',
      indicatorsSeen: ['lower corners', 'on the way between vents and eave', 'some broken faces dark'],
      indicatorsLookedForNotSeen: ['chip or star at a point of strike', 'foreign object'],
      otherExplanations: [
        {
          explanation: 'Struck by flying pieces',
          whyLessLikely: 'No strike mark, and the line follows a walking way.',
        },
        { explanation: 'Handling when the tiles were laid', whyLessLikely: 'Pieces still lie beside some.' },
      ],
      note: 'In my opinion consistent with foot traffic over the years, not all at one time.',
    },
    consequences: ['no-present-leak-seen'],
    pin: { kind: 'point', at: tileCentre(tilesOf('corners')[2]) },
    placeWords: 'Back slope, middle, between vents and eave',
    photos: [
      ['facet-H', 'overview'],
      ['corners-mid', 'mid'],
      ['corner-close', 'scale'],
    ],
    lookedAt: {
      debris: 'Own pieces only.',
      fractureFace: 'Two light, the others dark.',
      footTraffic: 'Vents, two pipes and the former dish place lie on this slope.',
      fastener: 'Not seen.',
    },
    noteKeys: ['foot-traffic'],
  },
  {
    kind: 'wear',
    component: 'pipe-penetration',
    condition: 'mortar-cracked-at-pipe',
    extent: { kind: 'exactly', count: 2 },
    degree: 'open',
    facet: 'H',
    observation:
      'Mortar collars at both pipes of the back slope are cracked through in several places and stand off the pipe. Growth on the mortar.',
    measurements: [{ what: 'gap-in', value: 0.3, by: 'eye', note: 'between mortar and the right pipe' }],
    cause: {
      cause: 'age-and-weather',
      indicatorsSeen: ['growth on mortar and in cracks', 'both pipes alike'],
      indicatorsLookedForNotSeen: ['pipe out of plumb'],
      otherExplanations: [{ explanation: 'Pipe moved', whyLessLikely: 'Both stand plumb.' }],
      note: 'Consistent with shrinkage and age.',
    },
    consequences: ['water-path-possible', 'no-present-leak-seen'],
    pin: { kind: 'point', at: pipe('pipe-H-1') },
    placeWords: 'Back slope; the second pipe is left of it, nearer the ridge',
    photos: [
      ['pipe-1-mid', 'mid'],
      ['pipe-1-close', 'close'],
      ['pipe-2-close', 'close'],
    ],
    lookedAt: { bedding: 'Flashing below the mortar not seen.', fractureFace: 'Grey with growth.' },
  },
  {
    kind: 'not-accessible',
    component: 'field-tile',
    condition: 'not-accessible',
    extent: { kind: 'whole-facet' },
    degree: 'in part',
    facet: 'J',
    observation:
      'Not walked. Growth and wet tiles in the shade. Seen from the ladder at the right corner; no missing tile seen from there. Cracks and loose tiles can not be ruled out.',
    cause: { cause: 'not-stated' },
    pin: { kind: 'area', points: rearEnd },
    placeWords: 'Rear wing, end',
    photos: [['facet-J', 'overview']],
  },
  {
    kind: 'damage',
    component: 'sidelap',
    condition: 'lock-broken',
    extent: { kind: 'exactly', count: 3 },
    degree: 'part gone',
    crackPath: 'side-lock',
    facet: 'G',
    observation:
      'Three tiles with a strip of the right side lock broken off from the nose upward. The strips lie in the joint.',
    measurements: [
      { what: 'crack-length-in', value: 7, by: 'instrument', instrument: SCALE, note: 'the one in the close picture' },
    ],
    cause: {
      cause: 'undetermined',
      indicatorsSeen: ['strips still in place'],
      indicatorsLookedForNotSeen: ['upward lip at the break'],
      otherExplanations: [
        { explanation: 'A step on the lock', whyLessLikely: '' },
        {
          explanation: 'Tiles laid tight with no room to move in heat',
          whyLessLikely: 'Joints are open by about 1/8 in.',
        },
      ],
      note: 'Cause not determined by this survey.',
    },
    consequences: ['water-path-possible', 'no-present-leak-seen'],
    pin: { kind: 'point', at: near('locks', 1, 0.4, -0.3) },
    placeWords: 'Right side, between garage and main house',
    photos: [
      ['facet-G', 'overview'],
      ['locks-mid', 'mid'],
      ['lock-close', 'scale'],
    ],
    lookedAt: {
      debris: 'None.',
      fractureFace: 'Light, thin; too small to judge.',
      footTraffic: 'Within six feet of the pipe on this slope.',
    },
  },
  {
    kind: 'sound',
    component: 'pipe-penetration',
    condition: 'sound',
    extent: { kind: 'exactly', count: 1 },
    degree: 'good',
    facet: 'G',
    observation: 'Mortar at the pipe on the right side is whole and tight to pipe and tile.',
    cause: { cause: 'not-stated' },
    pin: { kind: 'point', at: pipe('pipe-G-1') },
    placeWords: 'Right side, upper part',
    photos: [['pipe-G-close', 'close']],
    lookedAt: { bedding: 'No gap at the pipe; a thin feeler did not enter.' },
  },
  {
    kind: 'installation',
    component: 'field-tile',
    condition: 'discontinued-profile',
    extent: { kind: 'not-stated' },
    degree: 'salvage only',
    facet: null,
    observation:
      'The profile of the field tiles is no longer made according to the supplier asked. The nine tiles of the earlier repair have the same profile in another shade. About 40 used tiles that may fit were offered by one yard; they have not been laid beside these.',
    cause: { cause: 'not-stated', note: 'A matter of supply, not of damage.' },
    placeWords: 'All facets',
    photos: [['replaced-mid', 'mid']],
    noteKeys: ['profile-and-repair'],
  },
]
