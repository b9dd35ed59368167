import { ALL_FORMATS, FilePathSource, Input, type InputVideoTrack } from 'mediabunny'
import type { FileProblem } from '../../../../app/evidence/photo.ts'
import type { VideoFile } from '../../../../app/evidence/video.ts'
import { readIso6709 } from './iso-6709.ts'
import { type MovieBoxes, readMovieBoxes } from './movie-boxes.ts'
import { readVideoTime } from './video-time.ts'

const APPLE = 'com.apple.quicktime.'
/** Frames looked at to tell how many a second there are. */
const FRAMES_COUNTED = 120
const LONGEST_MS = 20_000
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
  const input = new Input({ formats: ALL_FORMATS, source: new FilePathSource(path, { maxCacheSize: 8 * 1024 * 1024 }) })
  try {
    const [facts, boxes] = await Promise.all([inTime(factsOf(input)), readMovieBoxes(path)])
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
  } catch {
    return { ok: false, why: 'its tables are damaged' }
  } finally {
    input.dispose()
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

type Shown = Pick<
  VideoFile,
  'durationMs' | 'widthPx' | 'heightPx' | 'rotationDeg' | 'framesPerSecond' | 'codec' | 'audioCodec'
>

async function factsOf(input: Input): Promise<(Shown & { tags: ReadonlyMap<string, string> }) | null> {
  if (!(await input.canRead())) return null
  const track = await input.getPrimaryVideoTrack()
  if (track === null) return null
  const [widthPx, heightPx] = [track.displayWidth, track.displayHeight]
  if (!(widthPx > 0 && heightPx > 0 && widthPx <= MOST_PX && heightPx <= MOST_PX)) return null
  const audio = await input.getPrimaryAudioTrack()
  const { raw } = await input.getMetadataTags()
  const seconds = await input.computeDuration()
  return {
    widthPx: Math.round(widthPx),
    heightPx: Math.round(heightPx),
    rotationDeg: track.rotation,
    durationMs: Number.isFinite(seconds) && seconds > 0 ? Math.round(seconds * 1000) : 0,
    framesPerSecond: await rateOf(track),
    codec: await codecOf(track),
    audioCodec: audio === null ? null : await codecOf(audio),
    tags: new Map(
      Object.entries(raw ?? {}).flatMap(([key, value]) => (typeof value === 'string' ? [[key, value]] : [])),
    ),
  }
}

async function rateOf(track: InputVideoTrack): Promise<number | null> {
  const { averagePacketRate } = await track.computePacketStats(FRAMES_COUNTED)
  return Number.isFinite(averagePacketRate) && averagePacketRate > 0 ? averagePacketRate : null
}

async function codecOf(track: {
  readonly internalCodecId: unknown
  getCodecParameterString(): Promise<string | null>
}): Promise<string> {
  const written = await track.getCodecParameterString().catch(() => null)
  const mark = typeof track.internalCodecId === 'string' ? track.internalCodecId : 'not known'
  return (written ?? mark).slice(0, MAX_NAME_LENGTH)
}

function inTime<T>(work: Promise<T>): Promise<T> {
  let timer: NodeJS.Timeout | undefined
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new Error('reading takes too long')), LONGEST_MS)
  })
  return Promise.race([work, late]).finally(() => clearTimeout(timer))
}

function named(text: string): string {
  return text.trim().slice(0, MAX_NAME_LENGTH)
}
