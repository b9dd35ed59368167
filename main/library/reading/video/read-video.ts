import { z } from 'zod'
import type { FileProblem } from '../../../../app/evidence/photo.ts'
import { videoFileSchema, type VideoFile } from '../../../../app/evidence/video.ts'
import { createThreads, TOO_LONG } from '../../threads.ts'
import { readIso6709 } from './iso-6709.ts'
import { type MovieBoxes, readMovieBoxes } from './movie-boxes.ts'
import { readVideoTime } from './video-time.ts'

const APPLE = 'com.apple.quicktime.'
const MOST_PX = 16_384
const MAX_NAME_LENGTH = 120

/** A video's record, or why the file is no video that can be kept as one. */
export type VideoFacts = { ok: true; file: VideoFile } | { ok: false; why: string }

/**
 * Reads the facts of a video file: its tables and notes, never the pictures themselves, so a file of any length is read
 * quickly and without holding it. Never throws for what the file holds.
 *
 * @param path where the file stands
 * @param known what is known of it already; `nowMs` is the take-in moment
 */
export async function readVideo(
  path: string,
  known: Pick<VideoFile, 'sha256' | 'bytes' | 'fileName' | 'mediaType' | 'problems'> & { nowMs: number },
): Promise<VideoFacts> {
  try {
    const [facts, boxes] = await Promise.all([factsOf(path), readMovieBoxes(path)])
    if (facts === null) return { ok: false, why: 'no moving picture can be read in it' }
    const { tags, ...shown } = facts
    const { nowMs, problems, ...file } = known
    const noted = (key: string): string => tags.get(`${APPLE}${key}`) ?? boxes?.userData.get(USER_DATA[key] ?? '') ?? ''
    const time = readVideoTime({ recorded: recordedIn(tags, boxes), createdS: boxes?.createdS ?? 0, nowMs })
    const place = readPlace(noted('location.ISO6709'))
    return {
      ok: true,
      file: {
        ...file,
        ...shown,
        durationMs: boxes === null || boxes.durationMs === 0 ? shown.durationMs : boxes.durationMs,
        camera: { make: named(noted('make')), model: named(noted('model')), serial: '' },
        position: place.position,
        written: time.written,
        containerUtcMs: time.containerUtcMs,
        problems: [...problems, ...time.problems, ...place.problems],
      },
    }
  } catch (cause) {
    const isSlow = cause instanceof Error && cause.message === TOO_LONG
    return { ok: false, why: isSlow ? 'reading its tables takes too long' : 'its tables are damaged' }
  }
}

/** QuickTime user data under which older phones and cameras write the same things. */
const USER_DATA: Readonly<Record<string, string>> = {
  'location.ISO6709': '\xa9xyz',
  make: '\xa9mak',
  model: '\xa9mod',
}

function recordedIn(tags: ReadonlyMap<string, string>, boxes: MovieBoxes | null): { tag: string; text: string } | null {
  const apple = tags.get(`${APPLE}creationdate`)
  if (apple !== undefined) return { tag: `${APPLE}creationdate`, text: apple }
  const day = boxes?.userData.get('\xa9day')
  // A day alone is typed by an editing program; a camera writes the time with it.
  return day !== undefined && /T\d\d:/.test(day) ? { tag: '©day', text: day } : null
}

function readPlace(text: string): { position: VideoFile['position']; problems: FileProblem[] } {
  const position = text === '' ? null : readIso6709(text)
  if (text === '' || position !== null) return { position, problems: [] }
  return {
    position,
    problems: [{ about: 'position', text: 'The position written in the video is not used: it can’t be right.' }],
  }
}

const name = z.string().transform((text) => text.slice(0, MAX_NAME_LENGTH))
const replySchema = z.discriminatedUnion('ok', [
  z.object({
    ok: z.literal(true),
    facts: z
      .object({
        widthPx: z.number(),
        heightPx: z.number(),
        rotationDeg: videoFileSchema.shape.rotationDeg,
        durationS: z.number(),
        framesPerSecond: z.number(),
        codec: name,
        audioCodec: name.nullable(),
        tags: z.record(z.string(), z.string()),
      })
      .nullable(),
  }),
  z.object({ ok: z.literal(false), why: z.string() }),
])

const threads = createThreads({
  source: 'library/reading/video/video-worker.js',
  built: 'video-worker.js',
  most: 2,
  longestMs: 10_000,
})

type Shown = Pick<
  VideoFile,
  'durationMs' | 'widthPx' | 'heightPx' | 'rotationDeg' | 'framesPerSecond' | 'codec' | 'audioCodec'
>

async function factsOf(path: string): Promise<(Shown & { tags: ReadonlyMap<string, string> }) | null> {
  const reply = replySchema.parse(await threads.ask({ path }))
  if (!reply.ok) throw new Error(reply.why)
  if (reply.facts === null) return null
  const { durationS, framesPerSecond, tags, ...shown } = reply.facts
  const [widthPx, heightPx] = [Math.round(shown.widthPx), Math.round(shown.heightPx)]
  if (!(widthPx > 0 && heightPx > 0 && widthPx <= MOST_PX && heightPx <= MOST_PX)) return null
  return {
    ...shown,
    widthPx,
    heightPx,
    durationMs: durationS > 0 ? Math.round(durationS * 1000) : 0,
    framesPerSecond: framesPerSecond > 0 ? framesPerSecond : null,
    tags: new Map(Object.entries(tags)),
  }
}

function named(text: string): string {
  return text.trim().slice(0, MAX_NAME_LENGTH)
}
