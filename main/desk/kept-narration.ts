import { join } from 'node:path'
import { readFile } from 'node:fs/promises'
import { refuse } from '../../app/contract/app-error.ts'
import { narrationIdSchema } from '../../app/job/ids.ts'
import { type Narration, narrationSchema, type RecordingStart } from '../../app/narration/narration.ts'
import { readSubtitles, SUBTITLE_LIMITS } from '../../app/narration/subtitles/read-subtitles.ts'
import { withFileWords } from '../library/file-failure.ts'
import type { StoredAttachment } from '../store/records/attachments.ts'
import { decodeSubtitles } from './decode-subtitles.ts'
import type { DeskWorld } from './desk-world.ts'
import { needJobLayout } from './snapshot.ts'

/**
 * Reads the narration of a subtitle file that is kept among a job's attachments.
 *
 * @throws AppFailure `unreadable-file` when it holds no cues
 */
export async function keptNarration(
  world: DeskWorld,
  { jobId, storedName, attachment }: StoredAttachment,
  start: RecordingStart,
): Promise<Narration> {
  const { fileName, bytes } = attachment.file
  if (bytes > SUBTITLE_LIMITS.characters * 2)
    refuse('unreadable-file', `"${fileName}" is too large for a subtitle file.`)
  const path = join(needJobLayout(world.library, jobId).attachments, storedName)
  const subtitles = readSubtitles(decodeSubtitles(await withFileWords(fileName, () => readFile(path))))
  if (subtitles === null || subtitles.cues.length === 0) {
    return refuse('unreadable-file', `"${fileName}" holds no cues of SRT or WebVTT.`, {
      about: fileName,
      help: 'Export the subtitles again as SRT or WebVTT with times, and take that file in.',
    })
  }
  return narrationSchema.parse({
    id: narrationIdSchema.parse(world.newId()),
    attachmentId: attachment.id,
    name: fileName,
    ...subtitles,
    start,
  })
}
