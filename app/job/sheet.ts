import { z } from 'zod'
import { azimuthDegSchema, geoPointSchema, planPointSchema } from './places.ts'
import { calendarDateSchema, timeZoneSchema } from './calendar.ts'
import { windEditionSchema } from '../roof/zones/edition.ts'

/** Free text a person types into the sheet; empty means "not stated". */
const text = (max = 400) => z.string().max(max).default('')
const positive = (max: number) => z.number().positive().max(max).nullable().default(null)

export const coveringClassSchema = z.enum([
  'concrete-tile',
  'clay-tile',
  'asphalt-shingle',
  'metal-panel',
  'other',
  'not-stated',
])
export type CoveringClass = z.output<typeof coveringClassSchema>

export const lossCauseSchema = z.enum(['wind', 'hail', 'fallen-object', 'fire', 'other', 'not-stated'])
export const inspectionMethodSchema = z.enum(['walked', 'from-ladder', 'from-ground', 'by-drone'])

const datedNoteSchema = z.object({
  date: calendarDateSchema.nullable().default(null),
  reference: text(120),
  description: text(2000),
})

const contactSchema = z.object({ role: text(80), name: text(120), phone: text(60), email: text(200) })

/** What the office knows about the house, the people, the loss and the roof. Every field may be missing; the sheet says which. */
export const jobSheetSchema = z.object({
  property: z
    .object({
      address: text(400),
      city: text(120),
      region: text(120),
      postalCode: text(20),
      /** Where the house stands, when known; also the plan's default anchor. */
      position: geoPointSchema.nullable().default(null),
      /** IANA time zone name; empty means "by position". */
      timeZone: timeZoneSchema.or(z.literal('')).default(''),
      /** Direction that the front of the house faces. */
      frontAzimuthDeg: azimuthDegSchema.nullable().default(null),
      /** Where the front door is on the plan, when somebody marked it. */
      doorAt: planPointSchema.nullable().default(null),
      storeys: positive(20),
      meanRoofHeightFt: positive(500),
      /** Least horizontal dimension of the building between its walls; null: taken from the plan. */
      leastWidthFt: positive(2000),
      /** Edition of the wind standard, ASCE 7, that the job goes by; null when not stated. */
      windEdition: windEditionSchema.nullable().default(null),
    })
    .prefault({}),
  owner: z.object({ name: text(200), phone: text(60), email: text(200) }).prefault({}),
  insurance: z.object({ insurer: text(200), policyNumber: text(80), claimNumber: text(80) }).prefault({}),
  loss: z
    .object({
      date: calendarDateSchema.nullable().default(null),
      cause: lossCauseSchema.default('not-stated'),
      description: text(4000),
    })
    .prefault({}),
  inspection: z
    .object({
      dates: z.array(calendarDateSchema).max(40).default([]),
      method: z.array(inspectionMethodSchema).default([]),
      weather: text(1000),
      inspector: text(200),
      inspectorLicence: text(120),
      /** Marks, tarps or chalk found on arrival, left by others. */
      marksOnArrival: text(4000),
      /** The inspector's own opinion of the roof as a whole, in their words. */
      overallOpinion: text(8000),
    })
    .prefault({}),
  covering: z
    .object({
      class: coveringClassSchema.default('not-stated'),
      profile: text(200),
      colour: text(200),
      /** Length of tile or shingle left bare, measured up the slope. */
      exposureIn: positive(60),
      /** Width that one piece covers, side lap taken off. */
      coverWidthIn: positive(600),
      headlapIn: positive(30),
      /** Allowance for waste, in percent of what was measured, chosen by a person. It is never added to measured figures. */
      wastePercent: z.number().min(0).max(100).nullable().default(null),
      installedYear: z.number().int().min(1500).max(2200).nullable().default(null),
      fastening: text(400),
      underlayment: text(400),
      deck: text(400),
      /** What is known of matching stock and who searched for it. */
      stockNote: text(2000),
    })
    .prefault({}),
  permits: z.array(datedNoteSchema).max(100).default([]),
  priorRepairs: z.array(datedNoteSchema).max(100).default([]),
  contractor: z
    .object({ name: text(200), licence: text(120), address: text(400), phone: text(60), email: text(200) })
    .prefault({}),
  contacts: z.array(contactSchema).max(100).default([]),
  notes: text(20_000),
})
export type JobSheet = z.output<typeof jobSheetSchema>

/** A sheet on which nothing is filled in yet. */
export function emptyJobSheet(): JobSheet {
  return jobSheetSchema.parse({})
}
