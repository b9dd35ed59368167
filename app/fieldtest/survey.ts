import { z } from 'zod'
import { conditionKeySchema } from '../evidence/catalog/keys.ts'
import { facetIdSchema, photoIdSchema } from '../job/ids.ts'
import { planPointSchema } from '../job/places.ts'
import { calendarDateSchema } from '../job/calendar.ts'
import { ownCriterionSchema } from './criteria/criterion.ts'
import { roofAreaSchema } from './roof-area.ts'

const words = (max: number) => z.string().max(max).default('')
const lineId = z.string().min(1).max(64)
const count = z.number().int('Counts are whole numbers.').min(0, 'A count cannot be negative.').max(1_000_000)
const photoIds = z.array(photoIdSchema).max(50).default([])

export const instrumentSchema = z.object({
  id: lineId,
  name: z.string().min(1, 'An instrument needs a name.').max(120),
  serial: words(80),
  calibratedOn: calendarDateSchema.nullable().default(null),
  /** Certificate, or what it was checked against. */
  certificate: words(400),
})
export type Instrument = z.output<typeof instrumentSchema>

/** Tiles checked by hand in one area of one facet. */
export const handCheckSchema = z.object({
  id: lineId,
  facetId: facetIdSchema.nullable().default(null),
  area: roofAreaSchema.nullable().default(null),
  checked: count,
  loose: count,
  /** How many of the checked ones were also pulled with a gauge. */
  tested: count.default(0),
  by: words(120),
  photoIds,
  note: words(1000),
})
export type HandCheck = z.output<typeof handCheckSchema>

/** One square of 10 ft by 10 ft on the slope, everything in it counted by condition. */
export const testSquareSchema = z.object({
  id: lineId,
  facetId: facetIdSchema.nullable().default(null),
  at: planPointSchema.nullable().default(null),
  counts: z
    .array(z.object({ condition: conditionKeySchema, count }))
    .max(40)
    .default([]),
  photoIds,
  note: words(1000),
})
export type TestSquare = z.output<typeof testSquareSchema>

/** Anything else that was tried: moisture, a core, a cut. */
export const otherTestSchema = z.object({
  id: lineId,
  kind: z.enum(['moisture', 'core', 'cut-test', 'other']),
  facetId: facetIdSchema.nullable().default(null),
  text: z.string().min(1, 'Say what was done and found.').max(4000),
  photoIds,
})
export type OtherTest = z.output<typeof otherTestSchema>

/** An approved testing agency's own test. All three fields are needed before the protocol may be named. */
const agencySchema = z.object({ name: words(200), approval: words(200), report: words(200) })

/** A job's field tests apart from its readings: what they are held against, with what, and everything that was counted. */
export const fieldSurveySchema = z.object({
  criterionKey: z.string().max(80).default('hand-lift'),
  ownCriteria: z.array(ownCriterionSchema).max(50).default([]),
  agency: agencySchema.prefault({}),
  /** Resistance of the tile in its product approval, pounds; entered by the office. */
  listedResistanceLbf: z.number().positive().max(1000).nullable().default(null),
  instruments: z.array(instrumentSchema).max(100).default([]),
  checks: z.array(handCheckSchema).max(2000).default([]),
  squares: z.array(testSquareSchema).max(2000).default([]),
  others: z.array(otherTestSchema).max(500).default([]),
})
export type FieldSurvey = z.output<typeof fieldSurveySchema>

/** A survey in which nothing is recorded yet. */
export function emptySurvey(): FieldSurvey {
  return fieldSurveySchema.parse({})
}

/** What is wrong with a hand check's counts, in a sentence; null when they fit together. */
export function handCheckFault({
  checked,
  loose,
  tested,
}: Pick<HandCheck, 'checked' | 'loose' | 'tested'>): string | null {
  if (loose > checked) return `${loose} loose of ${checked} checked can't be. Loose tiles are among those checked.`
  if (tested > checked) return `${tested} pulled of ${checked} checked can't be. Pulled tiles are among those checked.`
  return null
}
