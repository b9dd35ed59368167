import type { JobSnapshot } from '../../app/contract/jobs.ts'
import { cameraName } from '../../app/evidence/camera-name.ts'
import type { Finding } from '../../app/evidence/finding.ts'
import { jobZone } from '../../app/evidence/job-zone.ts'
import type { Photo } from '../../app/evidence/photo.ts'
import type { Video } from '../../app/evidence/video.ts'
import { inWalkOrder, isPlacedByHand } from '../../app/evidence/walk-order.ts'
import type { CameraId, NarrationId } from '../../app/job/ids.ts'
import { readingInstantMs } from '../../app/fieldtest/reading-instant.ts'
import type { Reading } from '../../app/fieldtest/reading.ts'
import { recordingStartMs } from '../../app/narration/aligned.ts'

/** A photo with a known time. */
export interface TimedPhoto {
  readonly photo: Photo
  readonly instantMs: number
}

/** One camera's photos in order of time. */
export interface Lane {
  readonly cameraId: CameraId | null
  readonly name: string
  readonly photos: readonly TimedPhoto[]
}

/** A video with a known start, from its first frame to its last. */
export interface TimedVideo {
  readonly video: Video
  readonly fromMs: number
  readonly toMs: number
}

/** What the strip shows. */
export interface StripContent {
  readonly lanes: readonly Lane[]
  /** Findings at the time of the first of their photos. */
  readonly findings: readonly { readonly finding: Finding; readonly instantMs: number }[]
  /** Readings at the time that was written down, or at their first photo's. */
  readonly readings: readonly { readonly reading: Reading; readonly instantMs: number }[]
  readonly videos: readonly TimedVideo[]
  /** Cues of the narrations that are on the clock, by their start. */
  readonly cues: readonly TimedCue[]
  /** Photos without a time that nobody placed. */
  readonly untimed: readonly Photo[]
  /** Photos without a time at the place a person gave them: shown beside their neighbours, never at a time of their own. */
  readonly placed: readonly {
    readonly photo: Photo
    readonly afterMs: number | null
    readonly beforeMs: number | null
  }[]
}

/** A cue with the instants at which it begins and ends. */
export interface TimedCue {
  readonly narrationId: NarrationId
  readonly cue: number
  readonly text: string
  readonly instantMs: number
  readonly endMs: number
}

/** Sorts a job's photos into lanes by camera, and its findings onto the same ruler. */
export function stripContent(
  job: Pick<JobSnapshot, 'job' | 'photos' | 'videos' | 'cameras' | 'findings' | 'readings' | 'narrations'>,
): StripContent {
  const zone = jobZone(job.job)
  const timed = job.photos.flatMap((photo) =>
    photo.time.instantMs === null ? [] : [{ photo, instantMs: photo.time.instantMs }],
  )
  const instantOf = new Map(timed.map((one) => [one.photo.id, one.instantMs]))
  const findings = job.findings.flatMap((finding) => {
    const instants = finding.photos.flatMap((shown) => instantOf.get(shown.photoId) ?? [])
    return instants.length === 0 ? [] : [{ finding, instantMs: Math.min(...instants) }]
  })
  return {
    lanes: lanesOf(timed, job.cameras),
    findings: findings.toSorted((a, b) => a.instantMs - b.instantMs),
    readings: job.readings
      .flatMap((reading) => {
        const instantMs = readingInstantMs(reading, job.photos, zone)
        return instantMs === null ? [] : [{ reading, instantMs }]
      })
      .toSorted((a, b) => a.instantMs - b.instantMs),
    videos: job.videos.flatMap((video) => {
      const fromMs = video.time.instantMs
      return fromMs === null ? [] : [{ video, fromMs, toMs: fromMs + video.file.durationMs }]
    }),
    cues: timedCues(job),
    ...withoutTime(job.photos),
  }
}

function timedCues({
  narrations,
  photos,
  videos,
}: Pick<JobSnapshot, 'narrations' | 'photos' | 'videos'>): readonly TimedCue[] {
  return narrations
    .flatMap((narration) => {
      const startMs = recordingStartMs(narration, { photos, videos })
      if (startMs === null) return []
      return narration.cues.map((cue, at) => ({
        narrationId: narration.id,
        cue: at,
        text: cue.text,
        instantMs: startMs + cue.startMs,
        endMs: startMs + cue.endMs,
      }))
    })
    .toSorted((a, b) => a.instantMs - b.instantMs)
}

function withoutTime(photos: readonly Photo[]): Pick<StripContent, 'untimed' | 'placed'> {
  const untimed = photos.filter((photo) => photo.time.instantMs === null)
  if (!untimed.some(isPlacedByHand)) return { untimed, placed: [] }
  const order = inWalkOrder(photos)
  const lastTimed = order.findLastIndex((photo) => photo.time.instantMs !== null)
  const placed = order.flatMap((photo, at) => {
    if (!isPlacedByHand(photo)) return []
    const afterMs = order.slice(0, at).findLast((one) => one.time.instantMs !== null)?.time.instantMs ?? null
    const beforeMs =
      at > lastTimed ? null : (order.slice(at).find((one) => one.time.instantMs !== null)?.time.instantMs ?? null)
    return [{ photo, afterMs, beforeMs }]
  })
  return { untimed: untimed.filter((photo) => !isPlacedByHand(photo)), placed }
}

function lanesOf(timed: readonly TimedPhoto[], cameras: JobSnapshot['cameras']): readonly Lane[] {
  const lanes = new Map<CameraId | null, TimedPhoto[]>()
  for (const one of timed) {
    const lane = lanes.get(one.photo.cameraId)
    if (lane === undefined) lanes.set(one.photo.cameraId, [one])
    else lane.push(one)
  }
  return [...lanes]
    .map(([cameraId, photos]) => ({
      cameraId,
      name: cameraName(cameras.find((camera) => camera.id === cameraId)),
      photos: photos.toSorted((a, b) => a.instantMs - b.instantMs || a.photo.number - b.photo.number),
    }))
    .toSorted((a, b) => (a.photos[0]?.instantMs ?? 0) - (b.photos[0]?.instantMs ?? 0))
}

/** The photo nearest to an instant, by time; null in an empty lane. Binary search over the lane's order. */
export function nearestPhoto(lane: Lane, instantMs: number): TimedPhoto | null {
  const { photos } = lane
  let low = 0
  let high = photos.length
  while (low < high) {
    const middle = (low + high) >> 1
    if ((photos[middle]?.instantMs ?? Infinity) < instantMs) low = middle + 1
    else high = middle
  }
  const after = photos[low]
  const before = photos[low - 1]
  if (after === undefined || before === undefined) return after ?? before ?? null
  return after.instantMs - instantMs < instantMs - before.instantMs ? after : before
}
