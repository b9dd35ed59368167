import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { dropOnWindow } from '../drop-on-window.ts'
import { fill } from '../fields.ts'
import { screenFaults } from '../screen-faults.ts'
import { soon } from '../soon.ts'
import { tableRows } from '../table-rows.ts'
import { jobNumber } from './first-run.ts'
import type { AtWork } from './work.ts'

const SUBTITLES = [
  'WEBVTT',
  '00:00:02.000 --> 00:00:05.000\nThree ridge caps are loose.',
  '00:00:08.000 --> 00:00:11.000\nThere is one cracked tile, that is not for the packet.',
  '00:00:xx.000 --> 00:00:14.000\nThis block is damaged.',
].join('\n\n')

/** A subtitle file is dropped, set in time, and its drafts are decided by key; all of it can be undone. */
export function takingNarrationIn(work: AtWork): void {
  const table = () => work().page.getByRole('grid', { name: 'Cues of the narration' })
  const card = () => work().page.getByRole('region', { name: 'Draft' })
  const details = () => work().page.getByRole('complementary', { name: 'Details' })

  it('imports a dropped subtitle file and says what of it could not be read', async () => {
    const { page, desktop } = work()
    await page.getByRole('grid', { name: 'Jobs' }).getByRole('button', { name: jobNumber }).click()
    await page.getByRole('link', { name: /^Narration/ }).click()
    await page.getByRole('heading', { name: 'No narration is in this job yet' }).waitFor()
    const file = join(desktop, 'walk.vtt')
    writeFileSync(file, SUBTITLES)
    await dropOnWindow(page, [file])
    await page.getByRole('button', { name: /^Import walk\.vtt/ }).waitFor()
    expect(await screenFaults(page)).toEqual([])
    await page.keyboard.press('i')
    await expect
      .poll(() => tableRows(table()), soon)
      .toMatchObject([
        { 'From the start': '+00:00:02', Drafts: 'Ridge tile: cap loose' },
        { 'From the start': '+00:00:08', Drafts: 'Field tile: diagonal crack across the tile' },
      ])
    await page.getByRole('button', { name: '1 place of the file not read' }).click()
    await page
      .getByRole('dialog')
      .getByText(/^Line 9: The times/)
      .waitFor()
    await page.keyboard.press('Escape')
    expect(await screenFaults(page)).toEqual([])
  })

  it('sets it in time by a photo and by the clock, and shows its cues on the time strip', async () => {
    const { page } = work()
    await page.getByRole('button', { name: 'Pin cue 1 to a photo…' }).click()
    await page
      .getByRole('dialog')
      .getByRole('button', { name: /Photo$/ })
      .click()
    await page.getByRole('option', { name: /^P-001/ }).click()
    expect(await screenFaults(page)).toEqual([])
    await page.getByRole('button', { name: 'Pin', exact: true }).click()
    await page.getByText('by a photo pinned to cue 1.').waitFor()
    await fill(page.getByRole('group', { name: 'Time of the recording' }), { 'Time of day of cue 1': '14:00:00' })
    await page.keyboard.press('Enter')
    await page.getByText('by the time given for cue 1.').waitFor()
    await expect
      .poll(async () => (await tableRows(table())).map((row) => row['Time']), soon)
      .toEqual(['14:00:00', '14:00:06'])
    await page.getByRole('region', { name: 'Time strip' }).getByText('Narration', { exact: true }).waitFor()
  })

  it('makes a finding of a draft by one key, and takes it back by undo', async () => {
    const { page } = work()
    await table().focus()
    await card().getByText('exactly 3 ridge tiles').waitFor()
    await page.keyboard.press('j')
    await card()
      .getByRole('heading', { name: /^Field tile/ })
      .waitFor()
    await details()
      .getByRole('heading', { name: /^Cue \d/ })
      .waitFor()
    await page.keyboard.press('k')
    await card().getByRole('heading', { name: 'Ridge tile: cap loose' }).waitFor()
    await page.keyboard.press('a')
    await expect
      .poll(async () => (await tableRows(table()))[0]?.['Drafts'], soon)
      .toMatch(/^F-\d+ Ridge tile: cap loose$/)
    await card()
      .getByRole('heading', { name: /^Field tile/ })
      .waitFor()
    await page.keyboard.press('d')
    await expect.poll(async () => (await tableRows(table()))[1]?.['Drafts'], soon).toMatch(/^Dropped: /)
    await page.getByText('All decided').waitFor()
    expect(await screenFaults(page)).toEqual([])
    for (const left of ['1 not decided', '2 not decided']) {
      await page.keyboard.press('Control+z')
      await page.getByText(left, { exact: false }).waitFor()
    }
    await expect.poll(async () => (await tableRows(table()))[0]?.['Drafts'], soon).toBe('Ridge tile: cap loose')
  })

  it('edits a draft before it is accepted', async () => {
    const { page } = work()
    await table().getByText('Three').click()
    await page.keyboard.press('e')
    const form = page.getByRole('dialog', { name: 'New finding' })
    await expect.poll(() => form.getByLabel('Observation, in your words').inputValue(), soon).toContain('As spoken:')
    await page.keyboard.press('Escape')
    await form.waitFor({ state: 'hidden' })
    await page.keyboard.press('Escape')
    await page.getByRole('region', { name: 'Work in progress' }).getByRole('button', { name: 'Put this away' }).click()
    await page.getByRole('link', { name: 'Jobs' }).click()
  })
}
