import { z } from 'zod'
import { videoIdSchema } from '../job/ids.ts'
import { frameTimeWords, videoLabel } from './video-label.ts'

/** Where a still comes from: a frame of a video, told by how far into it the frame is. */
export const stillSchema = z.object({
  videoId: videoIdSchema,
  videoNumber: z.number().int().positive(),
  /** The video's SHA-256 when the still was taken. */
  videoSha256: z.string().regex(/^[0-9a-f]{64}$/),
  offsetMs: z.number().int().nonnegative(),
})
export type Still = z.output<typeof stillSchema>

/** "still from V-001 at 00:12.400". */
export function stillWords({ videoNumber, offsetMs }: Pick<Still, 'videoNumber' | 'offsetMs'>): string {
  return `still from ${videoLabel(videoNumber)} at ${frameTimeWords(offsetMs)}`
}
