import { expect, it } from 'vitest'
import { fill } from '../fields.ts'
import { screenFaults } from '../screen-faults.ts'
import { soon } from '../soon.ts'
import { tableRows } from '../table-rows.ts'
import type { AtWork } from './work.ts'

/**
 * Facet A by hand: 40 ft by 16 ft in plan at 5 in 12, so 640 × 13/12 = 693.3 sq ft (the 5-12-13 triangle), over 13.5 in by
 * 12 in: 616.3 tiles, of which half is 308.1.
 */
const [tiles, halfTheTiles] = [617, 309]

/** What was looked at is stated, findings are added up, and where they lie is held against it. */
export function assessing(work: AtWork): void {
  const part = async (name: string) => work().page.getByText(name, { exact: true }).click()
  const facets = () => work().page.getByRole('table', { name: 'Facets' })
  const damageOn = async (letter: string) =>
    (await tableRows(facets())).find((row) => row['Facet'] === letter)?.['Tiles with damage, of the whole facet']

  it('opens by its keys and adds up what was counted', async () => {
    const { page } = work()
    await page.keyboard.press('Alt+Shift+Digit1')
    await page.getByRole('table', { name: 'Tallies' }).waitFor()
    const [first] = await tableRows(page.getByRole('table', { name: 'Tallies' }))
    expect(first).toMatchObject({ Facet: 'A', Counted: '3', In: 'F-1' })
    expect(await damageOn('A')).toBe(`3 of ${tiles} = 0.5 %`)
    expect(await screenFaults(page)).toEqual([])
  })

  it('compares nothing until it is stated how much was looked at', async () => {
    const { page } = work()
    await part('Where findings lie')
    await page
      .getByText(/^State how much was looked at of facet A, B/)
      .first()
      .waitFor()
    expect(await screenFaults(page)).toEqual([])
    await part('Tallies')
    await fill(facets().locator('..'), { 'Looked at of facet A, %': '50' })
    await page.keyboard.press('Enter')
    await fill(facets().locator('..'), { 'Looked at of facet B, %': '100' })
    await page.keyboard.press('Enter')
    await facets().getByText('Show working').first().click()
    await facets().getByText(`the part looked at has about ${halfTheTiles} tiles by area`, { exact: false }).waitFor()
    expect(await screenFaults(page)).toEqual([])
  })

  it('holds findings against the area looked at, and says when they are too few', async () => {
    const { page } = work()
    await part('Where findings lie')
    await page.getByText('1 finding: too few to say', { exact: false }).first().waitFor()
    await fill(page.locator('main'), { 'Wind from, degrees, °': '190' })
    await page.keyboard.press('Enter')
    await page.getByText('Say where the stated wind direction comes from.').waitFor()
    await fill(page.locator('main'), { 'Where that comes from': 'Owner, by phone' })
    await page.keyboard.press('Enter')
    const sides = page.getByRole('table', { name: 'By side of the wind' })
    await sides.waitFor()
    expect((await tableRows(sides)).map((row) => [row['Part'], row['Observed']])).toEqual([
      ['Windward', '1'],
      ['Side', '0'],
      ['Leeward', '0'],
    ])
    await page.getByText('Looked at, without findings of damage: B (100 %)').waitFor()
    await page.getByText('Show working').last().click()
    await page.getByText(/^Exact multinomial test over 2 outcomes: p = /).waitFor()
    expect(await screenFaults(page)).toEqual([])
  })

  it('takes one statement after the other back', async () => {
    const { page } = work()
    await page.keyboard.press('Control+z')
    await page.getByText('Say where the stated wind direction comes from.').waitFor()
    await page.keyboard.press('Control+Shift+z')
    await expect.poll(() => page.getByRole('table', { name: 'By side of the wind' }).count(), soon).toBe(1)
  })
}
