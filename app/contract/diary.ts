import { z } from 'zod'
import { clockReadingSchema } from '../diary/clock-reading.ts'
import { diaryContentSchema } from '../diary/entry.ts'
import { askedClockSchema, jobClocksSchema } from '../diary/job-clocks.ts'
import { diaryEntryIdSchema, jobIdSchema } from '../job/ids.ts'
import { packetOptionsSchema } from '../packet/options.ts'
import { read, write } from './procedure.ts'

const inJob = { jobId: jobIdSchema }
const done = z.object({})
const because = z.string().trim().max(1000)

/** Edits of the diary; each is one step of undo and one entry of the evidence log, which holds none of the words said. */
export const diaryEdits = {
  /** Adds an entry when `id` is null; else corrects it and keeps what stood before. */
  'diary.save': write(
    z.object({
      ...inJob,
      id: diaryEntryIdSchema.nullable(),
      content: diaryContentSchema,
      because: because.default(''),
    }),
    z.object({ id: diaryEntryIdSchema, number: z.number().int() }),
  ),
  /** Strikes an entry out, with the reason, or takes that back when `because` is null. It stays in the diary. */
  'diary.strike': write(
    z.object({ ...inJob, id: diaryEntryIdSchema, because: because.min(3, 'Say why in a few words.').nullable() }),
    done,
  ),
  /** Jurisdictions whose rules are shown to choose from. Leaving one out drops no clock that was asked for. */
  'diary.choose-jurisdictions': write(
    z.object({ ...inJob, jurisdictions: jobClocksSchema.shape.jurisdictions.removeDefault() }),
    done,
  ),
  /** Asks for a clock when `id` is null, else changes its start. */
  'diary.ask-clock': write(
    z.object({
      ...inJob,
      id: askedClockSchema.shape.id.nullable(),
      clock: askedClockSchema.omit({ id: true }),
    }),
    z.object({ id: z.string() }),
  ),
  'diary.drop-clock': write(z.object({ ...inJob, id: askedClockSchema.shape.id }), done),
}

export const diaryProcedures = {
  /** The clocks that were asked for, counted and in words. */
  'diary.clocks': read(z.object(inJob), z.object({ clocks: z.array(clockReadingSchema) })),
  /** The job's calendar as an iCalendar file (RFC 5545). Calls, documents and notes only when they are asked for. */
  'diary.calendar': read(
    z.object({
      ...inJob,
      kinds: z
        .array(z.enum(['visit', 'call', 'received', 'handed-over', 'reminder', 'note']))
        .max(6)
        .default(['visit', 'reminder']),
      clocks: z.boolean().default(true),
    }),
    z.object({ fileName: z.string(), text: z.string(), events: z.number().int() }),
  ),
  /** The list of documents received and handed over as a PDF to print; answers where to fetch it. */
  'diary.handover-list': read(
    z.object({ ...inJob, paper: packetOptionsSchema.shape.paper }),
    z.object({ draftId: z.string(), pages: z.number().int() }),
  ),
}
