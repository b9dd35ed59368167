import { expect, it } from 'vitest'
import { choose, fill } from '../fields.ts'
import { screenFaults } from '../screen-faults.ts'
import { soon } from '../soon.ts'
import type { AtWork } from './work.ts'

const prices = [
  'code;description;unit;unit price',
  'covering;"Tile; laid";square;1.612,35',
  'eave;Eave metal;ft;6,45',
  'EAVE;Eave metal;ft;7,00',
  'ridge;Caps;ft;-2,00',
  'hip;Caps;ft;=2+2',
  'tear-off;Take off;furlong;96,50',
].join('\r\n')

/** Lines follow from plan and findings, a price book prices them, and every change can be taken back. */
export function pricingTheWork(work: AtWork): void {
  const table = () => work().page.getByRole('table', { name: 'Lines of both bids' })
  const quantity = (bid: string, words: string) => table().getByLabel(`${bid} quantity of ${words}`, { exact: true })
  const row = (key: string) => table().locator(`tr[data-key="${key}"]`)
  const pane = async (name: string) => work().page.getByText(name, { exact: true }).click()

  it('shows both bids side by side, without a price that nobody gave', async () => {
    const { page } = work()
    await page.getByRole('link', { name: /^Packet/ }).click()
    await page.keyboard.press('Alt+Shift+Digit2')
    await page.getByText('The contractor’s own bid; not a claim amount.').waitFor()
    await row('covering').waitFor()
    expect(await quantity('Replacement', 'Covering').inputValue()).toMatch(/^\d+\.\d\d$/)
    expect(await row('covering').innerText()).toContain('no price')
    expect(await table().locator('tfoot').innerText()).toContain('no price')
    expect(await screenFaults(page)).toEqual([])
  })

  it('opens the working of a figure, with what it comes from', async () => {
    const { page } = work()
    await row('covering').getByRole('button', { name: 'Covering', exact: false }).first().click()
    await page.getByText(/Plan area x slope factor, by facet:/).waitFor()
    await page.getByRole('button', { name: 'Facet A', exact: true }).waitFor()
    expect(await screenFaults(page)).toEqual([])
  })

  it('shows a price book row by row and takes the good rows only', async () => {
    const { page } = work()
    await pane('Price book')
    await page.getByText('No price book is in this job').waitFor()
    expect(await screenFaults(page)).toEqual([])
    await page.getByRole('button', { name: 'Bring a price book in…' }).click()
    const dialog = page.getByRole('dialog', { name: 'Bring a price book in' })
    await dialog
      .getByLabel('CSV file')
      .setInputFiles({ name: 'our-prices.csv', mimeType: 'text/csv', buffer: Buffer.from(`\uFEFF${prices}`) })
    await dialog.getByText('The code "EAVE" stands on line 3 already, with another price or unit.').waitFor()
    await dialog.getByText('A price cannot be negative: "-2,00".').waitFor()
    await dialog.getByText('The cell "=2+2" is a formula.').waitFor()
    await dialog.getByText('The unit "furlong" is not known').waitFor()
    expect(await screenFaults(page)).toEqual([])
    await dialog.getByRole('button', { name: 'Take 2 good rows, leave 4 out' }).click()
    await page.getByRole('table', { name: 'Price book' }).waitFor()
    expect(await screenFaults(page)).toEqual([])
  })

  it('prices lines by their keys, to the cent, and says how many have none', async () => {
    await pane('Lines of both bids')
    const hundredths = BigInt((await quantity('Replacement', 'Covering').inputValue()).replace('.', ''))
    const cents = (hundredths * 161_235n + 50n) / 100n
    const amount = (cents / 100n).toLocaleString('en-US') + `.${String(cents % 100n).padStart(2, '0')}`
    await expect.poll(() => row('covering').innerText(), soon).toContain(amount)
    expect(await table().locator('tfoot').innerText()).toMatch(/of the 2 lines with a price; \d+ have none/)
    expect(await table().locator('tfoot').innerText()).toContain('Total of the lines with a price')
  })

  it('keeps the computed quantity beside one set by hand, and takes the change back', async () => {
    const { page } = work()
    const field = quantity('Replacement', 'Covering')
    const computed = await field.inputValue()
    await field.fill('two')
    await page.keyboard.press('Enter')
    await page.getByText('"two" is not a figure such as 27 or 1,234.5, 0 or more.').waitFor()
    await field.fill('10')
    await page.keyboard.press('Enter')
    await row('covering').getByText(`by hand; computed ${computed}`).waitFor()
    await expect.poll(() => row('covering').innerText(), soon).toContain('16,123.50')
    await page.getByRole('button', { name: 'Undo: Change the scope: lines changed by hand' }).click()
    await expect.poll(() => field.inputValue(), soon).toBe(computed)
  })

  it('leaves a line out with its reason and adds one with its source', async () => {
    const { page } = work()
    await row('eave').getByRole('button', { name: 'Eave metal' }).first().click()
    await page.getByLabel('Left out of the replacement because').fill('The metal stays.')
    await page.keyboard.press('Enter')
    await row('eave').getByText('left out: The metal stays.').waitFor()
    await page.getByRole('button', { name: 'Add a line' }).click()
    const dialog = page.getByRole('dialog', { name: 'Add a line' })
    await dialog.getByRole('button', { name: 'Add the line' }).click()
    await dialog.getByText('Say where the quantity comes from.').waitFor()
    await choose(dialog, 'Unit', 'for the job')
    await fill(dialog, { Work: 'Permit', 'Quantity in the replacement': '1' })
    await fill(dialog, { 'Where the quantity comes from': 'fee list of the city' })
    expect(await screenFaults(page)).toEqual([])
    await dialog.getByRole('button', { name: 'Add the line' }).click()
    await table().getByRole('button', { name: 'Permit', exact: true }).waitFor()
    expect(await screenFaults(page)).toEqual([])
  })

  it('adds a percentage as a line of its own and puts the scope in the packet', async () => {
    const { page } = work()
    await pane('What it rests on')
    await page.getByRole('button', { name: 'Add a percentage' }).click()
    await page.getByLabel('Percent, percentage 1').fill('12.5')
    await page.keyboard.press('Enter')
    expect(await screenFaults(page)).toEqual([])
    await pane('Lines of both bids')
    await table().getByText('Overhead, 12.5 % of the subtotal').waitFor()
    await page.getByText('Put the scope in the packet').click()
    await page
      .getByRole('link', { name: /^Scope and cost/ })
      .getByText('in packet')
      .waitFor()
  })
}
