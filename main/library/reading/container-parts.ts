/** What a picture's container holds besides the picture itself. Everything is a view on the file's own bytes. */
export type PictureParts = {
  /** The TIFF-shaped block of camera facts (EXIF), starting at its byte order mark. */
  exif: Buffer | null
  /** The XMP packet. */
  xmp: Buffer | null
  /** Size of the stored pixels; null where the header can't be read. */
  stored: { widthPx: number; heightPx: number } | null
  /** Quarter turns that the container itself asks for; null where it leaves turning to EXIF. */
  containerQuarterTurns: number | null
  /** Whether the block's own tags state the size of the picture, as in a TIFF; elsewhere they may be stale. */
  isSizeInTags: boolean
  /** How many pictures the container holds for looking at, where it says so; thumbnails and gain maps don't count. */
  pictures: number
}

/** A container without any of the parts, to start from. */
export const NO_PARTS: PictureParts = {
  exif: null,
  xmp: null,
  stored: null,
  containerQuarterTurns: null,
  isSizeInTags: false,
  pictures: 1,
}
