import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import sharp, { type Sharp } from 'sharp'

/** Two invented cameras: the first writes its UTC offset and its place, the clock of the second is 7 minutes slow. */
export const cardCameras = { first: 'Example One', second: 'Example Two' } as const

/** A picture of the card that is taller than wide, stored lying on its side; red above, blue below as it should be seen. */
export const portraitName = 'ONE_0003.JPG'
/** A photo whose file broke off before its picture begins. */
export const tornName = 'TWO_0005.JPG'
export const doubleName = 'ONE_0009.JPG'
export const textName = 'notes.txt'

/** Names in the order in which their photos were taken, the camera's correction included. */
const firstNames = ['ONE_0001.JPG', 'ONE_0002.JPG', portraitName, 'ONE_0004.JPG'] as const
const secondNames = ['TWO_0001.JPG', 'TWO_0002.JPG', 'TWO_0003.JPG', 'TWO_0004.JPG'] as const

/**
 * Writes a card as it comes from a roof: 8 photos from two cameras, a drawing as PNG, a JPEG that broke off, a
 * double and a text. All were taken on 20 March 2026 from 9:10 in the morning on, in New York's daylight saving time.
 */
export async function writeCameraCard(folder: string): Promise<void> {
  mkdirSync(folder, { recursive: true })
  const write = (name: string, bytes: Buffer | string) => writeFileSync(join(folder, name), bytes)
  for (const [at, name] of firstNames.entries())
    write(name, await photo({ camera: cardCameras.first, at, offset: '-04:00', isPortrait: name === portraitName }))
  for (const [at, name] of secondNames.entries()) write(name, await photo({ camera: cardCameras.second, at: at + 5 }))
  write(doubleName, await photo({ camera: cardCameras.first, at: 0, offset: '-04:00' }))
  write('sketch.png', await picture({ width: 400, height: 300, shade: 200 }).png().toBuffer())
  const torn = await photo({ camera: cardCameras.second, at: 12 })
  write(tornName, torn.subarray(0, torn.indexOf(startOfScan)))
  write(textName, 'Ladder at the left of the garage.')
  // What an operating system leaves on a card.
  write('.DS_Store', 'nothing to see')
}

/** Marker before the picture itself, ITU-T T.81 table B.1. */
const startOfScan = Buffer.from([0xff, 0xda])

interface PhotoWish {
  readonly camera: string
  /** Minutes after 9:10 on the camera's own clock; makes the picture unlike the others. */
  readonly at: number
  readonly offset?: string
  readonly isPortrait?: boolean
}

async function photo({ camera, at, offset, isPortrait = false }: PhotoWish): Promise<Buffer> {
  const upright = picture({
    ...(isPortrait ? { width: 600, height: 800 } : { width: 800, height: 600 }),
    shade: at * 9,
  })
  // A camera held upright stores lines as its sensor reads them and writes orientation 6: turn right to look at it.
  const stored = isPortrait ? sharp(await upright.png().toBuffer()).rotate(270) : upright
  const made = stored.withExif({
    IFD0: { Make: 'Example', Model: camera },
    IFD2: {
      DateTimeOriginal: `2026:03:20 09:${10 + at}:05`,
      ...(offset === undefined ? {} : { OffsetTimeOriginal: offset }),
    },
  })
  return made
    .withMetadata({ orientation: isPortrait ? 6 : 1 })
    .jpeg({ quality: 90 })
    .toBuffer()
}

/** Red in the upper half, blue in the lower, with some noise as of granules. */
function picture({ width, height, shade }: { width: number; height: number; shade: number }): Sharp {
  const pixels = Buffer.alloc(width * height * 3)
  for (let at = 0; at < width * height; at += 1) {
    const isUpper = at < (width * height) / 2
    const grain = (at * 7919 + shade) % 31
    pixels.set([isUpper ? 200 + grain : 30, shade % 120, isUpper ? 30 : 200 + grain], at * 3)
  }
  return sharp(pixels, { raw: { width, height, channels: 3 } })
}
