import sharp, { type Raw, type Sharp } from 'sharp'
import { MAX_PIXELS } from '../reading/read-look.ts'

// Photos are worked on several at a time, one thread each: that is faster over a card than many threads on one photo.
sharp.concurrency(1)
// A photo is decoded once; keeping operations and pixels of the last ones only costs memory.
sharp.cache(false)

const TIMEOUT_S = 60

/**
 * Opens a picture's first page for decoding, within the limits on size and time that hold for every picture here.
 * @param options `failOn: 'none'` decodes what is left of a damaged picture; `ignoreIcc` skips the colour transform
 */
export function openPicture(source: string | Buffer, options: { failOn: 'none' | 'error'; ignoreIcc: boolean }): Sharp {
  return sharp(source, { ...options, limitInputPixels: MAX_PIXELS, pages: 1, sequentialRead: true }).timeout({
    seconds: TIMEOUT_S,
  })
}

/** Opens pixels that were decoded here. */
export function openPixels(pixels: Buffer, raw: Raw): Sharp {
  return sharp(pixels, { raw })
}
