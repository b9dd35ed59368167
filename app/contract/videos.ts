import { z } from 'zod'
import { jobIdSchema, photoIdSchema, videoIdSchema } from '../job/ids.ts'
import { write } from './procedure.ts'

/** Room for a frame of 8K as a JPEG of high quality, written in base64. */
const MOST_PICTURE_CHARACTERS = 24_000_000

export const videoProcedures = {
  /**
   * Stores a frame of a video as a picture of the job, with a number of its own. The screen that plays the video makes the
   * picture; the desk checks its size and records which video, its hash and the moment, but does not decode the video.
   */
  'videos.take-still': write(
    z.object({
      jobId: jobIdSchema,
      id: videoIdSchema,
      /** How far into the video the frame is. */
      offsetMs: z.number().int().nonnegative(),
      /** A JPEG or PNG in the frame's own size, upright, base64. */
      picture: z
        .string()
        .min(1)
        .max(MOST_PICTURE_CHARACTERS, 'The picture of this frame is too large.')
        .regex(/^[A-Za-z0-9+/]+={0,2}$/, 'The picture is not base64.'),
    }),
    z.object({ photoId: photoIdSchema, number: z.number().int() }),
  ),
}
