import { z } from 'zod'
import { assessmentSchema } from '../assessment/assessment.ts'
import { attachmentSchema } from '../evidence/attachment.ts'
import { jobDiarySchema } from '../diary/job-diary.ts'
import { cameraSchema } from '../evidence/camera.ts'
import { findingSchema } from '../evidence/finding.ts'
import { markupSchema } from '../evidence/markup.ts'
import { photoSchema } from '../evidence/photo.ts'
import { videoSchema } from '../evidence/video.ts'
import { readingSchema } from '../fieldtest/reading.ts'
import { fieldSurveySchema } from '../fieldtest/survey.ts'
import { jobIdSchema, photoIdSchema } from '../job/ids.ts'
import { jobNumberSchema, jobSchema } from '../job/job.ts'
import { jobSheetSchema } from '../job/sheet.ts'
import { draftDecisionSchema, narrationSchema } from '../narration/narration.ts'
import { facetSchema } from '../roof/facet.ts'
import { houseOutlineSchema } from '../roof/house-outline.ts'
import { planImageSchema } from '../roof/plan-image.ts'
import { read, write } from './procedure.ts'
import { jobScopeSchema } from './scope.ts'
import { jobWeatherSchema } from './weather.ts'

export const jobSummarySchema = z.object({
  id: jobIdSchema,
  number: z.string(),
  owner: z.string(),
  address: z.string(),
  claimNumber: z.string(),
  lossDate: z.string().nullable(),
  photos: z.number().int(),
  findings: z.number().int(),
  facets: z.number().int(),
  packets: z.number().int(),
  /**
   * How many things stand between the job and its packet: those that block it, and those that
   * need a reason; null while it is being counted.
   */
  lacks: z.number().int().nullable(),
  changedAtMs: z.number().int(),
})
export type JobSummary = z.output<typeof jobSummarySchema>

/** What undo and redo would do, in words; null when there is nothing to do. */
export const historyStateSchema = z.object({ undo: z.string().nullable(), redo: z.string().nullable() })

export const packetSummarySchema = z.object({
  id: z.string(),
  revision: z.number().int(),
  issuedAtMs: z.number().int(),
  pages: z.number().int(),
  pdfBytes: z.number().int(),
  pdfSha256: z.string(),
  bundleBytes: z.number().int(),
  headHash: z.string(),
  pdfName: z.string(),
  bundleName: z.string(),
})
export type PacketSummary = z.output<typeof packetSummarySchema>

/** A whole job as the screens hold it. */
export const jobSnapshotSchema = z.object({
  /** Goes up with every change of anything in the job; snapshots frozen before it was kept have none. */
  revision: z.number().int().default(0),
  job: jobSchema,
  outlines: z.array(houseOutlineSchema),
  facets: z.array(facetSchema),
  photos: z.array(photoSchema),
  videos: z.array(videoSchema),
  markups: z.array(markupSchema),
  cameras: z.array(cameraSchema),
  findings: z.array(findingSchema),
  readings: z.array(readingSchema),
  planImages: z.array(planImageSchema),
  survey: fieldSurveySchema,
  weather: jobWeatherSchema,
  scope: jobScopeSchema,
  diary: jobDiarySchema.prefault({}),
  assessment: assessmentSchema.prefault({}),
  attachments: z.array(attachmentSchema),
  narrations: z.array(narrationSchema),
  draftDecisions: z.array(draftDecisionSchema),
  packets: z.array(packetSummarySchema),
  history: historyStateSchema,
  log: z.object({ entries: z.number().int(), headHash: z.string() }),
})
export type JobSnapshot = z.output<typeof jobSnapshotSchema>

/**
 * What changed in a job since a revision: everything but the photos, which alone are many, and the photos that changed.
 * Photos are never removed. The times of photos follow from cameras and sheet (`timeOfPhoto`), so a change of those does
 * not make a photo changed.
 */
export const jobChangesSchema = jobSnapshotSchema.omit({ photos: true }).extend({ changedPhotos: z.array(photoSchema) })
export type JobChanges = z.output<typeof jobChangesSchema>

const opened = z.object({ jobId: jobIdSchema, number: z.string() })

export const jobProcedures = {
  'jobs.list': read(z.object({}), z.object({ jobs: z.array(jobSummarySchema) })),
  'jobs.open': read(z.object({ jobId: jobIdSchema }), jobSnapshotSchema),
  /** What changed since a revision that the caller has. */
  'jobs.changes': read(z.object({ jobId: jobIdSchema, since: z.number().int().min(0) }), jobChangesSchema),
  /** Measures how bright photos are, for those whose clock says night. Answers how many were measured now. */
  'jobs.measure-brightness': read(
    z.object({ jobId: jobIdSchema, photoIds: z.array(photoIdSchema).min(1).max(500) }),
    z.object({ measured: z.number().int() }),
  ),
  /** Starts an empty job; without a number the next free one is given. */
  'jobs.new': write(
    z.object({ number: jobNumberSchema.nullable().default(null), sheet: jobSheetSchema.prefault({}) }),
    opened,
  ),
  /** Makes a job from a folder with `job.json` and `photos/`. */
  'jobs.new-from-folder': write(z.object({ folder: z.string().min(1) }), opened.extend({ taskId: z.string() })),
  /** Makes the sample job that comes with the program. */
  'jobs.new-sample': write(z.object({}), opened.extend({ taskId: z.string() })),
}
