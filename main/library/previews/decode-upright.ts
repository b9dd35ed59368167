import type { Sharp } from 'sharp'
import type { FileProblem } from '../../../app/evidence/photo.ts'
import { readablePicture } from './decoders/readable-picture.ts'
import { isSrgbAsStored } from './colour-profile.ts'
import { openPicture } from './quiet-sharp.ts'
import { turnUpright } from './turn-upright.ts'

/** What was made of a picture, or why nothing could be. `problem` beside a result says what is wrong with it. */
type Decoded<T> = { ok: true; made: T; problem: FileProblem | null } | { ok: false; problem: FileProblem }

const DAMAGED: FileProblem = {
  about: 'preview',
  text: 'The picture is damaged: only a part of it can be shown. Copy it from the card again if you can.',
}
const UNREADABLE: FileProblem = {
  about: 'preview',
  text: "The picture can't be shown: it is damaged beyond reading. The original is kept as it came.",
}

/**
 * Decodes a picture's first page upright, in sRGB, on white where it is transparent, fitted into a square and never
 * enlarged. A damaged picture is decoded as far as it goes.
 * @param plan `mediaType` and `orientation` are those in the photo's record; `longEdgePx` is asked with the original's long
 *   edge; `finish` turns the pixels into what is wanted
 */
export async function decodeUpright<T>(
  given: string | Buffer,
  plan: {
    mediaType: string
    orientation: number
    longEdgePx: (originalPx: number) => number
    finish: (picture: Sharp) => Promise<T>
  },
): Promise<Decoded<T>> {
  const readable = await readablePicture(given, plan.mediaType)
  // What calls itself HEIF may hold another kind of picture, which the next reader knows.
  const source = readable.ok ? readable.source : given
  try {
    return { ok: true, made: await decode(source, 'error', plan), problem: readable.ok ? readable.problem : null }
  } catch {
    // Falls through to the lenient decoder, which tells whether anything of the picture is left.
  }
  try {
    return { ok: true, made: await decode(source, 'none', plan), problem: DAMAGED }
  } catch {
    return { ok: false, problem: readable.ok ? UNREADABLE : readable.problem }
  }
}

async function decode<T>(
  source: string | Buffer,
  failOn: 'none' | 'error',
  plan: Parameters<typeof decodeUpright<T>>[1],
): Promise<T> {
  const { width, height, hasAlpha, icc } = await openPicture(source, { failOn, ignoreIcc: false }).metadata()
  const edgePx = plan.longEdgePx(Math.max(width, height))
  const picture = openPicture(source, { failOn, ignoreIcc: isSrgbAsStored(icc) }).resize({
    width: edgePx,
    height: edgePx,
    fit: 'inside',
    withoutEnlargement: true,
  })
  const opaque = hasAlpha ? picture.flatten({ background: '#ffffff' }) : picture
  return plan.finish(turnUpright(opaque, plan.orientation).toColourspace('srgb'))
}
