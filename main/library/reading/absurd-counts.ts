import { EXIF_TAGS, type ExifBlock, exifTagKeys } from './exif-tags.ts'

/** No camera fact is longer; a tag that claims more would be room made for nothing. */
const MAX_VALUES = 65_536
const MAX_XMP_VALUES = 4 * 1024 * 1024

const EXIF_POINTER = 0x8769
const GPS_POINTER = 0x8825

/**
 * Whether a tag that would be read claims an absurd number of values. Readers make room for as many as a tag claims
 * before they look whether the block holds them, so this is asked first (TIFF 6.0, section 2: entries of 12 bytes).
 */
export function hasAbsurdCount(block: Buffer): boolean {
  const isLittle = block[0] === 0x49
  const u16 = (at: number): number =>
    at + 2 > block.length ? 0 : isLittle ? block.readUInt16LE(at) : block.readUInt16BE(at)
  const u32 = (at: number): number =>
    at + 4 > block.length ? 0 : isLittle ? block.readUInt32LE(at) : block.readUInt32BE(at)
  const entriesAt = (directory: number): number[] =>
    Array.from({ length: u16(directory) }, (_, k) => directory + 2 + 12 * k).filter((at) => at + 12 <= block.length)
  const first = u32(4)
  const pointedTo = (id: number): number => u32((entriesAt(first).find((at) => u16(at) === id) ?? block.length) + 8)
  const directories: Record<ExifBlock, number> = {
    ifd0: first,
    exif: pointedTo(EXIF_POINTER),
    gps: pointedTo(GPS_POINTER),
    ifd1: u32(first + 2 + 12 * u16(first)),
  }
  const isAbsurd = (name: ExifBlock, at: number): boolean => {
    const limit = LIMITS.get(`${name} ${u16(at)}`)
    return limit !== undefined && u32(at + 4) > limit
  }
  return (['ifd0', 'exif', 'gps', 'ifd1'] satisfies ExifBlock[]).some(
    (name) => directories[name] > 0 && entriesAt(directories[name]).some((at) => isAbsurd(name, at)),
  )
}

const LIMITS = new Map([
  ...exifTagKeys().map((key): [string, number] => [
    `${EXIF_TAGS[key].block} ${EXIF_TAGS[key].id}`,
    key === 'xmp' ? MAX_XMP_VALUES : MAX_VALUES,
  ]),
  [`ifd0 ${EXIF_POINTER}`, 1],
  [`ifd0 ${GPS_POINTER}`, 1],
])
