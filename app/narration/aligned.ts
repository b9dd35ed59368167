import type { Photo } from '../evidence/photo.ts'
import type { Video } from '../evidence/video.ts'
import type { Cue } from './cue.ts'
import type { Narration } from './narration.ts'

/** What a recording can be tied to: photos and videos with their times. */
export interface TimedRecords {
  readonly photos: readonly Pick<Photo, 'id' | 'time'>[]
  readonly videos: readonly Pick<Video, 'id' | 'time'>[]
}

/** The instant at which a recording began, milliseconds since 1970; null while nothing ties it to a clock. */
export function recordingStartMs(
  { cues, start }: Pick<Narration, 'cues' | 'start'>,
  { photos, videos }: TimedRecords,
): number | null {
  switch (start.kind) {
    case 'not-known':
      return null
    case 'recorded':
      return start.instantMs
    case 'video':
      return videos.find(({ id }) => id === start.videoId)?.time.instantMs ?? null
    case 'clock':
      return start.instantMs - (cues[start.cue]?.startMs ?? 0)
    case 'photo': {
      const instantMs = photos.find(({ id }) => id === start.photoId)?.time.instantMs ?? null
      return instantMs === null ? null : instantMs - (cues[start.cue]?.startMs ?? 0)
    }
  }
}

/**
 * What is said while a video runs, counted from its first frame, milliseconds: the cues of its own sound, and those of other
 * recordings that are on the clock and fall into it.
 */
export function cuesOfVideo(
  video: Pick<Video, 'id' | 'time'> & { readonly file: Pick<Video['file'], 'durationMs'> },
  narrations: readonly Pick<Narration, 'cues' | 'start'>[],
  records: TimedRecords,
): readonly Pick<Cue, 'startMs' | 'endMs' | 'text'>[] {
  return narrations
    .flatMap((narration) => {
      const behindMs = behindVideoMs(narration, video, records)
      if (behindMs === null) return []
      return narration.cues.map(({ startMs, endMs, text }) => ({
        startMs: startMs + behindMs,
        endMs: endMs + behindMs,
        text,
      }))
    })
    .filter(({ startMs, endMs }) => endMs > 0 && startMs < video.file.durationMs)
    .toSorted((a, b) => a.startMs - b.startMs)
}

/** How long after a video a recording began; null where the two can't be brought together. */
function behindVideoMs(
  narration: Pick<Narration, 'cues' | 'start'>,
  video: Pick<Video, 'id' | 'time'>,
  records: TimedRecords,
): number | null {
  if (narration.start.kind === 'video' && narration.start.videoId === video.id) return 0
  const beganMs = recordingStartMs(narration, records)
  return beganMs === null || video.time.instantMs === null ? null : beganMs - video.time.instantMs
}
