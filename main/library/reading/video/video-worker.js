import { parentPort } from 'node:worker_threads'
import { ALL_FORMATS, FilePathSource, Input } from 'mediabunny'

// Reads a video's tables away from the program: tables that were tampered with can keep a reader busy for minutes.

/** Frames looked at to tell how many a second there are. */
const FRAMES_COUNTED = 120
const CACHE_BYTES = 8 * 1024 * 1024

parentPort?.on('message', ({ path }) => {
  read(path).then(
    (facts) => parentPort?.postMessage({ ok: true, facts }),
    (cause) => parentPort?.postMessage({ ok: false, why: String(cause) }),
  )
})

/** Size, coding and notes of the first moving picture; null where there is none. */
async function read(path) {
  const input = new Input({ formats: ALL_FORMATS, source: new FilePathSource(path, { maxCacheSize: CACHE_BYTES }) })
  try {
    if (!(await input.canRead())) return null
    const track = await input.getPrimaryVideoTrack()
    if (track === null) return null
    const audio = await input.getPrimaryAudioTrack()
    const { raw = {} } = await input.getMetadataTags()
    const { averagePacketRate } = await track.computePacketStats(FRAMES_COUNTED)
    return {
      widthPx: track.displayWidth,
      heightPx: track.displayHeight,
      rotationDeg: track.rotation,
      durationS: await input.computeDuration(),
      framesPerSecond: averagePacketRate,
      codec: await codecOf(track),
      audioCodec: audio === null ? null : await codecOf(audio),
      tags: Object.fromEntries(Object.entries(raw).filter(([, value]) => typeof value === 'string')),
    }
  } finally {
    input.dispose()
  }
}

/** As RFC 6381 writes it; the container's own mark where that is not known. */
async function codecOf(track) {
  const written = await track.getCodecParameterString().catch(() => null)
  return written ?? (typeof track.internalCodecId === 'string' ? track.internalCodecId : 'not known')
}
