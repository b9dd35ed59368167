import type { Markup } from '../../app/evidence/markup.ts'
import type { JobLayout } from '../library/layout.ts'
import type { StoredAttachment } from '../store/records/attachments.ts'
import type { StoredPhoto } from '../store/records/photos.ts'

/** The files that stand behind a packet: kept photos and attachments, and where they are. */
export interface PacketFiles {
  readonly photos: readonly StoredPhoto[]
  readonly markups: readonly Markup[]
  readonly attachments: readonly StoredAttachment[]
  readonly places: JobLayout
}

/** Every file's SHA-256, photos and attachments together. */
export function hashesOf({ photos, attachments }: PacketFiles): readonly string[] {
  return [...photos.map((photo) => photo.file.sha256), ...attachments.map((kept) => kept.attachment.file.sha256)]
}
