import { z } from 'zod'
import { attachmentIdSchema, findingIdSchema, narrationIdSchema, photoIdSchema, videoIdSchema } from '../job/ids.ts'
import { cueSchema } from './cue.ts'

/** Where a recording stands in time. Cues count from its start; only this makes instants of them. */
export const recordingStartSchema = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('not-known') }),
  /** The recording began at this instant, as its file says. */
  z.object({ kind: z.literal('recorded'), instantMs: z.number().int() }),
  /** The words are a video's own sound: they begin when it does, also after its clock is corrected. */
  z.object({ kind: z.literal('video'), videoId: videoIdSchema }),
  /** A person says when a cue was spoken. */
  z.object({ kind: z.literal('clock'), cue: z.number().int().nonnegative(), instantMs: z.number().int() }),
  /** A person says which photo was taken while a cue was spoken. */
  z.object({ kind: z.literal('photo'), cue: z.number().int().nonnegative(), photoId: photoIdSchema }),
])
export type RecordingStart = z.output<typeof recordingStartSchema>

/** One recording's narration: the cues of a subtitle file, which itself is kept among the attachments. */
export const narrationSchema = z.object({
  id: narrationIdSchema,
  attachmentId: attachmentIdSchema,
  /** Name of the subtitle file; unique in its job. */
  name: z.string().min(1).max(255),
  format: z.enum(['webvtt', 'srt']),
  cues: z.array(cueSchema).max(20_000),
  /** Places of the file that could not be read. */
  problems: z.array(z.object({ line: z.number().int().positive(), reason: z.string() })).max(2000),
  start: recordingStartSchema.default({ kind: 'not-known' }),
})
export type Narration = z.output<typeof narrationSchema>

/** What a person decided about a draft. It is known again by its words and its time, so that importing anew brings nothing back. */
export const draftDecisionSchema = z.object({
  /** The draft's key and when it was said, from the recording's start. */
  key: z.string().min(1).max(500),
  startMs: z.number().int().nonnegative(),
  /** The finding that it became; null when it was dropped. */
  findingId: findingIdSchema.nullable(),
})
export type DraftDecision = z.output<typeof draftDecisionSchema>
