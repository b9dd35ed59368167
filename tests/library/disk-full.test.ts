import { spawnSync } from 'node:child_process'
import { mkdtempSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { commandPath, ensureBuilt } from '../built-program.ts'
import { openTestDesk } from './a-desk.ts'
import { aPhoto } from './a-photo.ts'
import { useScratch } from './scratch.ts'

const scratch = useScratch()

/** A disk of 6 MB, real enough to be full; null where this account may not mount one. */
const disk = mountSmallDisk()

function mountSmallDisk(): string | null {
  if (process.platform !== 'linux') return null
  const folder = mkdtempSync(join(tmpdir(), 'battenbook-disk-'))
  if (spawnSync('mount', ['-t', 'tmpfs', '-o', 'size=6m', 'none', folder]).status === 0) return folder
  rmSync(folder, { recursive: true })
  return null
}

afterAll(() => {
  if (disk === null) return
  spawnSync('umount', ['-l', disk])
  rmSync(disk, { recursive: true, force: true })
})

/** Photos of half a megabyte each: what follows the picture's end is part of the file all the same. */
async function largePhotos(count: number): Promise<string> {
  const card = scratch('card')
  for (let i = 0; i < count; i++)
    writeFileSync(join(card, `IMG_${i}.jpg`), Buffer.concat([await aPhoto({ shade: i }), Buffer.alloc(500_000, i)]))
  return card
}

describe('a disk that is full', () => {
  it.skipIf(disk === null)(
    'stops the intake in words; what is in stays, and with more room it goes on (needs the right to mount)',
    async () => {
      const card = await largePhotos(16)
      const desk = openTestDesk(join(disk ?? '', 'library'))
      const jobId = await desk.newJob()
      const stopped = await desk.takeIn(jobId, card)
      expect(stopped).toMatchObject({ state: 'failed', error: 'The disk is full.' })
      const { photos } = await desk.ask('jobs.open', { jobId })
      expect(photos.length).toBeGreaterThan(3)
      expect(photos.length).toBeLessThan(16)
      expect(stopped.intake?.photosAdded).toBe(photos.length)
      expect((await desk.ask('library.verify', {})).differences).toEqual([])
      // Nothing half-written takes up the little room there is.
      const originals = join(
        disk ?? '',
        'library',
        'jobs',
        (await desk.ask('jobs.list', {})).jobs[0]?.number ?? '',
        'originals',
      )
      expect(readdirSync(originals)).toHaveLength(photos.length)

      expect(spawnSync('mount', ['-o', 'remount,size=40m', disk ?? '']).status).toBe(0)
      const goneOn = await desk.takeIn(jobId, card)
      expect(goneOn).toMatchObject({ state: 'done', intake: { photosAdded: 16 - photos.length, failed: [] } })
      const all = (await desk.ask('jobs.open', { jobId })).photos
      expect(all.map((photo) => photo.file.fileName)).toEqual(Array.from({ length: 16 }, (_, i) => `IMG_${i}.jpg`))
      expect((await desk.ask('library.verify', {})).differences).toEqual([])
      await desk.close()
    },
  )

  describe('or takes no file of that size', () => {
    beforeAll(ensureBuilt)

    it.skipIf(process.platform === 'win32')('is told in words by the command, which ends with 1', async () => {
      const card = scratch('card')
      writeFileSync(join(card, 'a.jpg'), await aPhoto({ shade: 1 }))
      writeFileSync(join(card, 'b.jpg'), Buffer.concat([await aPhoto({ shade: 2 }), Buffer.alloc(3_000_000)]))
      const library = scratch('library')
      const run = (limit: string, ...args: string[]) =>
        // The limit is in blocks of 1024 bytes with bash; the signal that comes with it is ignored, so that the write fails instead.
        spawnSync(
          'bash',
          ['-c', `trap '' XFSZ; ulimit -f ${limit}; exec "$@"`, 'bash', process.execPath, commandPath, ...args],
          {
            encoding: 'utf8',
          },
        )
      expect(run('unlimited', 'new', library, '--number', 'N1').status).toBe(0)
      const stopped = run('2000', 'take-in', library, 'N1', card)
      expect(stopped.status).toBe(1)
      expect(stopped.stderr).toContain('The disk takes no file as large as "b.jpg".')
      expect(stopped.stderr).not.toMatch(/EFBIG|\bat .*:\d+/)
      const again = run('unlimited', 'take-in', library, 'N1', card, '--json')
      expect(again.status).toBe(0)
      expect(JSON.parse(again.stdout)).toMatchObject({ ok: true, intake: { failed: [] } })
      const originals = join(library, 'jobs', 'N1', 'originals')
      const sizes = readdirSync(originals).map((name) => statSync(join(originals, name)).size)
      expect(Math.max(...sizes)).toBeGreaterThan(2_000_000)
      expect(sizes).toHaveLength(2)
    })
  })
})
