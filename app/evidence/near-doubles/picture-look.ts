import { z } from 'zod'
import { HASH_SIDE, pictureHash } from './picture-hash.ts'

/** How a picture looks in a few numbers, by which near-doubles are found and the best of them is proposed. */
export const pictureLookSchema = z.object({
  hash: z.string().regex(/^[0-9a-f]{16}$/),
  /** Variance of the Laplacian at a fixed size, grey levels squared: more for a sharper picture of the same thing. */
  sharpness: z.number().nonnegative(),
  /** Share of the picture that is burnt out, 0 to 1. */
  clippedShare: z.number().min(0).max(1),
})
export type PictureLook = z.output<typeof pictureLookSchema>

/** Long edge of the grey picture that is looked at: the same for all, so that sharpness can be compared. */
export const LOOK_LONG_EDGE_PX = 480
const BURNT_OUT = 250
/** Every second row tells as much of a picture's sharpness as all of them. */
const ROW_STEP = 2

/** A grey picture, one byte a pixel, row by row. */
export interface GreyPicture {
  readonly data: Uint8Array
  readonly width: number
  readonly height: number
}

/** Pixels as a decoder hands them over: three channels or more, row by row. */
export interface ColourPixels {
  readonly data: Uint8Array
  readonly width: number
  readonly height: number
  readonly channels: number
}

/**
 * Brings a picture that is at least as large to the fixed size, in grey: each pixel is the mean of four, so that grain
 * does not pass for sharpness. Null for a smaller picture, which has to be enlarged first.
 */
export function greyAtFixedSize({ data, width, height, channels }: ColourPixels): GreyPicture | null {
  const scale = Math.max(width, height) / LOOK_LONG_EDGE_PX
  if (scale < 1) return null
  const [wide, high] = [Math.max(1, Math.floor(width / scale)), Math.max(1, Math.floor(height / scale))]
  const grey = new Uint8Array(wide * high)
  const half = Math.floor(scale / 2)
  const down = half * width * channels
  const right = half * channels
  for (let y = 0; y < high; y += 1) {
    const row = Math.floor(y * scale) * width
    for (let x = 0; x < wide; x += 1) {
      const at = (row + Math.floor(x * scale)) * channels
      let sum = 0
      // Written out: a loop over the four would cost more than the rest together.
      sum += (data[at] ?? 0) + 2 * (data[at + 1] ?? 0) + (data[at + 2] ?? 0)
      sum += (data[at + right] ?? 0) + 2 * (data[at + right + 1] ?? 0) + (data[at + right + 2] ?? 0)
      sum += (data[at + down] ?? 0) + 2 * (data[at + down + 1] ?? 0) + (data[at + down + 2] ?? 0)
      const across = at + down + right
      sum += (data[across] ?? 0) + 2 * (data[across + 1] ?? 0) + (data[across + 2] ?? 0)
      grey[y * wide + x] = sum >> 4
    }
  }
  return { data: grey, width: wide, height: high }
}

/** Looks at a grey picture of the fixed size. */
export function pictureLook(grey: GreyPicture): PictureLook {
  return {
    hash: pictureHash(shrunk(grey)),
    sharpness: Math.round(laplacianVariance(grey) * 10) / 10,
    clippedShare: Math.round(burntOutShare(grey) * 10_000) / 10_000,
  }
}

/**
 * Variance of the Laplacian (the 4-neighbour kernel) over a picture, a common measure of focus: Pech-Pacheco and others,
 * "Diatom autofocusing in brightfield microscopy", ICPR 2000.
 */
export function laplacianVariance({ data, width, height }: GreyPicture): number {
  let sum = 0
  let squares = 0
  let count = 0
  for (let y = 1; y < height - 1; y += ROW_STEP) {
    for (let at = y * width + 1; at < (y + 1) * width - 1; at += 1) {
      const edge =
        (data[at - 1] ?? 0) +
        (data[at + 1] ?? 0) +
        (data[at - width] ?? 0) +
        (data[at + width] ?? 0) -
        4 * (data[at] ?? 0)
      sum += edge
      squares += edge * edge
    }
    count += Math.max(0, width - 2)
  }
  return count === 0 ? 0 : Math.max(0, squares / count - (sum / count) ** 2)
}

function burntOutShare({ data }: GreyPicture): number {
  let burnt = 0
  for (const level of data) if (level >= BURNT_OUT) burnt += 1
  return burnt / Math.max(1, data.length)
}

/** Means over a grid of 32 by 32, whatever the proportions. */
function shrunk({ data, width, height }: GreyPicture): Float64Array {
  const sums = new Float64Array(HASH_SIDE * HASH_SIDE)
  const counts = new Float64Array(HASH_SIDE * HASH_SIDE)
  const columns = Uint8Array.from({ length: width }, (_, x) => Math.floor((x * HASH_SIDE) / width))
  for (let y = 0; y < height; y += 1) {
    const row = Math.floor((y * HASH_SIDE) / height) * HASH_SIDE
    for (let x = 0; x < width; x += 1) {
      const cell = row + (columns[x] ?? 0)
      sums[cell] = (sums[cell] ?? 0) + (data[y * width + x] ?? 0)
      counts[cell] = (counts[cell] ?? 0) + 1
    }
  }
  return sums.map((sum, cell) => sum / Math.max(1, counts[cell] ?? 0))
}
