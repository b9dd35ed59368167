import { expect, it } from 'vitest'
import { doubleName, portraitName, textName } from '../../builders/camera-card.ts'
import { screenFaults } from '../screen-faults.ts'
import { dropOnWindow } from '../drop-on-window.ts'
import { standOf } from '../picture-colours.ts'
import { soon } from '../soon.ts'
import type { AtWork } from './work.ts'

/** The camera's card is dropped on the window. */
export function takingPhotosIn(work: AtWork): void {
  it('shows progress and then what came of each file', async () => {
    const { page, card } = work()
    const progress = page.getByRole('region', { name: 'Work in progress' })
    // Looked for before the drop: on a fast machine it is not there for long.
    const isShown = progress.getByRole('progressbar').first().waitFor()
    await dropOnWindow(page, [card])
    await isShown
    await progress.getByText('10 photos taken in, 1 other file kept, 1 double skipped').waitFor()
    await progress.getByRole('button', { name: 'What happened' }).click()
    const report = page.getByRole('dialog')
    const lines = await report.getByRole('listitem').allInnerTexts()
    expect(lines.map((line) => line.split(/\s+/)[0])).toEqual([doubleName, textName])
    expect(lines.join(' ')).toContain('The same file as P-001.')
    expect(lines.join(' ')).toContain('This is a text file, not a picture')
    expect(await screenFaults(page)).toEqual([])
    await report.getByRole('button', { name: 'Done' }).click()
    await progress.getByRole('button', { name: 'Put this away' }).click()
    await progress.waitFor({ state: 'hidden' })
  })

  it('puts them on the contact sheet, the unreadable one with its reason', async () => {
    const { page } = work()
    await page.getByRole('link', { name: /^Photos/ }).click()
    const tiles = page.getByRole('grid', { name: 'Photos' }).getByRole('gridcell')
    await expect.poll(() => tiles.count(), soon).toBe(10)
    await expect.poll(() => tiles.getByRole('img').count(), soon).toBe(9)
    await tiles.getByText('No picture to show').waitFor()
    expect(await screenFaults(page)).toEqual([])
  })

  it('shows a picture upright that was stored lying on its side', async () => {
    const { page } = work()
    const tiles = page.getByRole('grid', { name: 'Photos' }).getByRole('gridcell')
    await page.getByPlaceholder('Find by caption, number, file').fill(portraitName)
    await expect.poll(() => tiles.count(), soon).toBe(1)
    await tiles.first().dblclick()
    const large = page.getByRole('region', { name: /^Photo P-\d{3}, large/ })
    const picture = large.getByRole('img')
    await picture.waitFor()
    expect(await standOf(picture)).toEqual({ isTall: true, top: 'red', foot: 'blue' })
    expect(await screenFaults(page)).toEqual([])
    await page.keyboard.press('Escape')
    expect(await standOf(tiles.first().getByRole('img'))).toEqual({ isTall: true, top: 'red', foot: 'blue' })
    await page.getByPlaceholder('Find by caption, number, file').fill('')
    await expect.poll(() => tiles.count(), soon).toBe(10)
  })
}
