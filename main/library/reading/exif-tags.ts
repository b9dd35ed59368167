/** The four tag directories that are looked into. */
export type ExifBlock = 'ifd0' | 'exif' | 'gps' | 'ifd1'

/**
 * The tags that are read, with their directory, number and name in the Exif standard (CIPA DC-008), and whether they
 * hold text or numbers. `imageWidth`, `imageLength` and `xmp` count only where the block is a whole TIFF file.
 */
export const EXIF_TAGS = {
  imageWidth: { block: 'ifd0', id: 0x0100, name: 'ImageWidth', holds: 'numbers' },
  imageLength: { block: 'ifd0', id: 0x0101, name: 'ImageLength', holds: 'numbers' },
  make: { block: 'ifd0', id: 0x010f, name: 'Make', holds: 'text' },
  model: { block: 'ifd0', id: 0x0110, name: 'Model', holds: 'text' },
  orientation: { block: 'ifd0', id: 0x0112, name: 'Orientation', holds: 'numbers' },
  dateTime: { block: 'ifd0', id: 0x0132, name: 'DateTime', holds: 'text' },
  xmp: { block: 'ifd0', id: 0x02bc, name: 'XMP', holds: 'text' },
  cameraSerial: { block: 'ifd0', id: 0xc62f, name: 'CameraSerialNumber', holds: 'text' },
  dateTimeOriginal: { block: 'exif', id: 0x9003, name: 'DateTimeOriginal', holds: 'text' },
  dateTimeDigitized: { block: 'exif', id: 0x9004, name: 'DateTimeDigitized', holds: 'text' },
  offsetTime: { block: 'exif', id: 0x9010, name: 'OffsetTime', holds: 'text' },
  offsetTimeOriginal: { block: 'exif', id: 0x9011, name: 'OffsetTimeOriginal', holds: 'text' },
  offsetTimeDigitized: { block: 'exif', id: 0x9012, name: 'OffsetTimeDigitized', holds: 'text' },
  subSecTime: { block: 'exif', id: 0x9290, name: 'SubSecTime', holds: 'text' },
  subSecTimeOriginal: { block: 'exif', id: 0x9291, name: 'SubSecTimeOriginal', holds: 'text' },
  subSecTimeDigitized: { block: 'exif', id: 0x9292, name: 'SubSecTimeDigitized', holds: 'text' },
  bodySerial: { block: 'exif', id: 0xa431, name: 'BodySerialNumber', holds: 'text' },
  latitudeRef: { block: 'gps', id: 0x01, name: 'GPSLatitudeRef', holds: 'text' },
  latitude: { block: 'gps', id: 0x02, name: 'GPSLatitude', holds: 'numbers' },
  longitudeRef: { block: 'gps', id: 0x03, name: 'GPSLongitudeRef', holds: 'text' },
  longitude: { block: 'gps', id: 0x04, name: 'GPSLongitude', holds: 'numbers' },
  altitudeRef: { block: 'gps', id: 0x05, name: 'GPSAltitudeRef', holds: 'numbers' },
  altitude: { block: 'gps', id: 0x06, name: 'GPSAltitude', holds: 'numbers' },
  gpsTimeStamp: { block: 'gps', id: 0x07, name: 'GPSTimeStamp', holds: 'numbers' },
  imgDirectionRef: { block: 'gps', id: 0x10, name: 'GPSImgDirectionRef', holds: 'text' },
  imgDirection: { block: 'gps', id: 0x11, name: 'GPSImgDirection', holds: 'numbers' },
  gpsDateStamp: { block: 'gps', id: 0x1d, name: 'GPSDateStamp', holds: 'text' },
  hPositioningError: { block: 'gps', id: 0x1f, name: 'GPSHPositioningError', holds: 'numbers' },
  thumbnailOffset: { block: 'ifd1', id: 0x0201, name: 'JPEGInterchangeFormat', holds: 'numbers' },
  thumbnailLength: { block: 'ifd1', id: 0x0202, name: 'JPEGInterchangeFormatLength', holds: 'numbers' },
} as const satisfies Record<string, { block: ExifBlock; id: number; name: string; holds: 'text' | 'numbers' }>

export type ExifTagKey = keyof typeof EXIF_TAGS

/**
 * Tag values as stored, not interpreted: text without its closing zero bytes, numbers as a list. A fraction is its
 * quotient, so a zero denominator gives `NaN` or an infinity. Numbers that were stored as text stay text.
 */
export type ExifValues = { [K in ExifTagKey]?: string | readonly number[] }

/** The text of a tag, '' when it is absent or holds no text. */
export function textOf(values: ExifValues, key: ExifTagKey): string {
  const value = values[key]
  return typeof value === 'string' ? value : ''
}

/** The numbers of a tag, empty when it is absent or holds none. */
export function numbersOf(values: ExifValues, key: ExifTagKey): readonly number[] {
  const value = values[key]
  return typeof value === 'object' ? value : []
}

/** Every key of `EXIF_TAGS`. */
export function exifTagKeys(): ExifTagKey[] {
  return Object.keys(EXIF_TAGS).filter((key): key is ExifTagKey => key in EXIF_TAGS)
}
