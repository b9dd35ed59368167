import { z } from 'zod'

/** Editions of ASCE 7 whose zone figures differ. */
export const windEditionSchema = z.enum(['7-10', '7-16', '7-22'])
export type WindEdition = z.output<typeof windEditionSchema>

/** Parts of a roof that wind works on differently, in plain words. They are the areas that a sample is taken from. */
export type Zone = 'field' | 'edge' | 'corner' | 'ridge'

/**
 * What lies along or at what. Corners are named by the two edges that meet in them; `other-corner` is where two outer
 * edges meet in another way, such as two rakes.
 */
export const zoneParts = [
  'eave-rake-corner',
  'eave-corner',
  'ridge-rake-corner',
  'other-corner',
  'eave',
  'rake',
  'top-edge',
  'ridge',
  'hip',
  'field',
] as const
export type ZonePart = (typeof zoneParts)[number]

/** The plain zone of each part. */
export const zoneOfPart = {
  'eave-rake-corner': 'corner',
  'eave-corner': 'corner',
  'ridge-rake-corner': 'corner',
  'other-corner': 'corner',
  eave: 'edge',
  rake: 'edge',
  'top-edge': 'edge',
  ridge: 'ridge',
  hip: 'ridge',
  field: 'field',
} as const satisfies Readonly<Record<ZonePart, Zone>>

/** Roofs that the editions draw figures for: ridges and rakes without hips, or hips without rakes. */
export type RoofFigure = 'gable' | 'hip'

/** The edition's zone number of a part of a roof, or a sentence that says why there is none. */
export type ZoneNumber =
  | { readonly kind: 'given'; readonly number: string; readonly status: string }
  | { readonly kind: 'not-built-in'; readonly sentence: string }

type Numbers = Readonly<Partial<Record<ZonePart, string>>>

/** Steepest hip slope at which ASCE 7-10 counts corners as edges. */
const HIP_CORNER_LIMIT_DEG = 25

/** Slopes that the figures for gable and hip roofs cover, degrees: above the first, up to the second. */
export const slopesDrawnDeg = { above: 7, upTo: 45 } as const

const COMPARE = 'Compare it with the printed standard before relying on it.'

const NUMBERS = {
  '7-10': {
    gable: { field: '1', eave: '2', rake: '2', ridge: '2', 'eave-rake-corner': '3', 'ridge-rake-corner': '3' },
    hip: { field: '1', eave: '2', ridge: '2', hip: '2' },
  },
  '7-16': {
    gable: { field: '1', eave: '2e', rake: '2n', ridge: '2r', 'eave-rake-corner': '3e', 'ridge-rake-corner': '3r' },
    hip: { field: '1', eave: '2e', ridge: '2r', hip: '2r', 'eave-corner': '3' },
  },
} as const satisfies Readonly<Record<'7-10' | '7-16', Readonly<Record<RoofFigure, Numbers>>>>

const STATUS = {
  '7-10': `Zone numbers and the note on hips as restated from the ASCE 7-02 figure; the layout is from memory of ASCE 7-10 Fig. 30.4-2. ${COMPARE}`,
  '7-16': `Zone numbers from a county tile worksheet; the layout is from memory of ASCE 7-16 Fig. 30.3-2. ${COMPARE}`,
} as const

/**
 * The zone number that an edition prints for a part of a gable or hip roof. Where the edition's figure was not seen, or
 * the roof is neither, no number is guessed.
 *
 * ASCE 7-10: 1 interior, 2 along eaves, rakes, ridges and hips, 3 at corners; on hip roofs of up to 25 degrees zone 3
 * counts as zone 2. ASCE 7-16: 2e, 2n, 2r, 3e, 3r on gable roofs; 2e, 2r, 3 on hip roofs. ASCE 7-22: three zones, figures
 * not seen. `status` says how far each is confirmed.
 */
export function zoneNumber(
  edition: WindEdition,
  roof: { readonly figure: RoofFigure | null; readonly slopeDeg: number },
  part: ZonePart,
): ZoneNumber {
  if (edition === '7-22') return notBuiltIn(edition, 'gable and hip roofs', 'It has three zones drawn by slope.')
  if (roof.figure === null) {
    return notBuiltIn(edition, 'a roof that is neither all gables nor all hips', 'Its figures show one or the other.')
  }
  const status = STATUS[edition]
  if (edition === '7-10' && roof.figure === 'hip' && part === 'eave-corner') {
    return roof.slopeDeg <= HIP_CORNER_LIMIT_DEG
      ? { kind: 'given', number: '2', status }
      : notBuiltIn(edition, 'corners of hip roofs steeper than 25 degrees', 'Up to 25 degrees they count as zone 2.')
  }
  const numbers: Numbers = NUMBERS[edition][roof.figure]
  const number = numbers[part]
  return number === undefined
    ? notBuiltIn(edition, PART_WORDS[part], `The figure for a ${roof.figure} roof has none.`)
    : { kind: 'given', number, status }
}

/** What a part is called in a sentence. */
const PART_WORDS = {
  'eave-rake-corner': 'a corner of eave and rake',
  'eave-corner': 'a corner of two eaves',
  'ridge-rake-corner': 'the end of a ridge at a rake',
  'other-corner': 'a corner like this',
  eave: 'an eave',
  rake: 'a rake',
  'top-edge': 'the high edge of a slope with nothing behind it',
  ridge: 'a ridge',
  hip: 'a hip',
  field: 'the field',
} as const satisfies Readonly<Record<ZonePart, string>>

function notBuiltIn(edition: WindEdition, what: string, why: string): ZoneNumber {
  return {
    kind: 'not-built-in',
    sentence: `The ASCE ${edition} zone number for ${what} is not built in. ${why} Take it from the printed edition.`,
  }
}
