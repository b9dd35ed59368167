import { z } from 'zod'
import { attachmentSchema } from '../evidence/attachment.ts'
import { cameraSchema } from '../evidence/camera.ts'
import { findingSchema } from '../evidence/finding.ts'
import { photoSchema } from '../evidence/photo.ts'
import { readingSchema } from '../fieldtest/reading.ts'
import { jobIdSchema } from '../job/ids.ts'
import { jobNumberSchema, jobSchema } from '../job/job.ts'
import { jobSheetSchema } from '../job/sheet.ts'
import { facetSchema } from '../roof/facet.ts'
import { houseOutlineSchema } from '../roof/house-outline.ts'
import { read, write } from './procedure.ts'
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
  /** How many things the job still lacks. */
  lacks: z.number().int(),
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
  job: jobSchema,
  outlines: z.array(houseOutlineSchema),
  facets: z.array(facetSchema),
  photos: z.array(photoSchema),
  cameras: z.array(cameraSchema),
  findings: z.array(findingSchema),
  readings: z.array(readingSchema),
  weather: jobWeatherSchema,
  attachments: z.array(attachmentSchema),
  packets: z.array(packetSummarySchema),
  history: historyStateSchema,
  log: z.object({ entries: z.number().int(), headHash: z.string() }),
})
export type JobSnapshot = z.output<typeof jobSnapshotSchema>

const opened = z.object({ jobId: jobIdSchema, number: z.string() })

export const jobProcedures = {
  'jobs.list': read(z.object({}), z.object({ jobs: z.array(jobSummarySchema) })),
  'jobs.open': read(z.object({ jobId: jobIdSchema }), jobSnapshotSchema),
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
