import { expect, it } from 'vitest'
import { choose, fill, search } from '../fields.ts'
import { PlanHand } from '../plan-hand.ts'
import { screenFaults } from '../screen-faults.ts'
import { soon } from '../soon.ts'
import { tableRows } from '../table-rows.ts'
import type { AtWork } from './work.ts'

/** What the finding says in the inspector's words. */
export const observation = 'Three tiles cracked from the nail hole to the lower edge.'

/** A finding is written from photos and pinned on the plan. */
export function writingFindings(work: AtWork): void {
  const details = () => work().page.getByRole('complementary', { name: 'Details' })
  const tiles = () => work().page.getByRole('grid', { name: 'Photos' }).getByRole('gridcell')

  it('starts a finding from the selected photos, with what they agree on', async () => {
    const { page } = work()
    await tiles().filter({ hasText: 'P-001' }).click()
    await tiles()
      .filter({ hasText: 'P-004' })
      .click({ modifiers: ['Shift'] })
    await page.keyboard.press('n')
    const form = page.getByRole('dialog', { name: 'New finding' })
    await expect.poll(() => form.getByRole('combobox', { name: 'Component' }).inputValue(), soon).toBe('Field tile')
    expect(await form.getByRole('combobox', { name: 'Condition' }).inputValue()).toBe('Crack to the fastener')
    // The house faces east and the slope south: to the left of a person who looks at the front.
    await form.getByRole('button', { name: 'A, left Facet', exact: true }).waitFor()
    expect(await form.getByRole('button', { name: /^Take P-\d{3} off the finding$/ }).count()).toBe(4)
    expect(await screenFaults(page)).toEqual([])
  })

  it('takes what was seen, measured and thought, and a pin on the plan', async () => {
    const { page } = work()
    const form = page.getByRole('dialog', { name: 'New finding' })
    await choose(form, 'How much', 'Exactly, counted')
    await fill(form, { 'How many': '3', 'Observation, in your words': observation })
    await form.getByRole('group', { name: 'Add a measurement' }).getByRole('button', { name: 'Crack length' }).click()
    await fill(form.getByRole('group', { name: 'Measurement 1' }), {
      'Value, in': '6 1/2',
      'Which instrument': 'steel rule',
    })
    await fill(form, { 'In words': 'third course above the eave' })
    await search(form, 'Cause', 'Wind')
    await form.getByRole('button', { name: /^Seen: fresh face/ }).click()
    await form.getByText('Water path possible').click()
    await form.getByRole('button', { name: 'Place on the plan…' }).click()
    const plan = page.getByRole('dialog', { name: 'Place the pin' }).getByRole('application', { name: 'Roof plan' })
    await plan.getByText('Arrow keys move the cross').waitFor({ state: 'attached' })
    expect(await screenFaults(page)).toEqual([])
    const hand = new PlanHand(plan)
    await hand.click(await hand.placeAt(0.5, 0.7))
    await form.getByText('A point on the plan.').waitFor()
    expect(await form.getByText(/^The pin stands on facet/).count()).toBe(0)
    await page.keyboard.press('Control+Enter')
    await page.getByRole('status').filter({ hasText: 'The finding is saved.' }).waitFor()
    await details().getByRole('heading', { name: 'Finding F-1' }).waitFor()
  })

  it('shows it on the plan, where its pin selects it everywhere', async () => {
    const { page } = work()
    await page.keyboard.press('Escape')
    await details().getByRole('heading', { name: 'What this job lacks' }).waitFor()
    await page.getByRole('link', { name: /^Roof plan/ }).click()
    const pin = page.getByRole('application', { name: 'Roof plan' }).getByText('1', { exact: true })
    await pin.click()
    await details().getByRole('heading', { name: 'Finding F-1' }).waitFor()
    await details().getByText('Field tile: crack to the fastener').waitFor()
    const facets = page.getByRole('grid', { name: 'Facets' })
    await expect
      .poll(() => facets.getByRole('row').and(page.locator('[aria-current=true]')).allInnerTexts(), soon)
      .toEqual([expect.stringMatching(/^A\b/)])
    expect(await screenFaults(page)).toEqual([])
  })

  it('shows the same selection among the findings and the photos', async () => {
    const { page } = work()
    await page.getByRole('link', { name: /^Findings/ }).click()
    const table = page.getByRole('grid', { name: 'Findings' })
    await expect
      .poll(() => table.getByRole('row', { selected: true }).allInnerTexts(), soon)
      .toEqual([expect.stringMatching(/^F-1\b/)])
    expect(await tableRows(table)).toMatchObject([{ 'No.': 'F-1', Facet: 'A', Photos: '4', Pin: 'yes', Cause: 'Wind' }])
    const form = page.getByRole('region', { name: 'Form of F-1' })
    expect(await form.getByLabel('Observation, in your words').inputValue()).toBe(observation)
    expect(await form.getByLabel('Value, in').inputValue()).toBe('6.5')
    expect(await screenFaults(page)).toEqual([])
    await page.getByRole('link', { name: /^Photos/ }).click()
    await expect.poll(() => tiles().and(page.locator('[aria-current=true]')).count(), soon).toBe(4)
    await tiles().filter({ hasText: 'P-003' }).click()
    await details().getByRole('region', { name: 'Findings' }).getByRole('button', { name: /^F-1/ }).waitFor()
  })
}
