import type { CameraId } from '../job/ids.ts'
import type { CaseFile } from './case-file.ts'
import type { Camera } from './camera.ts'
import { gpsComparison } from './gps-comparison.ts'
import { placeOfPhoto } from './photo-zone.ts'
import type { Photo } from './photo.ts'
import { isDaylight, isPlainlyLit, photosAtNight } from './sun-check.ts'

/** A clock that seems to be wrong: what would set it right, and what says so. */
export interface ClockSuggestion {
  readonly cameraId: CameraId
  readonly from: 'gps' | 'other-camera' | 'sun'
  /** To be added to the correction that the camera has now, milliseconds. */
  readonly addMs: number
  /** How many photos say so. */
  readonly photos: number
  /** The camera that disagrees, for `other-camera`. */
  readonly otherId: CameraId | null
}

type Evidence = Pick<CaseFile, 'job' | 'photos' | 'cameras'>

const HOUR_MS = 3_600_000
const HALF_HOUR_MS = HOUR_MS / 2
/** A GPS fix can be this old when the camera writes it beside the time. */
const OLD_FIX_MS = 5 * 60_000
/** Cameras that walked the same roof overlap for most of the shorter walk. */
const MOST = 0.5
/** As many photos as make a comparison of two cameras worth telling. */
const FEW = 3

/**
 * Clocks that seem to be wrong, by the best witness of each camera: its own GPS time, then the sun, then the other
 * cameras. Whole and half hours usually mean a wrong zone or daylight saving (common practice, no source). Smaller
 * differences from GPS time are told from 5 minutes on, since a fix can be minutes old.
 */
export function clockSuggestions(evidence: Evidence): readonly ClockSuggestion[] {
  const byCamera = new Map<CameraId | null, Photo[]>()
  for (const photo of evidence.photos) {
    const own = byCamera.get(photo.cameraId)
    if (own === undefined) byCamera.set(photo.cameraId, [photo])
    else own.push(photo)
  }
  const dark = photosAtNight(evidence.photos, evidence.job)
  return evidence.cameras.flatMap((camera) => {
    const own = byCamera.get(camera.id) ?? []
    const found =
      byGps(camera, own, evidence) ??
      bySun(camera, { own, dark }, evidence) ??
      byOthers(camera, byCamera, evidence.cameras)
    return found === null ? [] : [found]
  })
}

function byGps(camera: Camera, own: readonly Photo[], { job }: Evidence): ClockSuggestion | null {
  const compared = gpsComparison(own, job.sheet)
  if (compared === null) return null
  const restMs = compared.correctionMs - compared.presentMs
  const half = Math.round(restMs / HALF_HOUR_MS) * HALF_HOUR_MS
  const isWhole = half !== 0 && Math.abs(restMs - half) <= OLD_FIX_MS
  if (!isWhole && Math.abs(restMs) <= OLD_FIX_MS) return null
  const addMs = isWhole ? half : Math.round(restMs / 1000) * 1000
  return { cameraId: camera.id, from: 'gps', addMs, photos: compared.count, otherId: null }
}

function bySun(
  camera: Camera,
  { own, dark }: { own: readonly Photo[]; dark: readonly Photo[] },
  { job }: Evidence,
): ClockSuggestion | null {
  const lit = dark.filter((photo) => photo.cameraId === camera.id && isPlainlyLit(photo))
  if (lit.length === 0) return null
  const shown = own.filter((photo) => photo.tags.role !== 'document')
  const [first] = lit
  const zoneHours = Math.round((first?.time.offsetMinutes ?? 0) / 60)
  const hours = likelyHours(zoneHours).find((hour) => shown.every((photo) => fitsSun(photo, hour * HOUR_MS, job)))
  if (hours === undefined) return null
  return { cameraId: camera.id, from: 'sun', addMs: hours * HOUR_MS, photos: lit.length, otherId: null }
}

/** Likeliest first: daylight saving, a clock left on UTC, morning for afternoon, then any whole hours, least first. */
function likelyHours(zoneHours: number): readonly number[] {
  const rest = Array.from({ length: 14 }, (_, at) => [at + 1, -at - 1]).flat()
  return [...new Set([1, -1, zoneHours, 12, -12, ...rest])].filter((hours) => hours !== 0)
}

function fitsSun(photo: Photo, shiftMs: number, job: Evidence['job']): boolean {
  const place = placeOfPhoto(photo.file, job)
  const { instantMs } = photo.time
  return place === null || instantMs === null || isDaylight(instantMs + shiftMs, place)
}

/** Two cameras that never overlap, but would by a whole number of hours; the one without GPS time of its own is doubted. */
function byOthers(
  camera: Camera,
  byCamera: ReadonlyMap<CameraId | null, readonly Photo[]>,
  cameras: readonly Camera[],
): ClockSuggestion | null {
  const own = instants(byCamera.get(camera.id))
  if (own.length < FEW || hasGps(byCamera.get(camera.id))) return null
  for (const other of cameras) {
    const theirs = instants(byCamera.get(other.id))
    // Of two cameras that disagree only one is doubted: the one that took fewer photos, or comes later in the list.
    const isDoubted =
      hasGps(byCamera.get(other.id)) ||
      own.length < theirs.length ||
      (own.length === theirs.length && cameras.indexOf(camera) > cameras.indexOf(other))
    if (other.id === camera.id || theirs.length < FEW || !isDoubted) continue
    if (share(own, theirs, 0) > 0) return null
    const hours = likelyHours(0).find((hour) => share(own, theirs, hour * HOUR_MS) >= MOST)
    if (hours !== undefined)
      return {
        cameraId: camera.id,
        from: 'other-camera',
        addMs: hours * HOUR_MS,
        photos: own.length,
        otherId: other.id,
      }
  }
  return null
}

/** How much of one walk falls into the time of another when it is shifted. */
function share(own: readonly number[], theirs: readonly number[], shiftMs: number): number {
  const first = theirs[0] ?? Infinity
  const last = theirs.at(-1) ?? -Infinity
  return own.filter((ms) => ms + shiftMs >= first && ms + shiftMs <= last).length / own.length
}

function hasGps(photos: readonly Photo[] = []): boolean {
  return photos.some(({ file }) => file.written.gpsUtcMs !== null)
}

function instants(photos: readonly Photo[] = []): readonly number[] {
  return photos.flatMap(({ time }) => time.instantMs ?? []).toSorted((a, b) => a - b)
}
