import { z } from 'zod'
import { facetIdSchema, findingIdSchema, photoIdSchema, readingIdSchema } from '../job/ids.ts'
import { planPointSchema } from '../job/places.ts'
import { roofAreaSchema } from './roof-area.ts'

/** Where the tile was pulled. */
export const pullPointSchema = z.enum(['nose-middle', 'nose-left', 'nose-right', 'side', 'other', 'not-stated'])
export type PullPoint = z.output<typeof pullPointSchema>

/** Which way it was pulled. */
export const pullDirectionSchema = z.enum(['square-to-slope', 'straight-up', 'not-stated'])
export type PullDirection = z.output<typeof pullDirectionSchema>

/** How the pull ended. */
export const outcomeSchema = z.enum(['held', 'came-loose', 'broke', 'not-stated'])
export type Outcome = z.output<typeof outcomeSchema>

/** Local date and time as it was written down; "2026-11-12T10:40". */
export const writtenTimeSchema = z
  .string()
  .regex(/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}$/, 'Write the time as 2026-11-12 10:40.')

/** One tile lifted by hand or gauge: how far its nose rose and under what force, as far as each was recorded. */
export const readingSchema = z.object({
  id: readingIdSchema,
  number: z.number().int().positive(),
  facetId: facetIdSchema.nullable().default(null),
  at: planPointSchema.nullable().default(null),
  /** Chosen by a person; it counts where the zones of the plan don't say. */
  area: roofAreaSchema.nullable().default(null),
  component: z.string().max(60).default('field-tile'),
  liftIn: z.number().min(0, 'A lift cannot be negative.').max(48).nullable().default(null),
  /** The lift as it was typed where that was in another unit: "57 mm". */
  liftTyped: z.string().max(40).default(''),
  forceLbf: z.number().min(0, 'A force cannot be negative.').max(1000).nullable().default(null),
  /** The force as it was typed where that was in another unit: "155 N". */
  forceTyped: z.string().max(40).default(''),
  method: z.enum(['by-hand', 'gauge']).default('by-hand'),
  pullPoint: pullPointSchema.default('not-stated'),
  pullDirection: pullDirectionSchema.default('not-stated'),
  outcome: outcomeSchema.default('not-stated'),
  /** Name of an instrument that the survey lists, or anything typed. */
  instrument: z.string().max(200).default(''),
  tester: z.string().max(120).default(''),
  takenAt: writtenTimeSchema.nullable().default(null),
  photoIds: z.array(photoIdSchema).max(50).default([]),
  findingId: findingIdSchema.nullable().default(null),
  note: z.string().max(1000).default(''),
})
export type Reading = z.output<typeof readingSchema>
