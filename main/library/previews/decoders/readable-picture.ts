import { readFile } from 'node:fs/promises'
import type { FileProblem } from '../../../../app/evidence/photo.ts'
import { largestPreview } from '../../reading/embedded-preview.ts'
import { MAX_PIXELS } from '../../reading/read-look.ts'
import { TOO_LONG } from '../../threads.ts'
import { asTiff } from './as-tiff.ts'
import { decodeHeif } from './heif-pixels.ts'

/** A picture in a form that sharp reads; `problem` says what is wrong with it or what had to be done to show it. */
export type Readable =
  | { ok: true; source: string | Buffer; problem: FileProblem | null }
  | { ok: false; problem: FileProblem }

const HEVC_FAMILY = /^image\/hei[cf](-sequence)?$/
const HIGH_RANGE = new Map([
  [16, 'PQ'],
  [18, 'HLG'],
])

/**
 * Brings a picture into a form that sharp reads: a phone's HEIC is decoded, a raw file gives its largest preview, anything
 * else stays as it is.
 */
export async function readablePicture(source: string | Buffer, mediaType: string): Promise<Readable> {
  if (HEVC_FAMILY.test(mediaType)) return decodedHeif(source)
  if (mediaType === 'image/x-adobe-dng') {
    const preview = largestPreview(await bytesOf(source))
    return preview === null
      ? { ok: false, problem: cantShow('the raw file holds no preview picture') }
      : { ok: true, source: preview.jpeg, problem: null }
  }
  return { ok: true, source, problem: null }
}

async function decodedHeif(source: string | Buffer): Promise<Readable> {
  try {
    const made = await decodeHeif(await bytesOf(source), { maxPixels: MAX_PIXELS })
    const curve = HIGH_RANGE.get(made.transfer ?? 0)
    const problem = !made.isWhole
      ? { about: 'preview' as const, text: 'The picture is damaged: parts of it could not be decoded.' }
      : curve === undefined
        ? null
        : {
            about: 'preview' as const,
            text: `The picture holds a high dynamic range (${curve}); it is shown toned down.`,
          }
    return { ok: true, source: asTiff(made), problem }
  } catch (cause) {
    const isSlow = cause instanceof Error && cause.message === TOO_LONG
    return {
      ok: false,
      problem: cantShow(isSlow ? 'decoding it takes too long' : 'it is damaged or of an unknown kind'),
    }
  }
}

function bytesOf(source: string | Buffer): Promise<Buffer> | Buffer {
  return typeof source === 'string' ? readFile(source) : source
}

function cantShow(why: string): FileProblem {
  return { about: 'preview', text: `The picture can't be shown: ${why}. The original is kept as it came.` }
}
