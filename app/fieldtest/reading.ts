import { z } from 'zod'
import { facetIdSchema, findingIdSchema, photoIdSchema, readingIdSchema } from '../job/ids.ts'
import { planPointSchema } from '../job/places.ts'

/** One tile lifted by hand or gauge: how far its nose rose and under what force, as far as each was recorded. */
export const readingSchema = z.object({
  id: readingIdSchema,
  number: z.number().int().positive(),
  facetId: facetIdSchema.nullable().default(null),
  at: planPointSchema.nullable().default(null),
  component: z.string().max(60).default('field-tile'),
  liftIn: z.number().min(0, 'A lift cannot be negative.').max(48).nullable().default(null),
  forceLbf: z.number().min(0, 'A force cannot be negative.').max(1000).nullable().default(null),
  method: z.enum(['by-hand', 'gauge']).default('by-hand'),
  instrument: z.string().max(200).default(''),
  photoIds: z.array(photoIdSchema).max(50).default([]),
  findingId: findingIdSchema.nullable().default(null),
  note: z.string().max(1000).default(''),
})
export type Reading = z.output<typeof readingSchema>
