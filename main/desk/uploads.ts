import { randomUUID } from 'node:crypto'
import { createWriteStream } from 'node:fs'
import { mkdir, rename, rm, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import type { Readable } from 'node:stream'
import { pipeline } from 'node:stream/promises'
import { refuse } from '../../app/contract/app-error.ts'
import type { DeskWorld } from './desk-world.ts'
import { uploadFolder } from './intake-area.ts'

const LONGEST_NAME = 1000

/** Keeps one uploaded file beside the library until an intake takes it from there. */
export async function acceptUpload(
  world: DeskWorld,
  { uploadId, index, fileName, body }: { uploadId: string; index: number; fileName: string; body: Readable },
): Promise<void> {
  if (!/^[A-Za-z0-9-]{1,64}$/.test(uploadId) || !Number.isInteger(index) || index < 0 || index > 1_000_000) {
    refuse('invalid', 'This upload is not addressed rightly.')
  }
  const folder = uploadFolder(world, uploadId)
  await mkdir(folder, { recursive: true })
  const bytes = join(folder, `${index}.bytes`)
  const sending = join(folder, `${index}.sending-${randomUUID()}`)
  try {
    await pipeline(body, createWriteStream(sending, { flags: 'wx' }))
    // The name stands in a file of its own: no file system takes every name that another one gave.
    await writeFile(join(folder, `${index}.name`), plainName(fileName))
    await rename(sending, bytes)
  } catch (cause) {
    await rm(sending, { force: true })
    if (body.errored !== null) refuse('cancelled', 'The upload broke off before all of the file was here.')
    throw cause
  }
}

/** The name alone, should a sender have put folders before it. */
function plainName(fileName: string): string {
  const name = fileName.split(/[/\\]/).at(-1) ?? ''
  return name === '' ? 'file' : [...name].slice(0, LONGEST_NAME).join('')
}
