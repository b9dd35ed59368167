import { z } from 'zod'
import { createThreads } from '../../threads.ts'

const replySchema = z.discriminatedUnion('ok', [
  z.object({
    ok: z.literal(true),
    width: z.number().int().positive(),
    height: z.number().int().positive(),
    channels: z.union([z.literal(3), z.literal(4)]),
    pixels: z.instanceof(Uint8Array),
    /** The ICC profile that the pixels are in; null where they are sRGB. */
    icc: z.instanceof(Uint8Array).nullable(),
    /** Transfer curve (ITU-T H.273) from which the pixels were brought into standard range; null where there was no need. */
    transfer: z.number().nullable(),
    /** False where a part of the picture could not be decoded. */
    isWhole: z.boolean(),
  }),
  z.object({ ok: z.literal(false), why: z.string() }),
])

/** The first picture of a HEIF-family file, upright as its container asks. */
export type HeifPixels = Extract<z.output<typeof replySchema>, { ok: true }>

const threads = createThreads({
  source: 'library/previews/decoders/heif-worker.js',
  built: 'heif-worker.js',
  // Decoding takes a few hundred megabytes a picture: more at a time would not fit a small machine.
  most: 2,
  // A phone's 12 megapixels take a second or two; what takes this long is broken or hostile.
  longestMs: 45_000,
})

/**
 * Decodes the first picture of a HEIC, HEIF or HIF file in a thread of its own, under limits of pixels, memory and time.
 *
 * @throws Error where the file can't be decoded or takes too long
 */
export async function decodeHeif(bytes: Uint8Array, limits: { maxPixels: number }): Promise<HeifPixels> {
  const reply = replySchema.parse(await threads.ask({ bytes, ...limits }))
  if (!reply.ok) throw new Error(reply.why)
  return reply
}
