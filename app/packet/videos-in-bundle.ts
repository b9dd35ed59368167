import type { VideoFile } from '../evidence/video.ts'
import type { PacketOptions } from './options.ts'

/** Videos up to this size go into an evidence bundle unless somebody chooses otherwise; a few of them can still be mailed. */
export const SMALL_VIDEO_BYTES = 100_000_000

/** Whether a video's file goes into the evidence bundle; one that doesn't is still named there, with its SHA-256. */
export function isInBundle(file: Pick<VideoFile, 'bytes'>, choice: PacketOptions['videosInBundle']): boolean {
  switch (choice) {
    case 'all':
      return true
    case 'none':
      return false
    case 'small':
      return file.bytes <= SMALL_VIDEO_BYTES
  }
}
