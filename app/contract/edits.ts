import { z } from 'zod'
import { cameraClockSchema } from '../evidence/camera.ts'
import { findingSchema } from '../evidence/finding.ts'
import { marksSchema } from '../evidence/markup.ts'
import { photoTagsSchema, placedBetweenSchema, type PhotoTags } from '../evidence/photo.ts'
import { attachmentTagsSchema } from '../evidence/attachment.ts'
import { videoTagsSchema } from '../evidence/video.ts'
import { readingSchema } from '../fieldtest/reading.ts'
import {
  attachmentIdSchema,
  cameraIdSchema,
  facetIdSchema,
  findingIdSchema,
  jobIdSchema,
  outlineIdSchema,
  photoIdSchema,
  planImageIdSchema,
  readingIdSchema,
  videoIdSchema,
} from '../job/ids.ts'
import { planFrameSchema, planPointSchema } from '../job/places.ts'
import { jobSheetSchema } from '../job/sheet.ts'
import { edgeKindSchema, edgeOfFacetSchema } from '../roof/edge-by-hand.ts'
import { facetSchema } from '../roof/facet.ts'
import { houseOutlineSchema } from '../roof/house-outline.ts'
import { planImageSchema } from '../roof/plan-image.ts'
import { diaryEdits } from './diary.ts'
import { assessmentEdits } from './assessment.ts'
import { fieldTestEdits } from './field-tests.ts'
import { narrationProcedures } from './narration.ts'
import { write } from './procedure.ts'
import { scopeEdits } from './scope.ts'
import { weatherEdits } from './weather.ts'

const inJob = { jobId: jobIdSchema }
const done = z.object({})

/** A patch of a photo's tags: only the fields given are changed. */
export const photoTagsPatchSchema = z
  .object({
    facetId: photoTagsSchema.shape.facetId.removeDefault(),
    component: photoTagsSchema.shape.component.removeDefault(),
    condition: photoTagsSchema.shape.condition.removeDefault(),
    role: photoTagsSchema.shape.role.removeDefault(),
    caption: photoTagsSchema.shape.caption.removeDefault(),
    leftOutBecause: photoTagsSchema.shape.leftOutBecause.removeDefault(),
    repeatedHour: z.enum(['first', 'second']).nullable(),
    placedBetween: placedBetweenSchema.nullable(),
  })
  .partial()
export type PhotoTagsPatch = z.output<typeof photoTagsPatchSchema>

/**
 * Tags with a patch laid over them. A field that is there but undefined, as a window's channel can carry it, is not a
 * change; null takes a tag back.
 */
export function patchedTags(tags: PhotoTags, patch: PhotoTagsPatch): PhotoTags {
  const {
    facetId = tags.facetId,
    component = tags.component,
    condition = tags.condition,
    role = tags.role,
    caption = tags.caption,
    leftOutBecause = tags.leftOutBecause,
    repeatedHour = tags.repeatedHour ?? null,
    placedBetween = tags.placedBetween ?? null,
  } = patch
  return {
    facetId,
    component,
    condition,
    role,
    caption,
    leftOutBecause,
    ...(repeatedHour === null ? {} : { repeatedHour }),
    ...(placedBetween === null ? {} : { placedBetween }),
  }
}
/** A patch of an image under the plan: only the fields given are changed. */
export const planImagePatchSchema = z
  .object({
    kind: planImageSchema.shape.kind,
    label: planImageSchema.shape.label,
    source: planImageSchema.shape.source.removeDefault(),
    isShown: planImageSchema.shape.isShown.removeDefault(),
    opacityPercent: planImageSchema.shape.opacityPercent.removeDefault(),
    knownLine: planImageSchema.shape.knownLine.removeDefault(),
    imageUpAzimuthDeg: planImageSchema.shape.imageUpAzimuthDeg.removeDefault(),
    held: planImageSchema.shape.held,
  })
  .partial()
export type PlanImagePatch = z.output<typeof planImagePatchSchema>

