import { expect, it } from 'vitest'
import { choose, fill } from '../fields.ts'
import { screenFaults } from '../screen-faults.ts'
import { soon } from '../soon.ts'
import { tableRows } from '../table-rows.ts'
import type { AtWork } from './work.ts'

/** Chosen on the job sheet; the packet has to say so. */
export const wastePercent = '10'

/**
 * The roof that was drawn: 40 ft of ridge, a slope 16 ft deep in plan at 5 in 12 and one 12 ft deep at 8 in 12, in
 * construction-handbook slope factors 1.0833 and 1.2019.
 */
const roofSqFt = 40 * 16 * 1.0833 + 40 * 12 * 1.2019

/**
 * Edge zones by hand: 28 ft is the least dimension and 14 ft the height, so 2.8 ft is the lesser of a tenth and four
 * tenths, and the floor of 3 ft holds. Each slope has corners of 3 by 3 ft at both ends of its eave and of the ridge.
 */
const cornerSqFt = 4 * 9 * 1.0833 + 4 * 9 * 1.2019

/** Zones are shown on the plan, findings know theirs, and the roof is told in figures. */
export function zonesAndQuantities(work: AtWork): void {
  const section = (name: string) => work().page.getByRole('region', { name, exact: true })
  const zones = () => section('Edge zones')

  it('says what zones lack, and leads to the field', async () => {
    const { page } = work()
    await page.getByRole('link', { name: /^Roof plan/ }).click()
    await page.getByText('Zones', { exact: true }).click()
    await zones()
      .getByText('enter the edition of the wind standard and the mean roof height on the job sheet')
      .waitFor()
    await zones().getByText('They are not engineering').waitFor()
    expect(await screenFaults(page)).toEqual([])
    await zones().getByRole('button', { name: 'Enter the roof height' }).click()
    const height = section('Property').getByLabel('Mean roof height, ft')
    await expect.poll(() => height.evaluate((field) => field === document.activeElement), soon).toBe(true)
    await height.fill('14')
    await choose(section('Property'), 'Wind standard, edition', 'ASCE 7-16')
    await fill(section('Roof covering'), {
      'Exposure, in': '13.5',
      'Cover width, in': '12',
      'Waste allowance, %': wastePercent,
    })
    await section('Contractor').getByLabel('Address').focus()
    expect(await screenFaults(page)).toEqual([])
  })

  it('shows zones on the plan with their width, and puts them away again', async () => {
    const { page } = work()
    await page.getByRole('link', { name: /^Roof plan/ }).click()
    const drawn = page.getByRole('application', { name: 'Roof plan' }).locator('path[fill^="url(#"]')
    await page.keyboard.press('w')
    await zones().getByText('a = 3 ft', { exact: true }).waitFor()
    await zones()
      .getByText(`Corner ${cornerSqFt.toFixed(0)} sq ft`)
      .waitFor()
    expect(await drawn.count()).toBeGreaterThanOrEqual(6)
    await zones().getByText('How the width came about').click()
    await zones().getByText('the lesser of 0.10 × 28 ft').waitFor()
    expect(await screenFaults(page)).toEqual([])
    await page.keyboard.press('w')
    await zones().waitFor({ state: 'hidden' })
    expect(await drawn.count()).toBe(0)
  })

  it('tells the roof in figures, with the allowance for waste apart', async () => {
    const { page } = work()
    await page.getByRole('button', { name: /^Quantities/ }).click()
    const dialog = page.getByRole('dialog', { name: 'Quantities' })
    const totals = dialog.getByRole('table', { name: 'Facets in figures' }).getByRole('row').last()
    await expect.poll(() => totals.innerText(), soon).toContain(Math.round(roofSqFt).toLocaleString('en-US'))
    const waste = dialog.getByRole('table', { name: 'Allowance for waste' })
    await expect
      .poll(() => waste.getByRole('row').allInnerTexts(), soon)
      .toEqual([
        expect.anything(),
        expect.stringContaining(Math.round(roofSqFt).toLocaleString('en-US')),
        expect.stringContaining((roofSqFt / 10).toFixed(0)),
      ])
    await dialog.getByText('Show the working').click()
    await dialog.getByText('640.00 × 1.08333 = 693.33 sq ft').waitFor()
    expect(await screenFaults(page)).toEqual([])
    await page.keyboard.press('Escape')
    await dialog.waitFor({ state: 'hidden' })
  })

  it('says at the finding and among the findings in which zone it lies', async () => {
    const { page } = work()
    await page.getByRole('link', { name: /^Findings/ }).click()
    const table = page.getByRole('grid', { name: 'Findings' })
    await table.getByRole('gridcell', { name: 'F-1', exact: true }).click()
    const line = page.getByRole('complementary', { name: 'Details' }).getByRole('region', { name: 'Zone' })
    await expect.poll(() => line.innerText(), soon).toMatch(/^Zone\. (Field|Edge|Corner|Ridge or hip)\b/)
    const [, first] = /^Zone\. (\w+)/.exec(await line.innerText()) ?? []
    const [row] = await tableRows(table)
    expect(row?.['Zone']?.startsWith(first ?? 'none')).toBe(true)
    expect(await screenFaults(page)).toEqual([])
  })
}
