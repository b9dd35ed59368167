import { createHash } from 'node:crypto'
import { createReadStream, openSync, closeSync, ftruncateSync, writeSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { openTestDesk } from './a-desk.ts'
import { useScratch } from './scratch.ts'

const scratch = useScratch()

async function hashOf(path: string): Promise<string> {
  const hash = createHash('sha256')
  for await (const chunk of createReadStream(path)) hash.update(chunk)
  return hash.digest('hex')
}

describe('a file too large to be a photo', () => {
  it('is kept whole among the attachments, without being held in memory, and is known again', async () => {
    const card = scratch('card')
    const path = join(card, 'walk.mp4')
    const file = openSync(path, 'w')
    // The beginning of an MP4 file (ISO/IEC 14496-12: a file type box), then a hole that reads as zeros.
    writeSync(file, Buffer.from('\0\0\0\x18ftypmp42\0\0\0\0mp42isom', 'latin1'))
    ftruncateSync(file, 260 * 1024 * 1024)
    writeSync(file, Buffer.from('the end'), 0, 7, 260 * 1024 * 1024)
    closeSync(file)
    const desk = openTestDesk(scratch('library'))
    const jobId = await desk.newJob('big')
    expect((await desk.takeIn(jobId, card)).intake).toMatchObject({ photosAdded: 0, attachmentsAdded: 1, failed: [] })
    const [attachment] = (await desk.ask('jobs.open', { jobId })).attachments
    expect(attachment?.file).toMatchObject({
      bytes: 260 * 1024 * 1024 + 7,
      mediaType: 'video/mp4',
      sha256: await hashOf(path),
    })
    expect((await desk.ask('library.verify', {})).differences).toEqual([])
    expect((await desk.takeIn(jobId, path)).intake?.doubles).toEqual([{ fileName: 'walk.mp4', sameAs: 'walk.mp4' }])
    expect(readdirSync(join(desk.library.layout.jobs, 'big', 'attachments'))).toHaveLength(1)
    await desk.close()
  })
})
