import { spawnSync } from 'node:child_process'
import { mkdirSync, readdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { useScratch } from '../../tests/library/scratch.ts'
import { isKept, keepLibrary } from './keeper.ts'
import { libraryLayout } from './layout.ts'
import { isLeftBehind, ownMark } from './process-mark.ts'

const scratch = useScratch()

/** The number of a process that has just ended. */
function endedPid(): number {
  return spawnSync(process.execPath, ['-e', '']).pid
}

describe('who has a library open', () => {
  it('is nobody at first, somebody until the last program has closed it, then nobody', () => {
    const layout = libraryLayout(scratch('library'))
    expect(isKept(layout.folder)).toBe(false)
    const first = keepLibrary(layout)
    const second = keepLibrary(layout)
    first()
    expect(isKept(layout.folder)).toBe(true)
    second()
    expect(isKept(layout.folder)).toBe(false)
  })

  it('is not a program that ended without a word, and its note is cleared away', () => {
    const layout = libraryLayout(scratch('library'))
    const notes = join(layout.folder, 'open-in')
    mkdirSync(notes)
    writeFileSync(join(notes, `${endedPid()}-0123456789ab-x`), '')
    expect(isKept(layout.folder)).toBe(false)
    const giveBack = keepLibrary(layout)
    expect(readdirSync(notes)).toHaveLength(1)
    giveBack()
    expect(readdirSync(notes)).toEqual([])
  })

  it('is nobody where there is no library', () => {
    expect(isKept(join(scratch(), 'nothing'))).toBe(false)
  })
})

describe('a name with the mark of a run', () => {
  it('is left behind once the run is over', () => {
    expect(isLeftBehind(`${ownMark}-x.arriving`)).toBe(false)
    expect(isLeftBehind(`${process.ppid}-0123456789ab-x.arriving`)).toBe(false)
    expect(isLeftBehind(`${endedPid()}-0123456789ab-x.arriving`)).toBe(true)
  })

  it('is left behind when an earlier run had the same process number', () => {
    expect(isLeftBehind(`${process.pid}-0123456789ab-x.arriving`)).toBe(true)
  })

  it.each(['x.arriving', '', '0-0123456789ab', '99999999999-0123456789ab', '-1-0123456789ab'])(
    '%j has no mark',
    (name) => {
      expect(isLeftBehind(name)).toBe(true)
    },
  )
})
