import type { CallInput } from '../../app/contract/contract.ts'
import { corners } from './outlines.ts'

type Given = CallInput<'outlines.save'>['outline']

/** An outline as a person gives it: corners as text, and the pitch of each edge, 0 for a gable; edges are named e1, e2, ... */
export function aHouse(
  name: string,
  line: string,
  {
    pitches = 6,
    eaveHeightFt = 0,
  }: { readonly pitches?: number | readonly number[]; readonly eaveHeightFt?: number } = {},
): Given {
  return { name, outer: houseRing(line, pitches, 'e'), eaveHeightFt }
}

/** A ring of an outline; its edges are named by a mark and their number. */
export function houseRing(line: string, pitches: number | readonly number[], mark: string): Given['outer'] {
  const ring = corners(line)
  const edges = ring.map((_, index): Given['outer']['edges'][number] => {
    const pitchRise = typeof pitches === 'number' ? pitches : (pitches[index] ?? 0)
    const id = `${mark}${index + 1}`
    return pitchRise === 0 && typeof pitches !== 'number' ? { id, kind: 'gable' } : { id, kind: 'eave', pitchRise }
  })
  return { corners: ring, edges }
}

/** Outlines that have no roof, and what a person is told. */
export const badOutlines: readonly (readonly [what: string, outline: Given, says: RegExp])[] = [
  [
    'crosses itself',
    aHouse('Bow', '0,0 40,30 40,0 0,30'),
    /^Edge 1 meets edge 3 at 20\.0 ft across, 15\.0 ft up\. Move/,
  ],
  ['has no area', aHouse('Line', '0,0 20,0 40,0'), /Edge \d meets edge \d at|covers less than/],
  [
    'has a corner twice',
    aHouse('Twice', '0,0 40,0 40,0 40,30 0,30'),
    /^Edge 2 is shorter than an eighth of an inch: it starts at corner 2, 40\.0 ft across, 0\.0 ft up/,
  ],
  [
    'has an edge of a hundredth of an inch',
    aHouse('Tiny', '0,0 40,0 40.0008,0.0002 40,30 0,30'),
    /^Edge 2 is shorter than an eighth of an inch/,
  ],
  [
    'has a pitch of nothing',
    aHouse('Flat', '0,0 40,0 40,30 0,30', { pitches: 0 }),
    /^Edge 1 has a pitch of 0:12\. Enter/,
  ],
  ['has gables alone', aHouse('Gables', '0,0 40,0 40,30 0,30', { pitches: [0, 0, 0, 0] }), /^Every edge is a gable/],
  [
    'has a courtyard that touches it',
    { ...aHouse('Touch', '0,0 40,0 40,30 0,30'), courtyards: [houseRing('10,10 20,0 30,10', 6, 'c')] },
    /^Edge 1 meets edge [12] of courtyard 1 at 20\.0 ft across, 0\.0 ft up/,
  ],
  [
    'has a courtyard that crosses it',
    { ...aHouse('Cross', '0,0 40,0 40,30 0,30'), courtyards: [houseRing('10,10 20,-5 30,10', 6, 'c')] },
    /^Edge 1 meets edge [12] of courtyard 1 at/,
  ],
  [
    'has a courtyard beside it',
    { ...aHouse('Beside', '0,0 40,0 40,30 0,30'), courtyards: [houseRing('50,10 60,10 60,20 50,20', 6, 'c')] },
    /^Courtyard 1 does not lie in the roof, at 50\.0 ft across, 10\.0 ft up/,
  ],
]

/** Outlines that are unusual and have a roof all the same, and how many facets it has. */
export const unusualOutlines: readonly (readonly [what: string, outline: Given, facets: number])[] = [
  ['runs clockwise', aHouse('Clockwise', '0,0 0,30 40,30 40,0'), 4],
  ['runs counter-clockwise', aHouse('Counter', '0,0 40,0 40,30 0,30'), 4],
  ['is as steep as 30:12', aHouse('Steep', '0,0 40,0 40,30 0,30', { pitches: 30 }), 4],
  ['has walls that are parallel but for a hair', aHouse('Hair', '0,0 40,0 40,30.0000001 0,30'), 4],
  ['has a bend in a wall that nobody sees', aHouse('Bend', '0,0 20,0.000001 40,0 40,30 0,30'), 5],
  ['has an edge of a quarter of an inch', aHouse('Short', '0,0 40,0 40.02,0.005 40,30 0,30'), 5],
]
