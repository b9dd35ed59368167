import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import sharp from 'sharp'

/** What a test wants to know of a photo; the rest is filled in. */
interface PhotoWish {
  /** Makes the picture, and so its bytes, unlike any other number's. */
  readonly shade?: number
  /** As EXIF writes it: `2026:03:14 09:26:53`. */
  readonly takenAt?: string
  /** UTC offset as EXIF writes it: `-04:00`. */
  readonly offset?: string
  readonly camera?: { readonly make: string; readonly model: string }
}

/** A small JPEG as a camera might write it. */
export async function aPhoto(wish: PhotoWish = {}): Promise<Buffer> {
  const { shade = 0, takenAt = '2026:03:14 09:26:53', offset, camera = { make: 'Example', model: 'Model One' } } = wish
  const colour = { r: shade & 255, g: (shade >> 8) & 255, b: 120 }
  return sharp({ create: { width: 64, height: 48, channels: 3, background: colour } })
    .withExif({
      IFD0: { Make: camera.make, Model: camera.model, ImageDescription: `Test picture ${shade}` },
      IFD2: { DateTimeOriginal: takenAt, ...(offset === undefined ? {} : { OffsetTimeOriginal: offset }) },
    })
    .jpeg()
    .toBuffer()
}

/** Writes photos under the given names into a folder, each with bytes of its own; answers the bytes by name. */
export async function photosIn(folder: string, names: readonly string[]): Promise<ReadonlyMap<string, Buffer>> {
  mkdirSync(folder, { recursive: true })
  const written = new Map<string, Buffer>()
  for (const [shade, name] of names.entries()) {
    const bytes = await aPhoto({ shade })
    writeFileSync(join(folder, name), bytes)
    written.set(name, bytes)
  }
  return written
}
