import { z } from 'zod'

/** Words said in one stretch of a recording. Times count from the recording's start. */
export const cueSchema = z.object({
  startMs: z.number().int().nonnegative(),
  endMs: z.number().int().nonnegative(),
  /** Without markup. */
  text: z.string().max(4000),
  /** Who speaks, where the file says so. */
  speaker: z.string().max(120),
})
export type Cue = z.output<typeof cueSchema>
