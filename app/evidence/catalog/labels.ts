import type { z } from 'zod'
import type { coveringClassSchema, inspectionMethodSchema, lossCauseSchema } from '../../job/sheet.ts'
import type { consequenceSchema, crackPathSchema, FindingKind } from '../finding.ts'
import type { LookedAtKey } from './entries.ts'
import type { PhotoRole } from './keys.ts'

export const photoRoleLabels = {
  overview: 'Overview',
  mid: 'Mid view',
  close: 'Close-up',
  scale: 'Close-up with scale',
  test: 'Test',
  elevation: 'Side of the house',
  document: 'Document',
  other: 'Other',
} as const satisfies Record<PhotoRole, string>

export const findingKindLabels = {
  damage: 'Damage',
  sound: 'Sound',
  wear: 'Wear or maintenance',
  'earlier-repair': 'Earlier repair',
  installation: 'Installation',
  'mark-by-others': 'Mark left by others',
  'not-accessible': 'Not accessible',
} as const satisfies Record<FindingKind, string>

export const consequenceLabels = {
  'opening-exposed': 'opening exposed',
  'water-path-possible': 'water path possible',
  'no-present-leak-seen': 'no present leak seen',
  'fall-hazard-to-people-below': 'may fall on people below',
} as const satisfies Record<z.output<typeof consequenceSchema>, string>

export const crackPathLabels = {
  'to-fastener': 'to the fastener',
  corner: 'across a corner',
  'side-lock': 'along the side lock',
  'full-width': 'over the full width',
  'full-length': 'over the full length',
  diagonal: 'diagonal',
} as const satisfies Record<z.output<typeof crackPathSchema>, string>

/** The questions that a reader will ask, and how their answers are headed. */
export const lookedAtLabels = {
  debris: { question: 'Was debris found?', heading: 'Debris' },
  fastener: { question: 'Was the fastener seen, and in what state?', heading: 'Fastener' },
  fractureFace: { question: 'Is the broken face fresh, and why is it thought so?', heading: 'Broken face' },
  bedding: { question: 'How large was the bedding or contact area?', heading: 'Bedding or contact' },
  footTraffic: { question: 'Is a walking line near?', heading: 'Foot traffic near by' },
} as const satisfies Record<LookedAtKey, { readonly question: string; readonly heading: string }>

export const coveringLabels = {
  'concrete-tile': 'Concrete tile',
  'clay-tile': 'Clay tile',
  'asphalt-shingle': 'Asphalt shingle',
  'metal-panel': 'Metal panel',
  other: 'Other covering',
  'not-stated': 'Not stated',
} as const satisfies Record<z.output<typeof coveringClassSchema>, string>

export const inspectionMethodLabels = {
  walked: 'walked on the roof',
  'from-ladder': 'from a ladder',
  'from-ground': 'from the ground',
  'by-drone': 'by drone',
} as const satisfies Record<z.output<typeof inspectionMethodSchema>, string>

export const lossCauseLabels = {
  wind: 'Wind',
  hail: 'Hail',
  'fallen-object': 'Fallen object',
  fire: 'Fire',
  other: 'Other',
  'not-stated': 'Not stated',
} as const satisfies Record<z.output<typeof lossCauseSchema>, string>
