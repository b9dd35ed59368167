import { createWriteStream } from 'node:fs'
import { mkdir, rm } from 'node:fs/promises'
import { join } from 'node:path'
import type { Readable } from 'node:stream'
import { pipeline } from 'node:stream/promises'
import { refuse } from '../../app/contract/app-error.ts'
import { safeFileName } from '../library/file-names.ts'
import type { DeskWorld } from './desk-world.ts'
import { uploadFolder } from './intake-area.ts'

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
  const path = join(folder, `${index}-${safeFileName(fileName)}`)
  try {
    await pipeline(body, createWriteStream(path, { flags: 'wx' }))
  } catch (cause) {
    await rm(path, { force: true })
    throw cause
  }
}
