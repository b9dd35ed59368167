import { expect, it } from 'vitest'
import { cardCameras } from '../../builders/camera-card.ts'
import { fill } from '../fields.ts'
import { screenFaults } from '../screen-faults.ts'
import { soon } from '../soon.ts'
import type { AtWork } from './work.ts'

/** Clocks are compared, a photo without a time is placed, and what is missing is gone through. */
export function tellingTheTime(work: AtWork): void {
  const camera = () =>
    work()
      .page.getByRole('region', { name: 'Cameras', exact: true })
      .getByRole('group', { name: new RegExp(cardCameras.second) })

  it('corrects a camera by a photo of a clock, showing what would change first, and takes it back', async () => {
    const { page } = work()
    await page.getByRole('link', { name: /^Job sheet/ }).click()
    await camera().getByRole('button', { name: 'Compare with another clock…' }).click()
    const dialog = page.getByRole('dialog', { name: /Correct the clock of/ })
    await fill(dialog, { 'Photo of the clock': 'P-006', 'The clock shows': '9:30:05 am' })
    // The camera wrote 09:15:05 and is corrected by 7 minutes already; the clock in the picture says 8 more.
    const preview = dialog.getByRole('region', { name: 'What would change' })
    await preview.getByText('+15 min 00 s').waitFor()
    const line = preview.getByRole('row').filter({ hasText: 'P-006' })
    await expect.poll(() => line.innerText(), soon).toMatch(/09:22:05 -04:00\s+09:30:05 -04:00/)
    expect(await screenFaults(page)).toEqual([])
    await dialog.getByRole('button', { name: 'Apply' }).click()
    await expect.poll(() => camera().getByLabel('Add to its clock').inputValue(), soon).toBe('+15 min 0 s')
    await expect
      .poll(() => camera().getByLabel('How that is known').inputValue(), soon)
      .toBe('Photo of a clock that showed 2026-03-20 9:30:05 am, America/New_York')
    await page
      .getByRole('button', { name: /^Undo: Correct the clock of Example Two \(\d photos\) by \+15 min/ })
      .click()
    await expect.poll(() => camera().getByLabel('Add to its clock').inputValue(), soon).toBe('+7 min 0 s')
  })

  it('places a photo without a time between two others, and shows that a person did', async () => {
    const { page } = work()
    await page.getByRole('link', { name: /^Photos/ }).click()
    const tiles = page.getByRole('grid', { name: 'Photos' }).getByRole('gridcell')
    await tiles.filter({ hasText: 'P-005' }).click()
    await page.keyboard.press('p')
    const dialog = page.getByRole('dialog', { name: 'Place P-005 by hand' })
    await fill(dialog, { 'After photo': '7' })
    await dialog.getByText('Comes after P-007 and before P-008.').waitFor()
    expect(await screenFaults(page)).toEqual([])
    await page.keyboard.press('Enter')
    const order = ['P-001', 'P-002', 'P-003', 'P-004', 'P-006', 'P-007', 'P-005', 'P-008', 'P-009', 'P-010']
    await expect
      .poll(async () => (await tiles.allInnerTexts()).map((words) => /P-\d{3}/.exec(words)?.[0]), soon)
      .toEqual(order)
    await page.getByText('placed by hand between P-007 and P-008; time not known').waitFor()
    expect(await screenFaults(page)).toEqual([])
  })

  it('goes through what is missing by keys, and mends a thing in one step', async () => {
    const { page } = work()
    const walk = page.getByRole('region', { name: 'What is missing, one by one' })
    const bar = () => walk.innerText()
    await page.keyboard.press('Alt+m')
    await expect.poll(bar, soon).toMatch(/1 of \d+/)
    const total = Number(/of (\d+)/.exec(await bar())?.[1])
    // The sketch has no tag and no finding, which can be mended by leaving it out.
    for (let step = 0; step < total && !(await bar()).includes('P-005 has no tag'); step += 1) {
      const before = await bar()
      await page.keyboard.press('Alt+m')
      await expect.poll(bar, soon).not.toBe(before)
    }
    expect(await bar()).toContain('P-005 has no tag and no finding')
    expect(await screenFaults(page)).toEqual([])
    await page.keyboard.press('Alt+Enter')
    await expect.poll(bar, soon).not.toContain('P-005 has no tag')
    await page.getByRole('button', { name: /^Undo: Leave out photo P-005/ }).click()
    await page.keyboard.press('Alt+q')
    await walk.waitFor({ state: 'hidden' })
    await page.getByRole('link', { name: /^Photos/ }).click()
  })
}
