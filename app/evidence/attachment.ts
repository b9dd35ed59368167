import { z } from 'zod'
import { attachmentIdSchema } from '../job/ids.ts'
import { photoFileSchema } from './photo.ts'

/** A file that is kept but is not a picture the program shows: a permit, a letter, a phone's HEIC, a video. */
export const attachmentSchema = z.object({
  id: attachmentIdSchema,
  file: photoFileSchema,
  /** What the file is, in plain words. */
  typeLabel: z.string(),
  /** Why it is an attachment and not a photo. */
  why: z.string(),
  takenInAtMs: z.number().int(),
})
export type Attachment = z.output<typeof attachmentSchema>
