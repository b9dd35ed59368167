/** Turns pixels into a camera's JPEG: EXIF as that camera would write it, stored on its side when held upright. */
import { stat } from 'node:fs/promises'
import sharp from 'sharp'
import { CAMERAS } from './cameras.mjs'
import { GROUND_ALTITUDE_FT, planToEarth } from './house-plan.mjs'
import { normalPair, seedOf, stream } from './seed.mjs'
import { UTC_OFFSET_MINUTES, instantMs, subSecond, viewAzimuthDeg } from './walk.mjs'

const DESCRIPTION = 'Rendered picture of an invented house; not a photograph of a real place'
/** Largest file wanted; quality steps down until it fits. */
const MOST_BYTES = 400 * 1024

/** @param {{ view: import('./walk.mjs').View, shot: any, pixels: Buffer, file: string }} photo @returns {Promise<number>} bytes written */
export async function writePhoto({ view, shot, pixels, file }) {
  const picture = sharp(pixels, { raw: { width: shot.width, height: shot.height, channels: 4 } })
    .removeAlpha()
    .flip()
  const upright = await picture.raw().toBuffer()
  const raw = { width: shot.width, height: shot.height, channels: /** @type {3} */ (3) }
  for (const quality of [84, 81, 78, 75, 72, 69, 66, 62]) {
    await sharp(upright, { raw })
      .rotate(view.portrait ? 270 : 0)
      .withMetadata({ orientation: view.portrait ? 6 : 1 })
      .withExif(exifOf(view, shot))
      .jpeg({ quality, mozjpeg: true, chromaSubsampling: '4:2:0' })
      .toFile(file)
    if ((await stat(file)).size <= MOST_BYTES) break
  }
  return (await stat(file)).size
}

/** @param {import('./walk.mjs').View} view @param {any} shot */
function exifOf(view, shot) {
  const camera = CAMERAS[view.camera]
  const written = new Date(instantMs(view) + UTC_OFFSET_MINUTES * 60_000 - camera.correctionMs)
  const local = written.toISOString().slice(0, 19).replaceAll('-', ':').replace('T', ' ')
  /** @type {Record<string, string>} */
  const offset =
    view.camera === 'phone' ? { OffsetTime: '-05:00', OffsetTimeOriginal: '-05:00', OffsetTimeDigitized: '-05:00' } : {}
  return {
    IFD0: {
      Make: camera.make,
      Model: camera.model,
      ImageDescription: DESCRIPTION,
      DateTime: local,
      Orientation: view.portrait ? '6' : '1',
    },
    IFD2: {
      DateTimeOriginal: local,
      DateTimeDigitized: local,
      SubSecTimeOriginal: String(subSecond(view)).padStart(2, '0'),
      ...offset,
      BodySerialNumber: camera.serial,
      FocalLength: camera.focalMm,
      FNumber: camera.fNumber,
      ISOSpeedRatings: String(camera.iso),
      ExposureTime: camera.exposure,
    },
    ...(view.camera === 'phone' ? { IFD3: positionOf(view, shot) } : {}),
  }
}

/** Where the phone believes it is: truth plus a slowly wandering error of a few metres. @param {import('./walk.mjs').View} view @param {any} shot */
function positionOf(view, shot) {
  const random = stream(seedOf(`gps:${view.name}`))
  const [ex, ey] = normalPair(random)
  const [turn, rise] = normalPair(random)
  const errorM = 3.2 + random() * 1.9
  const sigmaFt = (2.1 * errorM) / 4 / 0.3048
  const { latDeg, lonDeg } = planToEarth([view.stand[0] + ex * sigmaFt, view.stand[1] + ey * sigmaFt])
  const altitudeM = (GROUND_ALTITUDE_FT + shot.eye[1]) * 0.3048 + rise * 1.2
  const azimuth = (((viewAzimuthDeg(view) + turn * 4) % 360) + 360) % 360
  const utc = new Date(Math.floor(instantMs(view) / 1000) * 1000 - 1000)
  return {
    GPSLatitudeRef: latDeg < 0 ? 'S' : 'N',
    GPSLatitude: sexagesimal(latDeg),
    GPSLongitudeRef: lonDeg < 0 ? 'W' : 'E',
    GPSLongitude: sexagesimal(lonDeg),
    GPSAltitudeRef: '0',
    GPSAltitude: `${Math.round(Math.max(0, altitudeM) * 100)}/100`,
    GPSImgDirectionRef: 'T',
    GPSImgDirection: `${Math.floor(azimuth * 100)}/100`,
    GPSHPositioningError: `${Math.round(errorM * 100)}/100`,
    GPSTimeStamp: `${utc.getUTCHours()}/1 ${utc.getUTCMinutes()}/1 ${utc.getUTCSeconds()}/1`,
    GPSDateStamp: utc.toISOString().slice(0, 10).replaceAll('-', ':'),
  }
}

/** Degrees, minutes and hundredths of seconds as EXIF rationals. @param {number} deg */
function sexagesimal(deg) {
  const hundredths = Math.round(Math.abs(deg) * 360_000)
  return `${Math.floor(hundredths / 360_000)}/1 ${Math.floor((hundredths % 360_000) / 6000)}/1 ${hundredths % 6000}/100`
}
