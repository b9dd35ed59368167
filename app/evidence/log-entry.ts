import { z } from 'zod'

const digestSchema = z.string().regex(/^[0-9a-f]{64}$/)

/** Records that people can change. Each change of one is written to the evidence log. */
export const recordKindSchema = z.enum([
  'sheet',
  'frame',
  'outline',
  'facet',
  'photo',
  'markup',
  'camera',
  'finding',
  'reading',
  'field-survey',
  'assessment',
  'video',
  'attachment',
  'plan-image',
  'narration',
  'draft-decision',
  'weather-station',
  'weather-source',
  'weather-choices',
  'scope',
  'price-book',
  'diary-entry',
  'diary-clocks',
])
export type RecordKind = z.output<typeof recordKindSchema>

/** One record's change, by digest: before and after, null where it did not or does no longer exist. */
export const loggedChangeSchema = z.object({
  record: recordKindSchema,
  id: z.string(),
  before: digestSchema.nullable(),
  after: digestSchema.nullable(),
})

/** What happened. Each kind says what a reader needs to follow it; a new kind of event is a new member here. */
export const logEventSchema = z.discriminatedUnion('type', [
  z.object({ type: z.literal('job-opened'), number: z.string() }),
  z.object({
    type: z.literal('photo-taken-in'),
    photoId: z.string(),
    number: z.number().int(),
    fileName: z.string(),
    sha256: digestSchema,
    bytes: z.number().int(),
  }),
  z.object({ type: z.literal('double-seen'), photoId: z.string(), fileName: z.string(), sha256: digestSchema }),
  z.object({
    type: z.literal('attachment-taken-in'),
    attachmentId: z.string(),
    fileName: z.string(),
    sha256: digestSchema,
    bytes: z.number().int(),
  }),
  z.object({
    type: z.literal('video-taken-in'),
    videoId: z.string(),
    number: z.number().int(),
    fileName: z.string(),
    sha256: digestSchema,
    bytes: z.number().int(),
  }),
  /** A frame of a video was stored as a picture. `instantMs` is the frame's instant as it was known then. */
  z.object({
    type: z.literal('still-taken'),
    photoId: z.string(),
    number: z.number().int(),
    fileName: z.string(),
    sha256: digestSchema,
    bytes: z.number().int(),
    videoId: z.string(),
    videoNumber: z.number().int(),
    videoSha256: digestSchema,
    offsetMs: z.number().int(),
    instantMs: z.number().int().nullable(),
  }),
  z.object({ type: z.literal('edited'), summary: z.string(), changes: z.array(loggedChangeSchema).min(1) }),
  z.object({
    type: z.literal('undone'),
    summary: z.string(),
    entry: z.number().int(),
    changes: z.array(loggedChangeSchema).min(1),
  }),
  z.object({
    type: z.literal('redone'),
    summary: z.string(),
    entry: z.number().int(),
    changes: z.array(loggedChangeSchema).min(1),
  }),
  z.object({ type: z.literal('problem-overruled'), problem: z.string(), reason: z.string() }),
  z.object({
    type: z.literal('packet-issued'),
    revision: z.number().int(),
    pdfSha256: digestSchema,
    bundleName: z.string(),
  }),
])
export type LogEvent = z.output<typeof logEventSchema>

/** An entry of a job's evidence log. `hash` covers all other fields, `previous` the entry before. */
export const logEntrySchema = z.object({
  seq: z.number().int().positive(),
  atMs: z.number().int(),
  actor: z.string(),
  event: logEventSchema,
  previous: digestSchema.nullable(),
  hash: digestSchema,
})
export type LogEntry = z.output<typeof logEntrySchema>
