import { expect, it } from 'vitest'
import { screenFaults } from '../screen-faults.ts'
import { soon } from '../soon.ts'
import type { AtWork } from './work.ts'

/**
 * Facet A by hand: 40 ft by 16 ft in plan at 5 in 12, so 640 × 13/12 = 693.3 sq ft (the 5-12-13 triangle), over 13.5 in by
 * 12 in: 616.3 tiles.
 */
const tiles = 617

/** What was looked at is stated, findings are added up, and where they lie is held against it. */
export function assessing(work: AtWork): void {
  const part = async (name: string) => work().page.getByText(name, { exact: true }).click()
  const facets = () => work().page.getByRole('table', { name: 'Facets' })
  /** The cells of a row, counted from the one below the titles. */
  const cells = async (table: string, row: number) =>
    (
      await work()
        .page.getByRole('table', { name: table, exact: true })
        .getByRole('row')
        .nth(row + 1)
        .getByRole('cell')
        .allInnerTexts()
    ).map((text) => text.trim())

  it('opens by its keys and adds up what was counted', async () => {
    const { page } = work()
    await page.keyboard.press('Alt+Shift+Digit1')
    await page.getByRole('table', { name: 'Tallies' }).waitFor()
    const [facet, , , counted, findings] = await cells('Tallies', 0)
    expect([facet, counted, findings]).toEqual(['A', '3', 'F-1'])
    expect((await cells('Facets', 0)).at(-1)).toContain(`3 of ${tiles} = 0.5 %`)
    expect(await screenFaults(page)).toEqual([])
  })

  it('opens the working of each figure', async () => {
    await facets().getByText('Show working').first().click()
    await facets().getByText(`693.3 sq ft × 144 / (13.5 in × 12 in) = ${tiles} tiles`, { exact: false }).waitFor()
    expect(await screenFaults(work().page)).toEqual([])
  })

  it('compares nothing until it is stated how much was looked at', async () => {
    const { page } = work()
    await part('Where findings lie')
    const lack = page.getByText(/^State how much was looked at of facet B:/).first()
    await lack.waitFor()
    expect(await screenFaults(page)).toEqual([])
    await part('Tallies')
    await facets().getByLabel('Looked at of facet B, %').fill('40')
    await page.keyboard.press('Enter')
    await part('Where findings lie')
    await page.getByText('1 finding of damage: too few to say', { exact: false }).first().waitFor()
    await page.getByText('Looked at, without findings of damage: B (40 %)').waitFor()
  })

  it('tells sides by a wind that a person states, with its source', async () => {
    const { page } = work()
    await page.getByLabel('Wind from, degrees').fill('190')
    await page.keyboard.press('Enter')
    await page.getByText('Say where the stated wind direction comes from.').waitFor()
    await page.getByLabel('Where that comes from').fill('Owner, by phone')
    await page.keyboard.press('Enter')
    await page.getByRole('table', { name: 'By side of the wind' }).waitFor()
    const observed = await Promise.all([0, 1, 2].map((row) => cells('By side of the wind', row)))
    expect(observed.map(([side, , count]) => [side, count])).toEqual([
      ['Windward', '1'],
      ['Side', '0'],
      ['Leeward', '0'],
    ])
    await page.getByText('Show working').last().click()
    await page
      .getByText(/^Exact multinomial test over 2 outcomes: p = /)
      .last()
      .waitFor()
    expect(await screenFaults(page)).toEqual([])
  })

  it('takes one statement after the other back', async () => {
    const { page } = work()
    await part('Where findings lie')
    await page.keyboard.press('Control+z')
    await page.getByText('Say where the stated wind direction comes from.').waitFor()
    await page.keyboard.press('Control+z')
    await page.keyboard.press('Control+z')
    await page
      .getByText(/^State how much was looked at of facet B:/)
      .first()
      .waitFor()
    await expect.poll(() => page.getByRole('table', { name: 'By side of the wind' }).count(), soon).toBe(0)
  })
}
