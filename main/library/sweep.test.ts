import { spawnSync } from 'node:child_process'
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { openTestDesk, type TestDesk } from '../../tests/library/a-desk.ts'
import { photosIn } from '../../tests/library/a-photo.ts'
import { useScratch } from '../../tests/library/scratch.ts'
import { findJob } from '../store/jobs.ts'
import { jobLayout, type JobLayout } from './layout.ts'
import { ownMark } from './process-mark.ts'
import { sweepLibrary } from './sweep.ts'
import { verifyLibrary } from './verify-library.ts'

const scratch = useScratch()
const ended = `${spawnSync(process.execPath, ['-e', '']).pid}-0123456789ab`

async function withPhotos(work: (at: { desk: TestDesk; places: JobLayout }) => Promise<void> | void) {
  const desk = openTestDesk(scratch('library'))
  try {
    const jobId = await desk.newJob()
    const card = scratch('card')
    await photosIn(card, ['a.jpg', 'b.jpg'])
    writeFileSync(join(card, 'notes.txt'), 'notes')
    await desk.takeIn(jobId, card)
    await work({ desk, places: jobLayout(desk.library.layout, findJob(desk.library.db, jobId)?.folder ?? '') })
  } finally {
    await desk.close()
  }
}

describe('putting a library in order', () => {
  it('leaves alone what jobs know', () =>
    withPhotos(async ({ desk, places }) => {
      expect(sweepLibrary(desk.library)).toEqual([])
      expect(readdirSync(places.originals)).toHaveLength(2)
      expect(readdirSync(places.attachments)).toHaveLength(1)
      expect(readdirSync(places.derived)).toHaveLength(4)
      expect((await verifyLibrary(desk.library)).differences).toEqual([])
    }))

  it('moves whole files that no job knows to unfiled/, byte for byte, and says which', () =>
    withPhotos(({ desk, places }) => {
      writeFileSync(join(places.originals, '0123456789ab-lost.jpg'), 'whole but unknown')
      writeFileSync(join(places.attachments, 'letter.pdf'), 'unknown too')
      expect(sweepLibrary(desk.library).toSorted()).toEqual(['0123456789ab-lost.jpg', 'letter.pdf'])
      const { unfiled } = desk.library.layout
      expect(readdirSync(unfiled).toSorted()).toEqual(['0123456789ab-lost.jpg', 'letter.pdf'])
      expect(readFileSync(join(unfiled, 'letter.pdf'), 'utf8')).toBe('unknown too')
      expect(readdirSync(places.originals)).toHaveLength(2)
    }))

  it('writes over nothing in unfiled/', () =>
    withPhotos(({ desk, places }) => {
      for (const text of ['one', 'two', 'three']) {
        writeFileSync(join(places.originals, 'notes.txt'), text)
        sweepLibrary(desk.library)
      }
      const { unfiled } = desk.library.layout
      const texts = readdirSync(unfiled).map((name) => readFileSync(join(unfiled, name), 'utf8'))
      expect(texts.toSorted()).toEqual(['one', 'three', 'two'])
    }))

  it('removes what a run that is over was in the middle of, and leaves what a running one is', () =>
    withPhotos(({ desk, places }) => {
      const { allIncoming } = desk.library.layout
      for (const mark of [ended, ownMark, `${process.ppid}-0123456789ab`]) {
        for (const folder of [places.originals, places.derived, places.attachments])
          writeFileSync(join(folder, `${mark}-half.arriving`), 'half')
        mkdirSync(join(allIncoming, mark, 'upload'), { recursive: true })
      }
      expect(sweepLibrary(desk.library)).toEqual([])
      for (const folder of [places.originals, places.derived, places.attachments]) {
        const half = readdirSync(folder).filter((name) => name.endsWith('.arriving'))
        expect(half).toHaveLength(2)
        expect(half.join()).not.toContain(ended)
      }
      expect(readdirSync(allIncoming).toSorted()).toEqual([ownMark, `${process.ppid}-0123456789ab`].toSorted())
    }))

  it('takes nothing from an intake that another program is in the middle of', () =>
    withPhotos(async ({ desk }) => {
      const card = scratch('card')
      await photosIn(
        card,
        Array.from({ length: 24 }, (_, i) => `IMG_${i}.jpg`),
      )
      const other = openTestDesk(desk.library.layout.folder)
      const jobId = await other.newJob()
      const { taskId } = await other.ask('intake.start', { jobId, from: { kind: 'paths', paths: [card] } })
      const moved: string[] = []
      let running = true
      const end = other.desk.tasks.ended(taskId).then((task) => {
        running = false
        return task
      })
      let sweeps = 0
      while (running) {
        moved.push(...sweepLibrary(desk.library))
        sweeps += 1
        await new Promise((resolve) => setImmediate(resolve))
      }
      expect((await end).intake).toMatchObject({ photosAdded: 24, failed: [] })
      await other.close()
      expect(sweeps).toBeGreaterThan(3)
      expect(moved).toEqual([])
      expect((await verifyLibrary(desk.library)).differences).toEqual([])
    }))

  it('copes with folders that somebody took away', () =>
    withPhotos(({ desk, places }) => {
      expect(
        sweepLibrary({ ...desk.library, layout: { ...desk.library.layout, jobs: join(places.folder, 'gone') } }),
      ).toEqual([])
    }))
})
