import { z } from 'zod'
import { attachmentIdSchema } from '../job/ids.ts'
import { photoFileSchema } from './photo.ts'

/** What a person says of an attachment. */
export const attachmentTagsSchema = z.object({ description: z.string().max(1000).default('') })
export type AttachmentTags = z.output<typeof attachmentTagsSchema>

/** A file that is kept but is neither a picture nor a video the program shows: a permit, a letter, subtitles, sound. */
export const attachmentSchema = z.object({
  id: attachmentIdSchema,
  file: photoFileSchema,
  /** What the file is, in plain words. */
  typeLabel: z.string(),
  /** Why it is an attachment and not a photo. */
  why: z.string(),
  tags: attachmentTagsSchema.prefault({}),
  takenInAtMs: z.number().int(),
})
export type Attachment = z.output<typeof attachmentSchema>

/** What kind of thing an attachment is, for lists and for whoever looks for narration. */
export type AttachmentKind = 'document' | 'subtitles' | 'sound' | 'picture' | 'video' | 'text' | 'other'

/** Plain words for each kind. */
export const attachmentKindLabels = {
  document: 'Document',
  subtitles: 'Subtitles',
  sound: 'Sound recording',
  picture: 'Picture not shown',
  video: 'Video not played',
  text: 'Text',
  other: 'Other file',
} as const satisfies Record<AttachmentKind, string>

/** The kind of an attachment by its media type, which was recognised by content. */
export function attachmentKind({ file }: Pick<Attachment, 'file'>): AttachmentKind {
  const { mediaType } = file
  if (mediaType === 'text/vtt' || mediaType === 'application/x-subrip') return 'subtitles'
  if (mediaType.startsWith('audio/')) return 'sound'
  if (mediaType.startsWith('video/')) return 'video'
  if (mediaType.startsWith('image/')) return 'picture'
  if (mediaType.startsWith('text/')) return 'text'
  return DOCUMENTS.test(mediaType) ? 'document' : 'other'
}

/** PDF, word processor and spreadsheet files, old and new. */
const DOCUMENTS =
  /^application\/(pdf|rtf|msword|vnd\.(ms-|openxmlformats-officedocument|oasis\.opendocument|apple\.(pages|numbers)))/
