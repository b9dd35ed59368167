import Database from 'better-sqlite3'
import { existsSync, mkdirSync, readdirSync, readFileSync, truncateSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { openDesk } from '../desk/open-desk.ts'
import { openTestDesk } from '../../tests/library/a-desk.ts'
import { photosIn } from '../../tests/library/a-photo.ts'
import { useScratch } from '../../tests/library/scratch.ts'
import { isKept } from './keeper.ts'
import { openLibrary } from './open-library.ts'

const scratch = useScratch()
const NOW_MS = Date.UTC(2026, 2, 14)

function madeLibrary(): string {
  const folder = scratch('library')
  openLibrary(folder, { nowMs: NOW_MS }).close()
  return folder
}

describe('opening a library', () => {
  it('makes one where there is none, with the folders that a person finds things in', () => {
    const folder = join(scratch(), 'new', 'deep')
    openLibrary(folder, { nowMs: NOW_MS }).close()
    expect(readdirSync(folder).toSorted()).toEqual(['backups', 'battenbook.db', 'jobs', 'logs'])
  })

  it('opens the same one again and again', () => {
    const folder = madeLibrary()
    for (let i = 0; i < 3; i++) openLibrary(folder, { nowMs: NOW_MS }).close()
    expect(readdirSync(join(folder, 'backups'))).toEqual([])
  })

  it('refuses one from a newer program, in words, and leaves it as it was', () => {
    const folder = madeLibrary()
    const raw = new Database(join(folder, 'battenbook.db'))
    raw.pragma('user_version = 99')
    raw.close()
    const before = readFileSync(join(folder, 'battenbook.db'))
    expect(() => openLibrary(folder, { nowMs: NOW_MS })).toThrow(
      expect.objectContaining({
        error: expect.objectContaining({
          code: 'newer-library',
          message: expect.stringContaining('newer Battenbook (database version 99'),
        }),
      }),
    )
    expect(readFileSync(join(folder, 'battenbook.db')).equals(before)).toBe(true)
  })

  it.each([
    ['text', (path: string) => writeFileSync(path, 'This is no database. '.repeat(500))],
    ['noise', (path: string) => writeFileSync(path, Buffer.alloc(8192, 0xa5))],
  ])('refuses a database file that holds %s, in words', (_, damage) => {
    const folder = madeLibrary()
    damage(join(folder, 'battenbook.db'))
    expect(() => openLibrary(folder, { nowMs: NOW_MS })).toThrow(
      expect.objectContaining({
        error: expect.objectContaining({ code: 'damaged-library', help: expect.stringContaining('backups') }),
      }),
    )
  })

  it('refuses a database file that was cut short, in words, and gives the library free again', async () => {
    const folder = scratch('library')
    const desk = openTestDesk(folder)
    const card = scratch('card')
    await photosIn(card, ['a.jpg', 'b.jpg'])
    await desk.takeIn(await desk.newJob(), card)
    await desk.close()
    truncateSync(join(folder, 'battenbook.db'), 12_288)
    await expect(openDesk(folder, { drop: 'upload' })).rejects.toMatchObject({ error: { code: 'damaged-library' } })
    expect(isKept(folder)).toBe(false)
  })

  it('refuses a file where a folder should be, in words', () => {
    const path = join(scratch(), 'file')
    writeFileSync(path, '')
    expect(() => openLibrary(path, { nowMs: NOW_MS })).toThrow(
      expect.objectContaining({ error: expect.objectContaining({ code: 'conflict', about: path }) }),
    )
    expect(() => openLibrary(join(path, 'below'), { nowMs: NOW_MS })).toThrow(
      expect.objectContaining({ error: expect.objectContaining({ code: 'missing-folder' }) }),
    )
  })

  it('refuses a folder where the database file should be, in words', () => {
    const folder = scratch('library')
    mkdirSync(join(folder, 'battenbook.db'))
    expect(() => openLibrary(folder, { nowMs: NOW_MS })).toThrow(
      expect.objectContaining({ error: expect.objectContaining({ code: 'no-permission' }) }),
    )
  })

  it('can be opened by two programs at once; each says so until it is closed', async () => {
    const folder = scratch('library')
    const first = await openDesk(folder, { drop: 'upload' })
    const second = await openDesk(folder, { drop: 'paths' })
    expect(await first.call('jobs.new', {})).toMatchObject({ ok: true, value: { number: /-0001$/ } })
    expect(await second.call('jobs.new', {})).toMatchObject({ ok: true, value: { number: /-0002$/ } })
    await first.close()
    expect(isKept(folder)).toBe(true)
    await second.close()
    expect(isKept(folder)).toBe(false)
    expect(existsSync(join(folder, 'battenbook.db-wal'))).toBe(false)
  })
})
