import type { Photo } from '../evidence/photo.ts'
import type { Narration } from './narration.ts'

/** The instant at which a recording began, milliseconds since 1970; null while nothing ties it to a clock. */
export function recordingStartMs(
  { cues, start }: Pick<Narration, 'cues' | 'start'>,
  photos: readonly Pick<Photo, 'id' | 'time'>[],
): number | null {
  switch (start.kind) {
    case 'not-known':
      return null
    case 'recorded':
      return start.instantMs
    case 'clock':
      return start.instantMs - (cues[start.cue]?.startMs ?? 0)
    case 'photo': {
      const instantMs = photos.find(({ id }) => id === start.photoId)?.time.instantMs ?? null
      return instantMs === null ? null : instantMs - (cues[start.cue]?.startMs ?? 0)
    }
  }
}
