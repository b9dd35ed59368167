import { z } from 'zod'
import { findingSchema } from '../evidence/finding.ts'
import { attachmentIdSchema, findingIdSchema, jobIdSchema, narrationIdSchema } from '../job/ids.ts'
import { draftDecisionSchema, recordingStartSchema } from '../narration/narration.ts'
import { write } from './procedure.ts'

const inJob = { jobId: jobIdSchema }
const done = z.object({})
const draft = draftDecisionSchema.omit({ findingId: true })

/** Narration and the drafts read from it. Each is one step of undo and one entry of the evidence log. */
export const narrationProcedures = {
  /** Reads the cues of a subtitle file that is among the job's attachments. */
  'narrations.import': write(
    z.object({
      ...inJob,
      attachmentId: attachmentIdSchema,
      start: recordingStartSchema.default({ kind: 'not-known' }),
    }),
    z.object({ id: narrationIdSchema, cues: z.number().int(), problems: z.number().int() }),
  ),
  /** Says where a recording stands in time. */
  'narrations.align': write(z.object({ ...inJob, id: narrationIdSchema, start: recordingStartSchema }), done),
  /** Removes a narration's cues. The subtitle file stays, and so do findings and what was decided about drafts. */
  'narrations.remove': write(z.object({ ...inJob, id: narrationIdSchema }), done),
  /** Makes a finding of a draft, as drafted or edited. */
  'drafts.accept': write(
    z.object({ ...inJob, draft, finding: findingSchema.omit({ id: true, number: true }) }),
    z.object({ id: findingIdSchema, number: z.number().int() }),
  ),
  /** Drops drafts; they stay dropped when the same narration is imported again. */
  'drafts.drop': write(z.object({ ...inJob, drafts: z.array(draft).min(1).max(5000) }), done),
  /** Forgets what was decided about a draft; its finding, if it became one, stays. */
  'drafts.reopen': write(z.object({ ...inJob, draft }), done),
}
