import { open, type FileHandle } from 'node:fs/promises'
import { boxesIn, readUInt } from '../heif-boxes.ts'

/** What a movie's own boxes say that players have no use for (ISO/IEC 14496-12, 8.2.2; QuickTime File Format, user data). */
export interface MovieBoxes {
  /** Seconds since 1904-01-01 UTC; 0 is "not known". */
  readonly createdS: number
  readonly durationMs: number
  /** User data by its four letters, `©xyz` for the place; texts as stored. */
  readonly userData: ReadonlyMap<string, string>
}

/** An hour's tables take a few megabytes; a movie box beyond this is not read. */
const MOST_MOVIE_BYTES = 64 * 1024 * 1024
const MOST_BOXES = 10_000

/** Reads the movie box of an MP4 or QuickTime file, wherever in the file it stands; null where there is none. */
export async function readMovieBoxes(path: string): Promise<MovieBoxes | null> {
  const file = await open(path, 'r')
  try {
    const moov = await findMovie(file)
    if (moov === null) return null
    const boxes = boxesIn(moov)
    const mvhd = boxes.find((box) => box.type === 'mvhd')?.body ?? Buffer.alloc(0)
    const wide = mvhd[0] === 1
    const size = wide ? 8 : 4
    const timescale = readUInt(mvhd, 4 + 2 * size, 4)
    const duration = readUInt(mvhd, 8 + 2 * size, size)
    const isKnown = timescale > 0 && duration < (wide ? 2 ** 63 : 0xffff_ffff)
    return {
      createdS: readUInt(mvhd, 4, size),
      durationMs: isKnown ? Math.round((duration / timescale) * 1000) : 0,
      userData: readUserData(boxes.find((box) => box.type === 'udta')?.body ?? Buffer.alloc(0)),
    }
  } finally {
    await file.close()
  }
}

async function findMovie(file: FileHandle): Promise<Buffer | null> {
  const { size: fileBytes } = await file.stat()
  const head = Buffer.alloc(16)
  let at = 0
  for (let count = 0; at + 8 <= fileBytes && count < MOST_BOXES; count += 1) {
    await file.read(head, 0, 16, at)
    const short = head.readUInt32BE(0)
    const headBytes = short === 1 ? 16 : 8
    const size = short === 0 ? fileBytes - at : short === 1 ? readUInt(head, 8, 8) : short
    if (size < headBytes) return null
    if (head.toString('latin1', 4, 8) === 'moov') {
      const bodyBytes = Math.min(size, fileBytes - at) - headBytes
      if (bodyBytes > MOST_MOVIE_BYTES) return null
      const body = Buffer.alloc(bodyBytes)
      await file.read(body, 0, bodyBytes, at + headBytes)
      return body
    }
    at += size
  }
  return null
}

/** QuickTime's international text: a length and a language, each two bytes, before the text. */
function readUserData(udta: Buffer): ReadonlyMap<string, string> {
  const texts = new Map<string, string>()
  for (const { type, body } of boxesIn(udta)) {
    if (!type.startsWith('\xa9') || body.length < 4) continue
    const length = body.readUInt16BE(0)
    texts.set(type, body.toString('utf8', 4, Math.min(4 + length, body.length)))
  }
  return texts
}
