import { mkdirSync, symlinkSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { useScratch } from '../../../tests/library/scratch.ts'
import { findFiles } from './find-files.ts'

const scratch = useScratch()

function folderWith(...paths: string[]): string {
  const folder = scratch()
  for (const path of paths) {
    mkdirSync(dirname(join(folder, path)), { recursive: true })
    writeFileSync(join(folder, path), path)
  }
  return folder
}

const names = async (...paths: string[]) => (await findFiles(paths)).map((file) => file.fileName)

describe('the files handed over', () => {
  it('come in the order a person would list them, folders walked where they stand', async () => {
    const folder = folderWith('IMG_10.jpg', 'IMG_9.jpg', 'IMG_1/b.jpg', 'IMG_1/a.jpg', 'z.jpg', 'É.jpg')
    expect(await names(folder)).toEqual(['É.jpg', 'a.jpg', 'b.jpg', 'IMG_9.jpg', 'IMG_10.jpg', 'z.jpg'])
  })

  it('keep the order in which paths are named', async () => {
    const [b, a] = [folderWith('1.jpg'), folderWith('2.jpg')]
    expect(await names(a, b)).toEqual(['2.jpg', '1.jpg'])
  })

  it('can be single files, which come once even when their folder is named too', async () => {
    const folder = folderWith('a.jpg', 'b.jpg')
    expect(await names(join(folder, 'b.jpg'))).toEqual(['b.jpg'])
    expect(await names(join(folder, 'b.jpg'), folder, folder)).toEqual(['b.jpg', 'a.jpg'])
  })

  it('are without hidden files and what operating systems leave behind', async () => {
    const folder = folderWith(
      '.DS_Store',
      '._a.jpg',
      '.trash/x.jpg',
      'Thumbs.db',
      'desktop.ini',
      '__MACOSX/a.jpg',
      'System Volume Information/x',
      'a.jpg',
    )
    expect(await names(folder)).toEqual(['a.jpg'])
  })

  it('are taken from a folder whose own name is hidden when it is the one named', async () => {
    expect(await names(join(folderWith('.card/a.jpg'), '.card'))).toEqual(['a.jpg'])
  })

  it('keep names of any script', async () => {
    const odd = ['صورة.jpg', '屋根.jpg', '🏠 "quoted" it\'s.jpg', 'new\nline.jpg']
    expect((await names(folderWith(...odd))).toSorted()).toEqual(odd.toSorted())
  })

  it('do not follow links, so that one pointing upwards ends', async () => {
    const folder = folderWith('a/b.jpg')
    symlinkSync(folder, join(folder, 'a', 'up'))
    expect(await names(folder)).toEqual(['b.jpg'])
  })

  it('are refused with the path that is not there', async () => {
    const gone = join(scratch(), 'DCIM')
    await expect(findFiles([gone])).rejects.toMatchObject({
      error: { code: 'missing-folder', about: gone, message: expect.stringContaining(gone) },
    })
  })

  it('are none in an empty folder', async () => {
    expect(await names(scratch())).toEqual([])
  })
})
