import { z } from 'zod'
import { cameraIdSchema, videoIdSchema } from '../job/ids.ts'
import { resolvePhotoTime, photoTimeSchema, type PhotoTime, writtenTimeSchema } from './photo-time.ts'
import { cameraPositionSchema, fileProblemSchema, photoFileSchema } from './photo.ts'
import { offsetAt } from './zone-at.ts'

/** The facts a video file brings, read once when it is taken in and never changed. */
export const videoFileSchema = z.object({
  ...photoFileSchema.pick({ sha256: true, bytes: true, fileName: true, mediaType: true, camera: true }).shape,
  durationMs: z.number().int().nonnegative(),
  /** Size as it should be looked at, turned by `rotationDeg`. */
  widthPx: z.number().int().positive(),
  heightPx: z.number().int().positive(),
  /** Clockwise turn that the container asks for. */
  rotationDeg: z.union([z.literal(0), z.literal(90), z.literal(180), z.literal(270)]),
  /** Mean over the recording's beginning; null where the file does not tell. */
  framesPerSecond: z.number().positive().nullable(),
  /** How the picture is coded, as RFC 6381 writes it: `avc1.64001f`; the container's own mark where that isn't known. */
  codec: z.string(),
  /** How the sound is coded; null for a silent video. */
  audioCodec: z.string().nullable(),
  position: cameraPositionSchema.nullable(),
  /** The date of recording with its own offset, where the camera wrote one beside the container's time. */
  written: writtenTimeSchema,
  /** The container's creation time, which ISO/IEC 14496-12 asks to be UTC, milliseconds since 1970; null where it is 0. */
  containerUtcMs: z.number().int().nullable(),
  problems: z.array(fileProblemSchema),
})
export type VideoFile = z.output<typeof videoFileSchema>

/** What people say of a video. */
export const videoTagsSchema = z.object({
  caption: z.string().max(2000).default(''),
  /** When the recording began, found out by a person; null leaves it to the file. */
  startSet: z
    .object({ instantMs: z.number().int(), why: z.string().trim().min(3, 'Say how that is known.').max(1000) })
    .nullable()
    .default(null),
})
export type VideoTags = z.output<typeof videoTagsSchema>

/** A video of a job; `time.instantMs` is the instant of its first frame. */
export const videoSchema = z.object({
  id: videoIdSchema,
  number: z.number().int().positive(),
  cameraId: cameraIdSchema.nullable(),
  file: videoFileSchema,
  tags: videoTagsSchema,
  time: photoTimeSchema,
  takenInAtMs: z.number().int(),
})
export type Video = z.output<typeof videoSchema>

/**
 * When a video begins. Order of trust: a person who says how it is known; the date of recording that the camera wrote with
 * it, which is the moment recording began; the container's time, which is often the moment the file was finished, and
 * which some cameras write in local time against the standard. Both of the file's are corrected by the camera's clock.
 */
export function resolveVideoTime(
  video: { readonly file: Pick<VideoFile, 'written' | 'containerUtcMs'>; readonly tags: VideoTags },
  given: { placeZone: string | null; jobZone: string | null; correctionMs: number },
): PhotoTime {
  const { file, tags } = video
  const zone = given.placeZone ?? given.jobZone
  if (tags.startSet !== null) {
    const { instantMs } = tags.startSet
    return { basis: 'set-by-hand', offsetMinutes: offsetAt(instantMs, zone) ?? 0, correctionMs: 0, instantMs }
  }
  const recorded = resolvePhotoTime(file.written, given)
  if (recorded.instantMs !== null || file.containerUtcMs === null) return recorded
  const instantMs = file.containerUtcMs + given.correctionMs
  const offsetMinutes = offsetAt(instantMs, zone) ?? 0
  return { basis: 'container-utc', offsetMinutes, correctionMs: given.correctionMs, instantMs }
}

/** The time of a frame: the video's start and how far into it the frame is, milliseconds. */
export function timeOfFrame(start: PhotoTime, offsetMs: number): PhotoTime {
  return { ...start, instantMs: start.instantMs === null ? null : start.instantMs + offsetMs }
}

/** A coding as people name it: "H.264" for `avc1.64001f`. */
export function codecName(codec: string): string {
  const known: readonly (readonly [RegExp, string])[] = [
    [/^avc[13]/, 'H.264'],
    [/^(hvc1|hev1)/, 'H.265 (HEVC)'],
    [/^av01/, 'AV1'],
    [/^vp0?9/, 'VP9'],
    [/^vp0?8/, 'VP8'],
    [/^ap[a-z0-9]{2}$/, 'ProRes'],
    [/^mp4v/, 'MPEG-4 Visual'],
    [/^(mp4a\.40|aac)/, 'AAC'],
    [/^opus/i, 'Opus'],
  ]
  return known.find(([pattern]) => pattern.test(codec))?.[1] ?? codec
}
