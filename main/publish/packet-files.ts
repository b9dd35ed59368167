import type { Markup } from '../../app/evidence/markup.ts'
import type { JobLayout } from '../library/layout.ts'
import type { StoredAttachment } from '../store/records/attachments.ts'
import type { StoredVideo } from '../store/records/videos.ts'
import type { StoredPhoto } from '../store/records/photos.ts'

/** The files that stand behind a packet: kept photos, attachments and videos, and where they are. */
export interface PacketFiles {
  readonly photos: readonly StoredPhoto[]
  readonly markups: readonly Markup[]
  readonly attachments: readonly StoredAttachment[]
  /** Those whose files go into the bundle. */
  readonly videos: readonly StoredVideo[]
  readonly places: JobLayout
}

/** Every file's SHA-256: photos, videos and attachments together. */
export function hashesOf({ photos, attachments, videos }: PacketFiles): readonly string[] {
  return [
    ...[...photos, ...videos].map(({ file }) => file.sha256),
    ...attachments.map((kept) => kept.attachment.file.sha256),
  ]
}
