import { readFileSync } from 'node:fs'
import { constants } from 'node:os'
import { describe, expect, it } from 'vitest'
import { AppFailure, refuse } from '../../app/contract/app-error.ts'
import { fileFailure, withFileWords } from './file-failure.ts'

const failing = (code: string) => Object.assign(new Error(`${code}: of the system`), { code })

describe('what the operating system says, in words', () => {
  it.each([
    ['ENOENT', 'missing-folder'],
    ['ENOTDIR', 'missing-folder'],
    ['EACCES', 'no-permission'],
    ['EPERM', 'no-permission'],
    ['EROFS', 'no-permission'],
    ['ENOSPC', 'disk-full'],
    ['EDQUOT', 'disk-full'],
    ['EFBIG', 'disk-full'],
    ['EIO', 'unreadable-file'],
    ['EISDIR', 'unreadable-file'],
    ['ENODEV', 'unreadable-file'],
    ['ESTALE', 'unreadable-file'],
    ['EBUSY', 'locked'],
    ['EMFILE', 'locked'],
    ['EEXIST', 'conflict'],
    ['ENAMETOOLONG', 'invalid'],
    ['ELOOP', 'invalid'],
  ])('%s is %s', (code, expected) => {
    expect(Object.keys(constants.errno)).toContain(code)
    const error = fileFailure(failing(code), 'card/IMG_1.JPG')
    expect(error).toMatchObject({ code: expected, about: 'card/IMG_1.JPG' })
    expect(`${error?.message} ${error?.help}`).not.toMatch(/E[A-Z]{3,}|undefined/)
  })

  it('a path with a null byte is no usable path', () => {
    const refused = (): unknown => {
      try {
        return readFileSync('card\0/IMG_1.JPG')
      } catch (cause) {
        return cause
      }
    }
    expect(fileFailure(refused(), 'card')).toMatchObject({ code: 'invalid', about: 'card' })
  })

  // Result codes: https://sqlite.org/rescode.html
  it.each([
    ['SQLITE_FULL', 'disk-full'],
    ['SQLITE_BUSY', 'locked'],
    ['SQLITE_BUSY_SNAPSHOT', 'locked'],
    ['SQLITE_LOCKED', 'locked'],
    ['SQLITE_CORRUPT', 'damaged-library'],
    ['SQLITE_CORRUPT_VTAB', 'damaged-library'],
    ['SQLITE_NOTADB', 'damaged-library'],
    ['SQLITE_READONLY', 'no-permission'],
    ['SQLITE_READONLY_DBMOVED', 'no-permission'],
    ['SQLITE_CANTOPEN', 'no-permission'],
    ['SQLITE_CANTOPEN_ISDIR', 'no-permission'],
    ['SQLITE_IOERR_WRITE', 'unreadable-file'],
  ])('%s of the database is %s', (code, expected) => {
    expect(fileFailure(failing(code), 'library')?.code).toBe(expected)
  })

  it('stays out of what is no failure of a file', () => {
    expect(fileFailure(new TypeError('a slip'), 'x')).toBeNull()
    expect(fileFailure(failing('SQLITE_CONSTRAINT_UNIQUE'), 'x')).toBeNull()
    expect(fileFailure(failing('ECONNRESET'), 'x')).toBeNull()
    expect(fileFailure(undefined, 'x')).toBeNull()
  })

  it('keeps words that were found further in', async () => {
    const inner = withFileWords('outer', () => withFileWords('inner', () => Promise.reject(failing('ENOENT'))))
    await expect(inner).rejects.toMatchObject({ error: { about: 'inner' } })
    await expect(withFileWords('x', async () => refuse('conflict', 'Taken.'))).rejects.toBeInstanceOf(AppFailure)
  })
})
