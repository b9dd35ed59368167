import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { Worker } from 'node:worker_threads'
import { z } from 'zod'
import { programFolder } from '../../../program.ts'

/** The first picture of a HEIF-family file, upright as its container asks. */
export interface HeifPixels {
  readonly width: number
  readonly height: number
  readonly channels: 3 | 4
  readonly pixels: Uint8Array
  /** The ICC profile that the pixels are in; null where they are sRGB. */
  readonly icc: Uint8Array | null
  /** Transfer curve (ITU-T H.273) from which the pixels were brought into standard range; null where there was no need. */
  readonly transfer: number | null
  /** False where a part of the picture could not be decoded. */
  readonly isWhole: boolean
}

const replySchema = z.discriminatedUnion('ok', [
  z.object({
    ok: z.literal(true),
    width: z.number().int().positive(),
    height: z.number().int().positive(),
    channels: z.union([z.literal(3), z.literal(4)]),
    pixels: z.instanceof(Uint8Array),
    icc: z.instanceof(Uint8Array).nullable(),
    transfer: z.number().nullable(),
    isWhole: z.boolean(),
  }),
  z.object({ ok: z.literal(false), why: z.string() }),
])

/** A phone's 12 megapixels take a second or two; what takes this long is broken or hostile. */
const LONGEST_MS = 45_000
/** An idle thread keeps the memory of its largest picture, so it goes soon. */
const IDLE_MS = 3_000
/** Decoding takes a few hundred megabytes a picture: more at a time would not fit a small machine. */
const MOST_WORKERS = 2

interface Member {
  readonly worker: Worker
  idle: NodeJS.Timeout | null
}

const free: Member[] = []
const waiting: (() => void)[] = []
let working = 0

/**
 * Decodes the first picture of a HEIC, HEIF or HIF file in a thread of its own, under limits of pixels, memory and time.
 *
 * @throws Error where the file can't be decoded or takes too long
 */
export async function decodeHeif(bytes: Uint8Array, limits: { maxPixels: number }): Promise<HeifPixels> {
  while (working >= MOST_WORKERS) await new Promise<void>((resolve) => waiting.push(resolve))
  working += 1
  try {
    const member = free.pop() ?? { worker: newWorker(), idle: null }
    if (member.idle !== null) clearTimeout(member.idle)
    return await ask(member, { bytes, ...limits })
  } finally {
    working -= 1
    waiting.shift()?.()
  }
}

async function ask(member: Member, task: { bytes: Uint8Array; maxPixels: number }): Promise<HeifPixels> {
  const { worker } = member
  worker.ref()
  try {
    const reply = replySchema.parse(await answerOf(worker, task))
    if (!reply.ok) throw new Error(reply.why)
    keep(member)
    return reply
  } catch (cause) {
    // Whatever state a failed decoding left behind goes with the thread.
    void worker.terminate()
    throw cause
  }
}

function answerOf(worker: Worker, task: unknown): Promise<unknown> {
  return new Promise((resolve, reject) => {
    const onMessage = (reply: unknown) => settle(() => resolve(reply))
    const onError = (cause: Error) => settle(() => reject(cause))
    const onExit = () => onError(new Error('the decoder ended'))
    const timer = setTimeout(() => onError(new Error('decoding takes too long')), LONGEST_MS)
    function settle(end: () => void) {
      clearTimeout(timer)
      worker.off('message', onMessage).off('error', onError).off('exit', onExit)
      end()
    }
    worker.on('message', onMessage).on('error', onError).on('exit', onExit)
    worker.postMessage(task)
  })
}

function keep(member: Member): void {
  member.worker.unref()
  member.idle = setTimeout(() => {
    free.splice(free.indexOf(member), 1)
    void member.worker.terminate()
  }, IDLE_MS)
  member.idle.unref()
  free.push(member)
}

function newWorker(): Worker {
  const worker = new Worker(workerPath(), { resourceLimits: { maxOldGenerationSizeMb: 512 } })
  // A thread that is being ended may still fail; nobody waits for it any more.
  worker.on('error', () => undefined)
  return worker
}

/** Beside the built program, or in the source where that runs. */
function workerPath(): string {
  const built = join(programFolder, 'dist', 'main', 'heif-worker.js')
  const source = join(programFolder, 'main', 'library', 'previews', 'decoders', 'heif-worker.js')
  return existsSync(source) ? source : built
}
