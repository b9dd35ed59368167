import { z } from 'zod'
import { facetIdSchema, findingIdSchema, photoIdSchema, narrationIdSchema } from '../job/ids.ts'
import { planPointSchema } from '../job/places.ts'
import { causeKeySchema, componentKeySchema, conditionKeySchema, photoRoleSchema } from './catalog/keys.ts'

const words = (max = 2000) => z.string().max(max).default('')
const count = z.number().int().positive().max(1_000_000)

/** What sort of statement a finding is. "Sound" is evidence too. */
export const findingKindSchema = z.enum([
  'damage',
  'sound',
  'wear',
  'earlier-repair',
  'installation',
  'mark-by-others',
  'not-accessible',
])
export type FindingKind = z.output<typeof findingKindSchema>

/** How much of it there is, said as honestly as it was seen. Totals add only `exactly`. */
export const extentSchema = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('exactly'), count }),
  z.object({ kind: z.literal('at-least'), count }),
  z.object({ kind: z.literal('about'), count }),
  z.object({ kind: z.literal('several') }),
  z.object({ kind: z.literal('examples') }),
  z.object({ kind: z.literal('whole-facet') }),
  z.object({ kind: z.literal('length'), lengthFt: z.number().positive().max(100_000) }),
  z.object({ kind: z.literal('area'), areaSqFt: z.number().positive().max(10_000_000) }),
  z.object({ kind: z.literal('not-stated') }),
])
export type Extent = z.output<typeof extentSchema>

export const measureKeySchema = z.enum([
  'lift-in',
  'slip-in',
  'crack-length-in',
  'crack-width-in',
  'gap-in',
  'bared-exposure-in',
  'fastener-raised-in',
  'fasteners-per-tile',
  'hole-width-in',
  'pad-length-in',
  'pad-width-in',
  'moisture-percent',
  'size-in',
  'length-ft',
  'area-sqft',
])
export type MeasureKey = z.output<typeof measureKeySchema>

export const crackPathSchema = z.enum(['to-fastener', 'corner', 'side-lock', 'full-width', 'full-length', 'diagonal'])

/** A measured value: what, how much, and by what. The unit is part of the key. */
export const measurementSchema = z.object({
  what: measureKeySchema,
  value: z.number().min(0).max(100_000),
  /** Force at which a lift was read, where one was. */
  forceLbf: z.number().min(0).max(1000).nullable().default(null),
  by: z.enum(['instrument', 'hand', 'eye']),
  instrument: words(200),
  note: words(400),
})
export type Measurement = z.output<typeof measurementSchema>

/** An opinion on cause, kept apart from what was observed. */
export const causeOpinionSchema = z.object({
  cause: causeKeySchema.default('not-stated'),
  indicatorsSeen: z.array(z.string().min(1).max(400)).max(40).default([]),
  indicatorsLookedForNotSeen: z.array(z.string().min(1).max(400)).max(40).default([]),
  otherExplanations: z
    .array(z.object({ explanation: z.string().min(1).max(400), whyLessLikely: words(1000) }))
    .max(40)
    .default([]),
  note: words(4000),
})
export type CauseOpinion = z.output<typeof causeOpinionSchema>

export const consequenceSchema = z.enum([
  'opening-exposed',
  'water-path-possible',
  'no-present-leak-seen',
  'fall-hazard-to-people-below',
])

/** Where the finding is on the plan. */
export const pinSchema = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('point'), at: planPointSchema }),
  z.object({ kind: z.literal('line'), points: z.array(planPointSchema).min(2).max(200) }),
  z.object({ kind: z.literal('area'), points: z.array(planPointSchema).min(3).max(200) }),
])
export type Pin = z.output<typeof pinSchema>

/** Answers to the questions an adjuster will ask; each is an observation and is printed. Empty means "not looked at". */
export const lookedAtSchema = z.object({
  debris: words(1000),
  fastener: words(1000),
  fractureFace: words(1000),
  bedding: words(1000),
  footTraffic: words(1000),
})
export type LookedAt = z.output<typeof lookedAtSchema>

/** One thing found on the roof. */
export const findingSchema = z.object({
  id: findingIdSchema,
  /** Given once, never reused: F-12 stays F-12. */
  number: z.number().int().positive(),
  kind: findingKindSchema,
  component: componentKeySchema,
  condition: conditionKeySchema,
  extent: extentSchema.default({ kind: 'not-stated' }),
  /** One of the catalog's graded words for the condition, or empty. */
  degree: words(120),
  observation: words(8000),
  crackPath: crackPathSchema.nullable().default(null),
  measurements: z.array(measurementSchema).max(100).default([]),
  cause: causeOpinionSchema.prefault({}),
  consequences: z.array(consequenceSchema).max(10).default([]),
  facetId: facetIdSchema.nullable().default(null),
  pin: pinSchema.nullable().default(null),
  placeWords: words(400),
  photos: z
    .array(z.object({ photoId: photoIdSchema, role: photoRoleSchema }))
    .max(200)
    .default([]),
  lookedAt: lookedAtSchema.prefault({}),
  showsPoorly: z.boolean().default(false),
  temporaryMeasure: words(1000),
  urgent: z.boolean().default(false),
  /** Cues of narration in which it was spoken of. */
  spoken: z
    .array(z.object({ narrationId: narrationIdSchema, cue: z.number().int().nonnegative() }))
    .max(200)
    .default([]),
  noteKeys: z.array(z.string().min(1).max(60)).max(20).default([]),
})
export type Finding = z.output<typeof findingSchema>

/** "F-12": how people name a finding. */
export function findingLabel(number: number): string {
  return `F-${number}`
}
