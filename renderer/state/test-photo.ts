import { type Photo, photoSchema } from '../../app/evidence/photo.ts'

interface Given {
  readonly number?: number
  readonly cameraId?: string | null
  readonly facetId?: string | null
  readonly instantMs?: number | null
  readonly offsetMinutes?: number | null
}

/** A photo for tests, of which only what a test is about has to be said. */
export function testPhoto(id: string, given: Given): Photo {
  const { number = 1, cameraId = null, facetId = null, instantMs = null, offsetMinutes = null } = given
  return photoSchema.parse({
    id,
    number,
    cameraId,
    file: {
      sha256: '0'.repeat(64),
      bytes: 1,
      fileName: `${id}.jpg`,
      mediaType: 'image/jpeg',
      widthPx: null,
      heightPx: null,
      orientation: 1,
      camera: { make: '', model: '', serial: '' },
      written: { tag: null, raw: null, local: null, offsetMinutes: null, gpsUtcMs: null },
      position: null,
      direction: null,
      problems: [],
    },
    tags: { facetId },
    time: { basis: 'unknown', offsetMinutes, correctionMs: 0, instantMs },
    takenInAtMs: 0,
    preview: 'none',
  })
}
