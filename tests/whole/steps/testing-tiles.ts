import { expect, it } from 'vitest'
import { choose, fill } from '../fields.ts'
import { screenFaults } from '../screen-faults.ts'
import { soon } from '../soon.ts'
import { tableRows } from '../table-rows.ts'
import type { AtWork } from './work.ts'

const csv = '\uFEFFfacet;lift in;force lbf\nA;1,25;35\nA;-1;20\nA;1;15,9 kgf\nQ;1;3\n'

/** Readings are typed and brought in from a file, tiles are counted, and each says what it can. */
export function testingTiles(work: AtWork): void {
  const readings = () => work().page.getByRole('grid', { name: 'Lift readings' })
  const pane = async (name: string) => work().page.getByText(name, { exact: true }).click()

  it('takes readings by keyboard, and kilograms only when the pounds are confirmed', async () => {
    const { page } = work()
    await page.getByRole('link', { name: /^Field tests/ }).click()
    await page.getByText('No reading yet.').waitFor()
    expect(await screenFaults(page)).toEqual([])
    const line = page.getByRole('form', { name: 'Next reading' })
    await choose(line, 'Facet', 'A')
    await fill(line, { 'Lift, in': '2 3/4', 'Force, lbf': '24' })
    await page.keyboard.press('Enter')
    await page.keyboard.press('Enter')
    await expect.poll(() => readings().getByRole('row').count(), soon).toBe(2)
    await fill(line, { 'Lift, in': '-1' })
    await page.keyboard.press('Enter')
    await line.getByText('A lift cannot be negative.').waitFor()
    await fill(line, { 'Lift, in': '1', 'Force, lbf': '16 kg' })
    await page.keyboard.press('Enter')
    await line.getByRole('button', { name: 'Take 35.3 lbf' }).click()
    await expect.poll(() => readings().getByRole('row').count(), soon).toBe(3)
    expect((await tableRows(readings())).map((row) => row['Under the criterion'])).toEqual([
      'does not meet it',
      'meets the criterion',
    ])
    expect(await screenFaults(page)).toEqual([])
  })

  it('shows a file row by row and keeps the good ones only', async () => {
    const { page } = work()
    await page.getByRole('button', { name: 'Bring in a file…' }).click()
    const dialog = page.getByRole('dialog', { name: 'Bring readings in from a file' })
    await dialog
      .getByLabel('CSV file')
      .setInputFiles({ name: 'readings.csv', mimeType: 'text/csv', buffer: Buffer.from(csv) })
    await dialog.getByText('There is no facet "Q" on the plan.').waitFor()
    expect(await screenFaults(page)).toEqual([])
    await dialog.getByRole('button', { name: 'Keep 1 good row, leave 3 out' }).click()
    await expect.poll(() => readings().getByRole('row').count(), soon).toBe(4)
  })

  it('counts tiles by area and says when the sample is too small', async () => {
    const { page } = work()
    await pane('Hand checks')
    await page.getByRole('button', { name: 'Add a line' }).click()
    const table = page.getByRole('table', { name: 'Hand checks' })
    await choose(table, 'Facet, line 1', 'A')
    await choose(table, 'Area, line 1', 'Field')
    await table.getByLabel('Checked, line 1').fill('50')
    await table.getByLabel('Loose, line 1').fill('2')
    await page.keyboard.press('Enter')
    await page.getByText('Field: sample too small to say').waitFor()
    await page.getByText('Show working').click()
    await page.getByText(/2 of 50 = 4\.0 %; 95 % intervals: Wilson 1\.1 to 13\.5 %/).waitFor()
    expect(await screenFaults(page)).toEqual([])
    await pane('Criterion and instruments')
    await page.getByText('common practice, no source').first().waitFor()
    expect(await screenFaults(page)).toEqual([])
  })
}
