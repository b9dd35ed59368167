import { spawn } from 'node:child_process'
import { createHash } from 'node:crypto'
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { setTimeout as wait } from 'node:timers/promises'
import { beforeAll, describe, expect, it } from 'vitest'
import { localCall } from '../../main/desk/desk.ts'
import { openDesk } from '../../main/desk/open-desk.ts'
import { commandPath, ensureBuilt } from '../built-program.ts'
import { photosIn } from './a-photo.ts'
import { useScratch } from './scratch.ts'

const scratch = useScratch()

/** How often the program is killed; more with `BATTENBOOK_CRASHES=500 npx vitest run tests/library/crash.test.ts`. */
const ROUNDS = Number(process.env['BATTENBOOK_CRASHES'] ?? 30)
const PHOTOS = 16

beforeAll(ensureBuilt)

const sha256 = (bytes: Buffer) => createHash('sha256').update(bytes).digest('hex')

/** Names in a folder of a job; none when the folder is not there yet. */
const namesIn = (folder: string) => (existsSync(folder) ? readdirSync(folder) : [])

/**
 * Takes a folder into a job in a process of its own and kills that, without a warning, once `files` originals have come
 * in, and a random moment after that. A kill when no more files come would be no kill in the middle.
 */
async function killedIntake(given: { library: string; job: string; card: string; originals: string; files: number }) {
  const child = spawn(process.execPath, [commandPath, 'take-in', given.library, given.job, given.card], {
    stdio: 'ignore',
  })
  const ended = new Promise<NodeJS.Signals | null>((resolve) => child.once('exit', (_code, signal) => resolve(signal)))
  let running = true
  void ended.then(() => (running = false))
  while (running && namesIn(given.originals).length < given.files) await wait(1)
  await wait(Math.random() * 20)
  child.kill('SIGKILL')
  return ended
}

/** Opens the library as the program does after a crash, looks at everything, and finishes the intake. */
async function openedAgain({ library, jobId, card }: { library: string; jobId: string; card: string }) {
  const desk = await openDesk(library, { drop: 'paths' })
  try {
    const call = localCall(desk)
    const value = async <T>(reply: Promise<{ ok: true; value: T } | { ok: false; error: unknown }>): Promise<T> => {
      const answer = await reply
      if (!answer.ok) throw new Error(JSON.stringify(answer.error))
      return answer.value
    }
    const { jobs } = await value(call('jobs.list', {}))
    const id = jobs.find((job) => job.id === jobId)?.id
    if (id === undefined) throw new Error('The job is gone.')
    const before = await value(call('jobs.open', { jobId: id }))
    const checked = await value(call('library.verify', {}))
    const { taskId } = await value(call('intake.start', { jobId: id, from: { kind: 'paths', paths: [card] } }))
    const task = await desk.tasks.ended(taskId)
    const after = await value(call('jobs.open', { jobId: id }))
    const checkedAgain = await value(call('library.verify', {}))
    return { before, checked, task, after, checkedAgain }
  } finally {
    await desk.close()
  }
}

describe('a program that is killed while it takes photos in', () => {
  it(`loses nothing and finishes when it is run again (${ROUNDS} times)`, async () => {
    const card = scratch('card')
    const photos = await photosIn(
      card,
      Array.from({ length: PHOTOS }, (_, i) => `IMG_${String(i).padStart(3, '0')}.jpg`),
    )
    const expected = [...photos].map(([name, bytes]) => `${name} ${sha256(bytes)}`)
    const whole = new Set([...photos.values()].map(sha256))
    let inTheMiddle = 0
    for (let round = 0; round < ROUNDS; round++) {
      const library = scratch('library')
      const desk = await openDesk(library, { drop: 'paths' })
      const begun = await localCall(desk)('jobs.new', { number: 'C-1' })
      await desk.close()
      if (!begun.ok) throw new Error(begun.error.message)
      const { jobId, number } = begun.value
      const folder = join(library, 'jobs', number)
      const originals = join(folder, 'originals')
      await killedIntake({ library, job: number, card, originals, files: Math.floor((round / ROUNDS) * PHOTOS) })

      const { before, checked, task, after, checkedAgain } = await openedAgain({ library, jobId, card })
      // What had a row when the program died has its file, whole, and the log follows from its first entry.
      expect({ round, differences: checked.differences }).toEqual({ round, differences: [] })
      const names = [...photos.keys()]
      const already = before.photos.length
      expect(before.photos.map((photo) => photo.file.fileName)).toEqual(names.slice(0, already))
      // Running it again comes to the same as if nothing had happened.
      expect(task).toMatchObject({ state: 'done', intake: { photosAdded: PHOTOS - already, failed: [] } })
      expect(after.photos.map((photo) => `${photo.file.fileName} ${photo.file.sha256}`)).toEqual(expected)
      expect(after.photos.map((photo) => photo.number)).toEqual(names.map((_, at) => at + 1))
      // Nothing half-written is left, and no file stands among the originals that no row knows.
      const kept = readdirSync(originals).map((name) => sha256(readFileSync(join(originals, name))))
      expect(kept.toSorted()).toEqual(after.photos.map((photo) => photo.file.sha256).toSorted())
      expect(namesIn(join(folder, 'attachments'))).toEqual([])
      expect(checkedAgain).toMatchObject({ filesChecked: PHOTOS, differences: [] })
      // Whatever was whole but unknown went to unfiled/, and nothing else did.
      for (const name of namesIn(join(library, 'unfiled')))
        expect([...whole]).toContain(sha256(readFileSync(join(library, 'unfiled', name))))
      if (already > 0 && already < PHOTOS) inTheMiddle += 1
    }
    expect(inTheMiddle).toBeGreaterThan(ROUNDS / 3)
  }, 600_000)
})
