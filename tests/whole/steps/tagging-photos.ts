import { expect, it } from 'vitest'
import { fill } from '../fields.ts'
import { screenFaults } from '../screen-faults.ts'
import { soon } from '../soon.ts'
import type { AtWork } from './work.ts'

/** A caption in two scripts and a sign outside the first plane of Unicode. */
export const caption = 'قرميد مكسور near the ridge 🏠'

/** Photos are tagged from the keyboard. */
export function taggingPhotos(work: AtWork): void {
  const tile = (label: string) =>
    work().page.getByRole('grid', { name: 'Photos' }).getByRole('gridcell').filter({ hasText: label })
  const bar = () => work().page.getByRole('region', { name: 'Tags of the selected photos' })
  const press = (keys: string) => work().page.keyboard.press(keys)
  const shows = (label: string, ...words: readonly string[]) =>
    expect.poll(() => tile(label).innerText(), soon).toMatch(new RegExp(words.join('[^]*')))

  /** Opens a step by its key, reads the letters of a choice and types them. */
  async function tag(stepKey: string, choice: string): Promise<void> {
    await press(stepKey)
    const line = bar()
      .getByRole('listitem')
      .filter({ hasText: new RegExp(`${choice}$`) })
    const letters = line.locator('kbd')
    await letters.first().waitFor()
    for (const letter of await letters.allInnerTexts()) await press(letter.toLowerCase())
    await bar().getByRole('listitem').first().waitFor({ state: 'hidden' })
  }
  async function select(...labels: readonly string[]): Promise<void> {
    const [first = '', ...more] = labels
    await tile(first).click()
    for (const label of more) await tile(label).click({ modifiers: ['ControlOrMeta'] })
    await bar()
      .getByText(labels.length === 1 ? '1 photo' : `${labels.length} photos`, { exact: true })
      .waitFor()
  }

  it('shows the photos of both cameras in order of time, the drawing without one last', async () => {
    const { page } = work()
    await page.getByRole('link', { name: /^Photos/ }).click()
    const tiles = page.getByRole('grid', { name: 'Photos' }).getByRole('gridcell')
    const inTime = ['P-001', 'P-002', 'P-003', 'P-004', 'P-006', 'P-007', 'P-008', 'P-009', 'P-010', 'P-005']
    await expect
      .poll(async () => (await tiles.allInnerTexts()).map((words) => /P-\d{3}/.exec(words)?.[0]), soon)
      .toEqual(inTime)
  })

  it('tags several photos at once with a few keys', async () => {
    const { page } = work()
    await select('P-001', 'P-002', 'P-003')
    expect(await page.getByRole('gridcell', { selected: true }).count()).toBe(3)
    await tag('f', 'A')
    await tag('c', 'Field tile')
    await tag('d', 'Crack to the fastener')
    await tag('r', 'Close-up')
    for (const label of ['P-001', 'P-002', 'P-003'])
      await shows(label, 'A', 'Close-up', 'Field tile, crack to the fastener')
    expect(await screenFaults(page)).toEqual([])
  })

  it('captions a photo in Arabic with an emoji, undoes it and does it again by keys', async () => {
    const { page } = work()
    await select('P-002')
    await press('t')
    await page.keyboard.insertText(caption)
    await press('Enter')
    await shows('P-002', caption)
    await press('Control+z')
    await page.getByRole('status').filter({ hasText: 'Undone: Tag photo' }).waitFor()
    await expect.poll(() => tile('P-002').innerText(), soon).not.toContain(caption)
    await press('Control+Shift+z')
    await page.getByRole('status').filter({ hasText: 'Done again' }).waitFor()
    await shows('P-002', caption)
  })

  it('says the same of the next photos as of the last', async () => {
    await select('P-003')
    await tag('r', 'Close-up with scale')
    await select('P-004')
    await press('s')
    await shows('P-004', 'A', 'Close-up with scale', 'Field tile, crack to the fastener')
    await press('Shift+s')
    await expect.poll(() => tile('P-006').getAttribute('aria-selected'), soon).toBe('true')
  })

  it('suggests the facet of a photo that has none, and tags it only when a person takes it', async () => {
    const { page } = work()
    const chips = bar().getByRole('group', { name: 'Suggested places' })
    const hasFacet = (label: string) => tile(label).getByText('A', { exact: true })
    await select('P-003')
    await tag('f', 'No facet')
    await chips.getByRole('button', { name: /^A \d+ %/ }).waitFor()
    await hasFacet('P-003').waitFor({ state: 'hidden' })
    expect(await screenFaults(page)).toEqual([])
    await press('g')
    await hasFacet('P-003').waitFor()
    await chips.waitFor({ state: 'hidden' })
  })

  it('asks for the place of the photo that tells most of the others', async () => {
    const { page } = work()
    const next = page.getByRole('button', { name: /^Place next: P-\d{3}/ })
    const label = /P-\d{3}/.exec(await next.innerText())?.[0] ?? ''
    await press('q')
    await page.getByRole('region', { name: 'Messages' }).getByText(`Which facet does ${label} show?`).waitFor()
    await expect.poll(() => tile(label).getAttribute('aria-selected'), soon).toBe('true')
    expect(await screenFaults(page)).toEqual([])
  })

  it('takes over all suggestions that are sure enough as one step, which one undo takes back', async () => {
    const { page } = work()
    const hasFacet = (label: string) => tile(label).getByText('A', { exact: true })
    await select('P-002', 'P-003')
    await tag('f', 'No facet')
    await bar().getByRole('group', { name: 'Suggested places' }).waitFor()
    await press('Shift+G')
    const dialog = page.getByRole('dialog', { name: 'Take over suggested facets' })
    await fill(dialog, { 'At least this sure, %': '20' })
    await dialog.getByText('Type a number from 50 to 100.').waitFor()
    await fill(dialog, { 'At least this sure, %': '50' })
    await dialog.getByText(/^Would tag \d+ of \d+ photos without a facet: /).waitFor()
    expect(await screenFaults(page)).toEqual([])
    await dialog.getByRole('button', { name: /^Tag \d+ photos$/ }).click()
    await page.getByRole('status').filter({ hasText: 'tagged as suggested' }).waitFor()
    for (const label of ['P-002', 'P-003']) await hasFacet(label).waitFor()
    await press('Control+z')
    for (const label of ['P-002', 'P-003']) await hasFacet(label).waitFor({ state: 'hidden' })
    // And the tags that were there before.
    await press('Control+z')
    for (const label of ['P-002', 'P-003']) await hasFacet(label).waitFor()
  })

  it('leaves a photo out with a reason, and tags the rest', async () => {
    const { page } = work()
    await select('P-010')
    await press('x')
    const dialog = page.getByRole('dialog', { name: 'Leave 1 photo out of the packet' })
    expect(await screenFaults(page)).toEqual([])
    await fill(dialog, { Why: 'the file broke off on the card' })
    await press('Enter')
    await shows('P-010', 'Left out: the file broke off on the card')
    await select('P-006', 'P-007')
    await tag('r', 'Overview')
    await tag('f', 'A')
    await select('P-001')
    await tag('r', 'Mid view')
    await select('P-008', 'P-009')
    await tag('r', 'Side of the house')
    await page.getByText('1 left out').waitFor()
    await page.getByRole('button', { name: '1 untagged' }).waitFor()
  })
}
