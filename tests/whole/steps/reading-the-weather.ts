import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { dropOnWindow } from '../drop-on-window.ts'
import { choose, fill } from '../fields.ts'
import { screenFaults } from '../screen-faults.ts'
import { soon } from '../soon.ts'
import type { AtWork } from './work.ts'

/** Marks and separators as some archives write them; the third row is damaged. Invented figures. */
const ROWS = [
  'time;from;mean;gust',
  '2026-03-14 20:00;200;12,5;19,0',
  '2026-03-14 21:00;210;14,0;22,5',
  '2026-03-14 22:00;210;eleven;20,0',
  '2026-03-15 01:00;220;9,0;',
].join('\r\n')

/** A station file is read by choices that a person states, with the bad rows left out only when told. */
export function readingTheWeather(work: AtWork): void {
  const files = () => work().page.getByRole('region', { name: 'Station files' })

  it('keeps a station file and shows what it understood of it before anything is taken', async () => {
    const { page, desktop } = work()
    await page.getByRole('link', { name: /^Weather/ }).click()
    const file = join(desktop, 'pier.csv')
    writeFileSync(file, `\uFEFF${ROWS}\r\n`)
    await dropOnWindow(page, [file])
    await files()
      .getByRole('row', { name: /^pier\.csv/ })
      .getByRole('button', { name: 'Read as station file' })
      .click()
    const dialog = page.getByRole('dialog', { name: 'Read pier.csv' })
    await fill(dialog, { Station: 'PIER', 'Downloaded from, by whom, when': 'Made for this test' })
    await fill(dialog, { 'From, UTC': '2026-03-12', 'To, UTC': '2026-03-17' })
    for (const [column, title] of [
      ['Time column', 'time'],
      ['Direction column', 'from'],
      ['Mean wind column', 'mean'],
      ['Gust column', 'gust'],
    ] as const)
      await choose(dialog, column, title)
    await choose(dialog, 'Speeds are in', 'm/s')
    await dialog.getByText('Decimal commas').click()
    await dialog.getByText(/^Line 4: /).waitFor()
    expect(await screenFaults(page)).toEqual([])
    const take = dialog.getByRole('button', { name: 'Take 3 observations' })
    expect(await take.isDisabled()).toBe(true)
    await dialog.getByText('Take the other rows without these 1').click()
    await take.click()
    await files().getByText('(1 rows left out)').waitFor()
  })

  it('shows the wind with its gusts in two units, and context figures with their caution', async () => {
    const { page } = work()
    // 22.5 m/s is 43.7 kt and 50.3 mph (1 kt = 1852/3600 m/s, 1 mph = 0.44704 m/s, both exact).
    await expect
      .poll(() => page.getByRole('region', { name: 'Weather' }).innerText(), soon)
      .toMatch(/PIER[^]*44 kt \(50 mph\) from 210°/)
    await page
      .getByText(/not engineering/)
      .first()
      .waitFor()
    expect(await screenFaults(page)).toEqual([])
    await page.keyboard.press('Control+z')
    await files().getByText('not read yet').first().waitFor()
  })
}