/** Every edit is one step of undo and one entry of the evidence log. */
export const editProcedures = {
  'sheet.save': write(z.object({ ...inJob, sheet: jobSheetSchema }), done),
  /** Marks where the front door is on the plan; null takes the mark off. */
  'sheet.mark-door': write(z.object({ ...inJob, doorAt: planPointSchema.nullable() }), done),
  'frame.save': write(z.object({ ...inJob, frame: planFrameSchema }), done),
  /** Adds an outline when `id` is null. Its facets are built anew in the same step. */
  'outlines.save': write(
    z.object({ ...inJob, id: outlineIdSchema.nullable(), outline: houseOutlineSchema.omit({ id: true }) }),
    z.object({ id: outlineIdSchema }),
  ),
  /** Removes an outline and the facets that follow from it. */
  'outlines.remove': write(z.object({ ...inJob, id: outlineIdSchema }), done),
  /** Adds a facet when `id` is null. */
  'facets.save': write(
    z.object({
      ...inJob,
      id: facetIdSchema.nullable(),
      facet: facetSchema.omit({ id: true, from: true, setByHand: true, edgesByHand: true }),
    }),
    z.object({ id: facetIdSchema }),
  ),
  /** Gives facets new outlines in one step: corners that they share move together and come back together. */
  'facets.reshape': write(
    z.object({
      ...inJob,
      changed: z
        .array(z.object({ id: facetIdSchema, outline: facetSchema.shape.outline }))
        .min(1)
        .max(500),
    }),
    done,
  ),
  /** Lets a facet follow its outline again, forgetting what was set by hand. */
  'facets.follow-outline': write(z.object({ ...inJob, id: facetIdSchema }), done),
  /** States the kind of one of a facet's edges, or leaves it to the slopes again where `kind` is null. */
  'facets.set-edge': write(
    z.object({ ...inJob, id: facetIdSchema, edge: edgeOfFacetSchema, kind: edgeKindSchema.nullable() }),
    done,
  ),
  'facets.remove': write(z.object({ ...inJob, id: facetIdSchema }), done),
  'photos.tag': write(
    z.object({ ...inJob, photoIds: z.array(photoIdSchema).min(1).max(20_000), set: photoTagsPatchSchema }),
    done,
  ),
  /** Changes what is said of a video: its caption, or when it began and how that is known. */
  'videos.tag': write(
    z.object({
      ...inJob,
      id: videoIdSchema,
      set: z
        .object({
          caption: videoTagsSchema.shape.caption.removeDefault(),
          startSet: videoTagsSchema.shape.startSet.removeDefault(),
        })
        .partial(),
    }),
    done,
  ),
  'attachments.describe': write(
    z.object({
      ...inJob,
      id: attachmentIdSchema,
      description: attachmentTagsSchema.shape.description.removeDefault(),
    }),
    done,
  ),
  /** What is drawn over a photo from now on; no marks at all take the markup away. */
  'marks.save': write(z.object({ ...inJob, photoId: photoIdSchema, marks: marksSchema }), done),
  'cameras.set-clock': write(z.object({ ...inJob, id: cameraIdSchema, clock: cameraClockSchema }), done),
  /** Adds a finding when `id` is null; its number is the next never used. */
  'findings.save': write(
    z.object({ ...inJob, id: findingIdSchema.nullable(), finding: findingSchema.omit({ id: true, number: true }) }),
    z.object({ id: findingIdSchema, number: z.number().int() }),
  ),
  'findings.remove': write(z.object({ ...inJob, id: findingIdSchema }), done),
  'readings.save': write(
    z.object({ ...inJob, id: readingIdSchema.nullable(), reading: readingSchema.omit({ id: true, number: true }) }),
    z.object({ id: readingIdSchema, number: z.number().int() }),
  ),
  ...fieldTestEdits,
  ...assessmentEdits,
  'readings.remove': write(z.object({ ...inJob, id: readingIdSchema }), done),
  /** Changes what is said of an image under the plan, or how it lies. Showing one hides the others. */
  'plan-images.save': write(z.object({ ...inJob, id: planImageIdSchema, set: planImagePatchSchema }), done),
  /** Takes an image off the plan; its file stays with the job. */
  'plan-images.remove': write(z.object({ ...inJob, id: planImageIdSchema }), done),
  ...narrationProcedures,
  ...weatherEdits,
  ...scopeEdits,
  ...diaryEdits,
  'history.undo': write(z.object(inJob), z.object({ summary: z.string().nullable() })),
  'history.redo': write(z.object(inJob), z.object({ summary: z.string().nullable() })),
}
