import { expect, it } from 'vitest'
import { choose, fill } from '../fields.ts'
import { screenFaults } from '../screen-faults.ts'
import { soon } from '../soon.ts'
import type { AtWork } from './work.ts'

/** The share of work is held against a rule only when one is chosen, and a repair against the tile that is known to exist. */
export function judgingARepair(work: AtWork): void {
  const part = (name: string) =>
    work().page.getByRole('radiogroup', { name: 'Part of the assessment' }).getByText(name, { exact: true }).click()
  const share = () => work().page.getByRole('region', { name: 'Share of work' })
  const repair = () => work().page.getByRole('region', { name: 'Repair by single tiles' })

  it('holds no share of work against any rule until a person chooses one', async () => {
    const { page } = work()
    await page.getByRole('link', { name: /^Assessment/ }).click()
    await part('Share of work')
    await share()
      .getByText(/^No rule is chosen/)
      .waitFor()
    expect(await screenFaults(page)).toEqual([])
    await choose(share(), 'Rule on the share of work', 'US-FL: 25 percent of a roof or roof section in 12 months')
    await share().getByText('The decision belongs to the building official.').first().waitFor()
  })

  it('says what is not stated, and then the share with its working', async () => {
    const { page } = work()
    await share()
      .getByText(/not known yet\./)
      .first()
      .waitFor()
    const facets = await share().getByRole('table', { name: 'Work on each facet' }).getByRole('row').count()
    for (let row = 1; row < facets; row += 1) {
      const line = share().getByRole('table', { name: 'Work on each facet' }).getByRole('row').nth(row)
      await line.getByRole('button').click()
      await page.getByRole('option', { name: 'The whole facet', exact: true }).click()
    }
    await share()
      .getByText(/100\.00 % of its area is more than 25 % within 12 months\./)
      .first()
      .waitFor()
    await share().getByText('Show working').click()
    await share()
      .getByText(/no earlier work; .* = 100\.00 %\./)
      .first()
      .waitFor()
    expect(await screenFaults(page)).toEqual([])
  })

  it('judges a repair only when counts, allowance and matching tile are there', async () => {
    const { page } = work()
    await part('Repair')
    await repair().getByText('No allowance for breaking is chosen.').waitFor()
    await fill(repair(), { 'Of lifted tiles may break, from, %': '10', 'to, %': '30' })
    await page.keyboard.press('Enter')
    await repair().getByText('No allowance for breaking is chosen.').waitFor({ state: 'hidden' })
    await repair().getByRole('button', { name: 'Add matching tile' }).click()
    await fill(repair(), { Tiles: '12' })
    await page.keyboard.press('Enter')
    await repair()
      .getByText(/Matching tiles known of: 12\./)
      .waitFor()
    expect(await screenFaults(page)).toEqual([])
    // In a field the keys would take back what was typed there.
    await part('Repair')
    await page.keyboard.press('Control+z')
    await repair()
      .getByText(/Matching tiles known of: none counted\./)
      .waitFor()
    await expect.poll(() => repair().getByRole('table').first().getByRole('row').count(), soon).toBeGreaterThan(1)
  })
}
