import { z } from 'zod'
import { edgeIdSchema, facetIdSchema, outlineIdSchema } from '../job/ids.ts'
import { azimuthDegSchema, planPointSchema } from '../job/places.ts'
import { edgeByHandSchema } from './edge-by-hand.ts'

/** Pitch as the trade writes it: inches of rise in 12 inches of run. 0 is flat; above 36 is a wall, not a roof. */
export const pitchRiseSchema = z
  .number()
  .min(0, 'A pitch cannot be negative.')
  .max(36, 'A pitch above 36:12 is not a roof slope.')

/** How much of a facet was looked at, and why not all of it. */
export const inspectedShareSchema = z.object({
  percent: z.number().min(0).max(100).nullable().default(null),
  note: z.string().max(1000).default(''),
})

/** What a person set by hand on a facet that otherwise follows its outline. */
const handSetSchema = z.enum(['outline', 'pitchRise', 'downslopeAzimuthDeg'])
export type HandSet = z.output<typeof handSetSchema>

/** One plane of the roof: its plan outline, pitch and the direction its water runs. */
export const facetSchema = z.object({
  id: facetIdSchema,
  /** Short label on plans and captions: A, B, ... */
  letter: z
    .string()
    .min(1)
    .max(4)
    .regex(/^[\p{L}\p{N}]+$/u, 'A facet label has only letters and digits.'),
  /** Plain name, such as "front, left of the door"; may be empty. */
  name: z.string().max(120).default(''),
  outline: z.array(planPointSchema).min(3, 'A facet needs at least three corners.').max(400),
  pitchRise: pitchRiseSchema,
  /** The direction that the slope faces, downhill. */
  downslopeAzimuthDeg: azimuthDegSchema,
  inspected: inspectedShareSchema.prefault({}),
  /** The outline's edge that this facet rises from, and its height, feet; null when the facet was drawn by itself. */
  from: z
    .object({ outlineId: outlineIdSchema, edgeId: edgeIdSchema, eaveHeightFt: z.number().optional() })
    .nullable()
    .default(null),
  /** Fields that stay as a person set them when the outline changes. */
  setByHand: z.array(handSetSchema).max(3).default([]),
  /** Edges whose kind a person has stated. Left out when there are none. */
  edgesByHand: z.array(edgeByHandSchema).max(100).optional(),
})
export type Facet = z.output<typeof facetSchema>
