import type { Basis } from './basis.ts'

/** A short plain paragraph that a packet can carry once and findings can refer to. Off unless a finding names it. */
export interface ExplanatoryNote {
  readonly title: string
  readonly paragraphs: readonly string[]
  readonly sources: readonly { readonly words: string; readonly basis: Basis }[]
}

/** In the order in which a packet prints them. */
export const explanatoryNoteKeys = [
  'tile-and-underlayment',
  'reading-a-crack',
  'profile-and-repair',
  'foot-traffic',
  'hand-lift',
  'consistent-with',
] as const
export type ExplanatoryNoteKey = (typeof explanatoryNoteKeys)[number]

export const explanatoryNotes = {
  'tile-and-underlayment': {
    title: 'How tile and underlayment share the work',
    paragraphs: [
      'Lapped tile sheds most of the rain and shields what lies below from sun and blows. It is not watertight: wind-driven rain can pass at laps, locks and broken corners. The underlayment carries off what gets through.',
      'A broken or slipped tile is therefore not by itself a leak, and a dry ceiling does not by itself show that the roof is whole. A bare strip of underlayment ages faster in the sun than a covered one.',
    ],
    sources: [{ words: 'How inspectors usually explain a tile roof', basis: 'common-practice' }],
  },
  'reading-a-crack': {
    title: 'A crack at a fastener and a crack under a footstep',
    paragraphs: [
      'A crack that begins at a nail or screw hole points to strain at the fastener: a tile that rocked, a fastener driven too deep, heat and cold at a tight hole, or a flaw in the tile. A crack across the unsupported middle, or a lost lower corner, points more often to a foot.',
      'The path is one sign among several. The broken face, its dirt, the state of the fastener, debris and walking lines are recorded with each finding so that a reader can weigh them. Published views differ: one holds that tile rarely breaks from wind alone, another that wind can rock and tire tiles that stay in place.',
    ],
    sources: [
      { words: 'Tile industry alliance technical brief 2022-001', basis: 'published' },
      { words: 'Articles by consulting engineers and adjusters; contested', basis: 'published-second-hand' },
      { words: 'Which crack points to what: inspectors’ usual reading', basis: 'common-practice' },
    ],
  },
  'profile-and-repair': {
    title: 'Why the profile matters to a repair',
    paragraphs: [
      'Interlocking tiles fit only tiles of the same profile, length and lock. Single tiles can be exchanged where such tiles can be had, new or from salvage; where none can be found, a repair needs tile from elsewhere on the roof or another way of joining.',
      'Whether stock exists is a fact of supply on the day of the search. It says nothing of how damage came about. The record names who searched, where and when.',
    ],
    sources: [
      {
        words: 'That single tiles can be exchanged: tile industry alliance technical brief 2022-001',
        basis: 'published',
      },
      { words: 'The rest: usual practice in repair', basis: 'common-practice' },
    ],
  },
  'foot-traffic': {
    title: 'Foot traffic and tile',
    paragraphs: [
      'Tile bears a foot best on the lower 3 in, where it rests on the tile below; interlocking edges break under a foot. Broken corners and mid-span cracks along a way to a vent, an antenna or an air unit are often read as footsteps.',
      'An inspection also puts feet on the roof. What was seen on arrival, marks left by others, and whether a broken face looked fresh are recorded for that reason.',
    ],
    sources: [
      { words: 'Home-inspector association training article', basis: 'published' },
      { words: 'Reading of walking lines: inspectors’ usual practice', basis: 'common-practice' },
    ],
  },
  'hand-lift': {
    title: 'What lifting a tile by hand shows, and what it does not',
    paragraphs: [
      'A tile that rises shows that it is not held at that moment. It does not show since when: it may never have been well fastened or bonded, it may have aged, been walked on or repaired, or been loosened by the lifting. Without a record from before the storm, looseness alone cannot be tied to one event.',
      'A hand-lift survey is not a laboratory test and not the Florida protocol for checking new work, which is done by approved agencies, on newly laid tile, with set sample sizes. Pulling can itself break a tile or a bond, so each tile is photographed first, and lift and force are written down together.',
    ],
    sources: [
      {
        words: 'Florida Test Protocols, 2020 edition, field check of tile attachment: purpose and testing agency',
        basis: 'published',
      },
      { words: 'Limits of a hand-lift survey: usual practice', basis: 'common-practice' },
    ],
  },
  'consistent-with': {
    title: 'How to read "consistent with"',
    paragraphs: [
      '"Consistent with" means that what was seen fits a cause. It does not mean that the cause is proved, nor that no other fits; "also consistent with" names the others. "Cause not determined by this survey" means that what was seen does not decide between them.',
      'Observations and measurements stand apart from opinions, so that a reader who comes to another opinion can do so from the same facts.',
    ],
    sources: [{ words: 'This packet’s own use of words', basis: 'common-practice' }],
  },
} as const satisfies Record<ExplanatoryNoteKey, ExplanatoryNote>

/** The note of that key, or null where a finding names one that is not in this list. */
export function explanatoryNote(key: string): ExplanatoryNote | null {
  return isNoteKey(key) ? explanatoryNotes[key] : null
}

function isNoteKey(key: string): key is ExplanatoryNoteKey {
  return Object.hasOwn(explanatoryNotes, key)
}
