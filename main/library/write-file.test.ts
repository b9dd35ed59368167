import { chmodSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { useScratch } from '../../tests/library/scratch.ts'
import { isLeftBehind } from './process-mark.ts'
import { ARRIVING, arrivingPath, writeArriving, writeWhole } from './write-file.ts'

const scratch = useScratch()

describe('a file on its way in', () => {
  it('stands whole and read-only under an arriving name, in the folder it is meant for', async () => {
    const folder = scratch()
    const path = await writeArriving(folder, [Buffer.from('one '), Buffer.from('two')])
    expect(readdirSync(folder)).toEqual([path.slice(folder.length + 1)])
    expect(path.endsWith(ARRIVING)).toBe(true)
    expect(readFileSync(path, 'utf8')).toBe('one two')
    expect(statSync(path).mode & 0o222).toBe(0)
  })

  it('carries the mark of the run that writes it', () => {
    const folder = scratch()
    expect(isLeftBehind(arrivingPath(folder).slice(folder.length + 1))).toBe(false)
  })

  it('leaves nothing when its source breaks off', async () => {
    const folder = scratch()
    async function* source() {
      yield Buffer.alloc(100_000)
      throw new Error('the card was pulled')
    }
    await expect(writeArriving(folder, source())).rejects.toThrow('the card was pulled')
    expect(readdirSync(folder)).toEqual([])
  })

  it('fails when the folder is not there', async () => {
    await expect(writeArriving(join(scratch(), 'gone'), [])).rejects.toMatchObject({ code: 'ENOENT' })
  })
})

describe('a file written whole', () => {
  it('replaces what stood there, and leaves no other name behind', async () => {
    const folder = scratch()
    await writeWhole(join(folder, 'a.jpg'), Buffer.from('old'))
    await writeWhole(join(folder, 'a.jpg'), Buffer.from('new'))
    expect(readdirSync(folder)).toEqual(['a.jpg'])
    expect(readFileSync(join(folder, 'a.jpg'), 'utf8')).toBe('new')
  })

  it('leaves what stood there and nothing else when it fails', async () => {
    const folder = scratch()
    // A folder of the same name that holds something can't be renamed over, whoever asks.
    mkdirSync(join(folder, 'a.jpg'))
    writeFileSync(join(folder, 'a.jpg', 'inside'), 'x')
    await expect(writeWhole(join(folder, 'a.jpg'), Buffer.from('new'))).rejects.toMatchObject({
      code: /EISDIR|ENOTEMPTY|EPERM|EEXIST/,
    })
    expect(readdirSync(folder)).toEqual(['a.jpg'])
    expect(readdirSync(join(folder, 'a.jpg'))).toEqual(['inside'])
  })

  it.skipIf(process.platform === 'win32')('says what the system says in a folder that may not be written', async () => {
    const folder = scratch()
    chmodSync(folder, 0o555)
    // Root may write anywhere, so that it has to ask as somebody else.
    const isRoot = process.getuid?.() === 0
    if (isRoot) process.seteuid?.(65_534)
    try {
      await expect(writeWhole(join(folder, 'a.jpg'), Buffer.from('x'))).rejects.toMatchObject({ code: 'EACCES' })
    } finally {
      if (isRoot) process.seteuid?.(0)
      chmodSync(folder, 0o755)
    }
  })
})
