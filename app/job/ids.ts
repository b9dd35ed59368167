import type { z } from 'zod'
import { idSchema } from './brand.ts'

/** Identity of a job; never shown, never changes. The job number is what people use. */
export const jobIdSchema = idSchema('JobId')
export type JobId = z.output<typeof jobIdSchema>

export const photoIdSchema = idSchema('PhotoId')
export type PhotoId = z.output<typeof photoIdSchema>

export const facetIdSchema = idSchema('FacetId')
export type FacetId = z.output<typeof facetIdSchema>

/** One outline of the house's roof: the main roof, a garage, a porch. */
export const outlineIdSchema = idSchema('OutlineId')
export type OutlineId = z.output<typeof outlineIdSchema>

/** One edge of an outline. It keeps its identity when corners are added or moved, and so does the facet that rises from it. */
export const edgeIdSchema = idSchema('EdgeId')
export type EdgeId = z.output<typeof edgeIdSchema>

export const findingIdSchema = idSchema('FindingId')
export type FindingId = z.output<typeof findingIdSchema>

export const readingIdSchema = idSchema('ReadingId')
export type ReadingId = z.output<typeof readingIdSchema>

/** One physical camera, told apart by make, model and serial number. */
export const cameraIdSchema = idSchema('CameraId')
export type CameraId = z.output<typeof cameraIdSchema>

/** One recording of moving pictures. */
export const videoIdSchema = idSchema('VideoId')
export type VideoId = z.output<typeof videoIdSchema>

export const attachmentIdSchema = idSchema('AttachmentId')
export type AttachmentId = z.output<typeof attachmentIdSchema>

/** An image laid under the plan. */
export const planImageIdSchema = idSchema('PlanImageId')
export type PlanImageId = z.output<typeof planImageIdSchema>

/** One entry of a job's diary. */
export const diaryEntryIdSchema = idSchema('DiaryEntryId')

/** One recording's narration. */
export const narrationIdSchema = idSchema('NarrationId')
export type NarrationId = z.output<typeof narrationIdSchema>
