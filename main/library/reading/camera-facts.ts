import type { PhotoFile } from '../../../app/evidence/photo.ts'
import { type ExifValues, textOf } from './exif-tags.ts'
import type { XmpFacts } from './xmp-facts.ts'

const MAX_NAME_LENGTH = 120

/** Make, model and serial number of the camera, without padding; '' where the file does not say. */
export function readCamera(exif: ExifValues, xmp: XmpFacts): PhotoFile['camera'] {
  return {
    make: firstOf(textOf(exif, 'make'), xmp.make),
    model: firstOf(textOf(exif, 'model'), xmp.model),
    serial: firstOf(textOf(exif, 'bodySerial'), textOf(exif, 'cameraSerial'), xmp.serial),
  }
}

function firstOf(...candidates: string[]): string {
  return candidates.map((text) => text.trim().slice(0, MAX_NAME_LENGTH)).find((text) => text !== '') ?? ''
}
