import { expect, it } from 'vitest'
import { screenFaults } from '../screen-faults.ts'
import { soon } from '../soon.ts'
import { tableRows } from '../table-rows.ts'
import { jobNumber } from './first-run.ts'
import { reason } from './issuing-the-packet.ts'
import { caption } from './tagging-photos.ts'
import type { AtWork } from './work.ts'

/** What was done is found again: in the log, by words, by the browser's own buttons. */
export function lookingBack(work: AtWork): void {
  const details = () => work().page.getByRole('complementary', { name: 'Details' })
  const here = () => work().page.getByRole('navigation', { name: 'Workspaces' }).locator('[aria-current=page]')

  it('has every step in the evidence log, signed, in a chain that holds', async () => {
    const { page } = work()
    await page.getByRole('link', { name: /^Evidence log/ }).click()
    const log = page.getByRole('region', { name: 'Evidence log' })
    const count = Number(/\d+/.exec(await log.getByText(/Chain holds, \d+ entries$/).innerText())?.[0])
    expect(count).toBeGreaterThan(40)
    await log.getByText(`${count} entries`, { exact: true }).waitFor()
    const table = log.getByRole('grid')
    const filter = log.getByLabel('Filter by words')
    for (const [words, entry] of [
      ['revision 1', 'Packet revision 1 issued.'],
      ['rear slope', `Reason: ${reason}`],
      ['ONE_0002', 'P-002 taken in: ONE_0002.JPG'],
      ['same file', 'ONE_0009.JPG is the same file as one already here'],
      ['undone: tag', 'Undone: Tag photo P-002.'],
      ['undone: correct', 'Undone: Correct the clock of Example Two (5 photos) by +15 min 00 s.'],
      ['undone: take over', 'Undone: Take over the suggested facets of '],
      [`${jobNumber} opened`, `Job ${jobNumber} was opened.`],
    ] as const) {
      await filter.fill(words)
      await expect
        .poll(() => tableRows(table), soon)
        .toContainEqual(expect.objectContaining({ What: expect.stringContaining(entry), Who: 'Nora Quill' }))
    }
    await filter.fill('')
    await table.getByRole('gridcell', { name: 'Packet revision 1 issued.' }).click()
    await details()
      .getByRole('heading', { name: `Log entry ${count}` })
      .waitFor()
    expect(await screenFaults(page)).toEqual([])
  })

  it('finds a caption by a word of it, in the job and in the library', async () => {
    const { page } = work()
    await page.keyboard.press('Control+k')
    const dialog = page.getByRole('dialog', { name: 'Search this job' })
    await dialog.getByLabel('Search for').fill('مكسور')
    await dialog.getByRole('option').filter({ hasText: caption }).waitFor()
    expect(await screenFaults(page)).toEqual([])
    await dialog.getByRole('option').filter({ hasText: caption }).click()
    await details().getByRole('heading', { name: 'Photo P-002' }).waitFor()
    await expect
      .poll(() => page.getByRole('gridcell', { selected: true }).allInnerTexts(), soon)
      .toEqual([expect.stringContaining('P-002')])
    await page.getByRole('link', { name: 'Jobs' }).click()
    await page.getByLabel('Search all jobs').fill('ridge')
    const hit = page.getByRole('listitem').filter({ hasText: caption }).getByRole('button')
    await hit.waitFor()
    expect(await screenFaults(page)).toEqual([])
    await hit.click()
    await details().getByRole('heading', { name: 'Photo P-002' }).waitFor()
  })

  it('lists the keys that work here', async () => {
    const { page } = work()
    await page.keyboard.press('?')
    const keys = page.getByRole('dialog', { name: 'Keys' })
    for (const what of ['Search this job', 'Undo the last change', 'Same as last', 'To evidence log'])
      await keys.getByText(what, { exact: true }).waitFor()
    expect(await screenFaults(page)).toEqual([])
    await page.keyboard.press('Escape')
    await keys.waitFor({ state: 'hidden' })
  })

  it('keeps its place when one goes back, forward or loads the page again', async () => {
    const { page } = work()
    const place = page.url()
    await page.keyboard.press('Alt+6')
    await expect.poll(() => here().innerText(), soon).toMatch(/^Findings/)
    await page.goBack()
    await expect.poll(() => here().innerText(), soon).toMatch(/^Photos/)
    expect(page.url()).toBe(place)
    await page.goForward()
    await expect.poll(() => here().innerText(), soon).toMatch(/^Findings/)
    await page.goBack()
    await page.reload()
    await expect.poll(() => here().innerText(), soon).toMatch(/^Photos/)
    // The address says what was selected there.
    await details().getByRole('heading', { name: 'Photo P-002' }).waitFor()
    // So does the theme that was chosen.
    await page.getByRole('button', { name: 'Theme: as this machine is set. Change to light' }).click()
    await page.getByRole('button', { name: 'Theme: light. Change to dark' }).click()
    await page.reload()
    await page.getByRole('button', { name: 'Theme: dark. Change to as this machine is set' }).click()
    await page.goto(`${work().served.address}job/no-such-job/photos`)
    await page.getByRole('link', { name: 'To the jobs' }).click()
    await page.getByRole('grid', { name: 'Jobs' }).getByRole('button', { name: jobNumber }).waitFor()
    expect(await screenFaults(page)).toEqual([])
  })
}
