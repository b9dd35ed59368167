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
  '00:00:14.000 --> 00:00:17.000\nOn the porch two tiles have slipped.',
].join('\n\n')

/** A subtitle file is dropped, set in time, and its drafts are decided by key; all of it can be undone. */
export function takingNarrationIn(work: AtWork): void {
  const table = () => work().page.getByRole('grid', { name: 'Cues of the narration' })
  const card = () => work().page.getByRole('region', { name: 'Draft' })
  const details = () => work().page.getByRole('complementary', { name: 'Details' })

  /** The plan has two slopes of the porch, and the words name neither. */
  async function choosesThePorch() {
    const { page } = work()
    const choice = card().getByRole('group', { name: 'Which facet is meant' })
    await card().getByText('“On the porch”: one of A, B').waitFor()
    expect(await screenFaults(page)).toEqual([])
    await page.keyboard.press('2')
    await card().getByText('facet B, “On the porch”').waitFor()
    await page.keyboard.press('2')
    await card().getByText('“On the porch”: one of A, B').waitFor()
    await choice.getByRole('button', { name: /^A, porch/ }).click()
    await card().getByText('facet A, “On the porch”').waitFor()
  }

  it('names both slopes after the porch', async () => {
    const { page } = work()
    await page.getByRole('grid', { name: 'Jobs' }).getByRole('button', { name: jobNumber }).click()
    await page.getByRole('link', { name: /^Roof plan/ }).click()
    for (const letter of ['A', 'B']) {
      await page.getByRole('grid', { name: 'Facets' }).getByRole('gridcell', { name: letter, exact: true }).click()
      await details()
        .getByRole('heading', { name: `Facet ${letter}` })
        .waitFor()
      await fill(details(), { Name: `porch, slope ${letter}` })
      await page.keyboard.press('Tab')
    }
    await expect
      .poll(async () => (await tableRows(page.getByRole('grid', { name: 'Facets' }))).map((row) => row['Name']), soon)
      .toEqual(['porch, slope A', 'porch, slope B'])
    await page.getByRole('link', { name: 'Jobs' }).click()
  })

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
        { 'From the start': '+00:00:14', Drafts: 'Field tile: slipped or displaced' },
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
      .toEqual(['14:00:00', '14:00:06', '14:00:12'])
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
    await choosesThePorch()
    await page.keyboard.press('a')
    await page.getByText('All decided').waitFor()
    expect(await screenFaults(page)).toEqual([])
    for (const left of ['1 not decided', '2 not decided', '3 not decided']) {
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
