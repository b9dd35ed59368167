import { writeFileSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { useScratch } from '../../tests/library/scratch.ts'
import { safeFileName, slug, storedName } from './file-names.ts'

const scratch = useScratch()

/*
 * What no name may be on Windows, the strictest of the common systems: reserved characters, control characters, device
 * names with or without extension, a dot or space at the end.
 * Source: Microsoft Learn, "Naming Files, Paths, and Namespaces".
 */
// oxlint-disable-next-line no-control-regex -- control characters are just what is looked for
const RESERVED = /[<>:"/\\|?*\u0000-\u001f]/
const DEVICE = /^(con|prn|aux|nul|com[0-9¹²³]|lpt[0-9¹²³])(\..*)?$/i

describe('a safe file name', () => {
  it.each([
    ['IMG_0001.JPG', 'IMG_0001.JPG'],
    ['eave détail 🏠.jpg', 'eave détail 🏠.jpg'],
    ['صورة السطح.jpg', 'صورة السطح.jpg'],
    ['屋根 01.jpg', '屋根 01.jpg'],
    ["inspector's photo.jpg", "inspector's photo.jpg"],
    ['12" crack.jpg', '12_ crack.jpg'],
    ['front/left\\side.jpg', 'front_left_side.jpg'],
    ['../../etc/passwd', '_.._etc_passwd'],
    ['.hidden.jpg', 'hidden.jpg'],
    ['...', 'file'],
    ['', 'file'],
    ['   ', 'file'],
    ['photo.jpg. . ', 'photo.jpg'],
    ['CON', 'CON_'],
    ['con.jpg', 'con_.jpg'],
    ['Lpt1.tar.gz', 'Lpt1_.tar.gz'],
    ['con ', 'con_'],
    ['console.jpg', 'console.jpg'],
    ['new\nline\u0000.jpg', 'new_line_.jpg'],
    ['shown as \u202egpj.exe', 'shown as _gpj.exe'],
    ['lone \ud83c half.jpg', 'lone _ half.jpg'],
  ])('%j becomes %j', (given, expected) => {
    expect(safeFileName(given)).toBe(expected)
  })

  it('is the same for both ways of writing an accent', () => {
    expect(safeFileName('e\u0301ave.jpg')).toBe(safeFileName('\u00e9ave.jpg'))
  })

  it('keeps the extension of a name of 300 characters', () => {
    const name = safeFileName(`${'a'.repeat(296)}.jpg`)
    expect(name).toMatch(/^a+\.jpg$/)
    expect(Buffer.byteLength(name)).toBe(180)
  })

  it('cuts a long name between characters, never inside one', () => {
    const name = safeFileName(`${'🏠'.repeat(300)}.jpg`)
    expect(name).toBe(`${'🏠'.repeat(44)}.jpg`)
  })

  it('is quick with a very long name', () => {
    const started = performance.now()
    safeFileName(`${'. '.repeat(100_000)}x${'é'.repeat(100_000)}`)
    expect(performance.now() - started).toBeLessThan(1000)
  })

  it('is taken by every common file system, whatever is given', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 300 }), (given) => {
        const name = safeFileName(given)
        expect(name).not.toMatch(RESERVED)
        expect(name).not.toMatch(DEVICE)
        expect(name).not.toMatch(/^\.|[. ]$|^$/)
        expect(Buffer.byteLength(storedName('0'.repeat(64), given))).toBeLessThanOrEqual(255)
      }),
      { numRuns: 500 },
    )
  })

  it('can be written to this disk and is read back the same', () => {
    const folder = scratch()
    const names = fc.sample(fc.string({ unit: 'binary', maxLength: 300 }), { numRuns: 200, seed: 4 }).map(safeFileName)
    for (const name of names) writeFileSync(join(folder, name), '')
    expect(readdirSync(folder).toSorted()).toEqual([...new Set(names)].toSorted())
  })
})

describe('the name under which a file is kept', () => {
  it('is the beginning of its hash and the name it came with', () => {
    expect(storedName(`0123456789ab${'f'.repeat(52)}`, 'IMG_0001.JPG')).toBe('0123456789ab-IMG_0001.JPG')
  })
})

describe('words for a folder name', () => {
  it.each([
    ['14 Example Lane', '14-example-lane'],
    ["O'Brien & Sons / #3", 'o-brien-sons-3'],
    ['شارع ٥', 'شارع-٥'],
    ['...', ''],
    ['a'.repeat(100), 'a'.repeat(40)],
  ])('%j become %j', (given, expected) => {
    expect(slug(given)).toBe(expected)
  })
})
