import { z } from 'zod'
import { calendarDateSchema } from '../job/calendar.ts'
import { attachmentIdSchema, facetIdSchema, findingIdSchema } from '../job/ids.ts'
import { workShareRuleSchema } from '../rules/rule.ts'
import { azimuthDegSchema } from '../job/places.ts'

const words = (max: number) => z.string().max(max).default('')
const lineId = z.string().min(1).max(64)
const areaSqFt = z.number().min(0, 'An area cannot be negative.').max(10_000_000)
const pieces = z.number().int('Tiles are whole.').min(0, 'A count cannot be negative.').max(1_000_000)
const documents = z.array(attachmentIdSchema).max(50).default([])

/** Wind direction as a person chose it, for jobs in which no station says one; degrees that the wind comes from. */
const windByHandSchema = z.object({ fromDeg: azimuthDegSchema.nullable().default(null), source: words(400) })

/** A part of the roof that a rule on work judges by itself, as a person grouped it. */
export const roofSectionSchema = z.object({
  id: lineId,
  name: z.string().min(1, 'A section needs a name.').max(120),
  facetIds: z.array(facetIdSchema).max(500).default([]),
  /** Day of the permit under which this part was built or last replaced; null when not known. */
  permitDate: calendarDateSchema.nullable().default(null),
  permit: words(200),
})
export type RoofSection = z.output<typeof roofSectionSchema>

/** How much of a facet the proposed work takes. A facet without a line is "not stated". */
export const plannedWorkSchema = z.object({
  facetId: facetIdSchema,
  extent: z.discriminatedUnion('kind', [
    z.object({ kind: z.literal('none') }),
    z.object({ kind: z.literal('whole') }),
    z.object({ kind: z.literal('area'), areaSqFt }),
    /** Tiles to replace and to lift, as counted for repair, times the area of a tile. */
    z.object({ kind: z.literal('tiles') }),
  ]),
})
export type PlannedWork = z.output<typeof plannedWorkSchema>

/** Work of the past under a permit, as the office entered it. */
export const earlierWorkSchema = z.object({
  id: lineId,
  date: calendarDateSchema.nullable().default(null),
  areaSqFt: areaSqFt.nullable().default(null),
  /** A facet of the section that it was done on; null when only the roof is known. */
  facetId: facetIdSchema.nullable().default(null),
  permit: words(200),
  source: words(400),
})
export type EarlierWork = z.output<typeof earlierWorkSchema>

/** What the tiles of a finding need, where that is not what its condition suggests. */
export const treatmentSchema = z.enum(['replace', 'reset', 'leave'])
export type Treatment = z.output<typeof treatmentSchema>

/** Tiles that match and are known to exist. */
export const stockSchema = z.object({
  id: lineId,
  /** Null while nobody has counted them. */
  pieces: pieces.nullable().default(null),
  where: words(300),
  by: words(120),
  on: calendarDateSchema.nullable().default(null),
  note: words(1000),
  attachmentIds: documents,
})
export type Stock = z.output<typeof stockSchema>

/** A search for matching tile: who asked where, when, and the answer. */
export const stockSearchSchema = z.object({
  id: lineId,
  by: words(120),
  where: words(300),
  on: calendarDateSchema.nullable().default(null),
  answer: words(1000),
  attachmentIds: documents,
})
export type StockSearch = z.output<typeof stockSearchSchema>

const percent = z.number().min(0).max(100)

/** What people state for a job's assessment; everything else in it is worked out. */
export const assessmentSchema = z.object({
  wind: windByHandSchema.prefault({}),
  /** The rule on the share of work, as it read when a person chose it; null: nothing is held against any. */
  rule: workShareRuleSchema.nullable().default(null),
  /** Day on which the proposed work would be done or permitted; the months of a rule are counted back from it. */
  workDate: calendarDateSchema.nullable().default(null),
  sections: z.array(roofSectionSchema).max(200).default([]),
  planned: z.array(plannedWorkSchema).max(500).default([]),
  earlier: z.array(earlierWorkSchema).max(200).default([]),
  /** How courses lie over each other, and which neighbour's side lock laps over a tile's own, seen from the eave. */
  bond: z.enum(['straight', 'staggered']).default('straight'),
  lockFrom: z.enum(['left', 'right']).default('left'),
  treatments: z
    .array(z.object({ findingId: findingIdSchema, treatment: treatmentSchema }))
    .max(5000)
    .default([]),
  /** Share of lifted tiles that a person allows for breaking, percent from and to; null until chosen. */
  breakage: z
    .object({ fromPercent: percent, toPercent: percent })
    .refine(({ fromPercent, toPercent }) => fromPercent <= toPercent, 'The lower figure stands first.')
    .nullable()
    .default(null),
  stock: z.array(stockSchema).max(200).default([]),
  searches: z.array(stockSearchSchema).max(200).default([]),
  /** What is known of a profile that is no longer made, and the documents that show it. */
  profile: z.object({ statement: words(2000), attachmentIds: documents }).prefault({}),
})
export type Assessment = z.output<typeof assessmentSchema>

/** An assessment in which nothing is stated yet. */
export function emptyAssessment(): Assessment {
  return assessmentSchema.parse({})
}
