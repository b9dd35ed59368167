import { expect, it } from 'vitest'
import { fill } from '../fields.ts'
import { PlanHand } from '../plan-hand.ts'
import { screenFaults } from '../screen-faults.ts'
import { tableRows } from '../table-rows.ts'
import { soon } from '../soon.ts'
import type { AtWork } from './work.ts'

/** A house and its garage are drawn as outlines beside the slopes that are there; in the end they are removed again. */
export function outliningTheRoof(work: AtWork): void {
  const panel = () => work().page.getByRole('region', { name: 'Draw an outline' })
  const form = () => work().page.getByRole('form', { name: 'New outline' })
  const facets = () => work().page.getByRole('grid', { name: 'Facets' })
  const details = () => work().page.getByRole('complementary', { name: 'Details' })
  const hand = () => new PlanHand(work().page.getByRole('application', { name: 'Roof plan' }))
  const sums = () => work().page.getByRole('region', { name: 'Facets and sums' })
  let corner = { xFt: 0, yFt: 0 }

  async function typeOutline(start: typeof corner, sides: readonly (readonly [length: string, direction: string])[]) {
    const { page } = work()
    await page.getByRole('button', { name: /^Draw an outline/ }).click()
    await hand().click(start)
    for (const [Length, Direction] of sides) {
      await fill(panel(), { Length, Direction })
      await page.keyboard.press('Enter')
      await expect.poll(() => panel().getByLabel('Length').inputValue(), soon).toBe('')
    }
    await panel()
      .getByRole('button', { name: /^Close the outline/ })
      .click()
  }
  async function build(words: Readonly<Record<string, string>>) {
    await fill(form(), words)
    await form()
      .getByRole('button', { name: /^Build the roof/ })
      .click()
    await form().waitFor({ state: 'hidden' })
    await work().page.getByRole('button', { name: /^Done/ }).click()
  }

  it('builds a hip roof over an outline', async () => {
    const { page } = work()
    await page.getByRole('button', { name: 'Show the whole roof' }).click()
    for (let times = 0; times < 4; times += 1) await page.getByRole('button', { name: 'Zoom out' }).click()
    corner = await hand().placeAt(0.12, 0.3)
    await typeOutline(corner, [
      ["30'", 'right'],
      ["20'", 'up'],
      ["30'", 'left'],
    ])
    await build({ 'Pitch of all eaves, :12': '6', Name: 'House', 'Eave height, ft': '18' })
    await expect.poll(() => tableRows(facets()), soon).toHaveLength(6)
    await sums().getByText('Hip').waitFor()
    expect(await screenFaults(page)).toEqual([])
  })

  it('refuses a second outline over the first, and says which two and where', async () => {
    const { page } = work()
    // Ten feet into the house.
    await typeOutline({ xFt: corner.xFt + 20, yFt: corner.yFt + 2 }, [
      ["25'", 'right'],
      ["16'", 'up'],
      ["25'", 'left'],
    ])
    await fill(form(), { 'Pitch of all eaves, :12': '4', Name: 'Garage' })
    await form()
      .getByRole('alert')
      .getByText(/^"Garage" and "House" cover the same place, at -?\d+\.\d ft across, -?\d+\.\d ft up\./)
      .waitFor()
    expect(
      await form()
        .getByRole('button', { name: /^Build the roof/ })
        .isDisabled(),
    ).toBe(true)
    expect(await screenFaults(page)).toEqual([])
    await page.keyboard.press('Escape')
    await page.keyboard.press('Escape')
    await expect.poll(() => tableRows(facets()), soon).toHaveLength(6)
  })

  it('builds a lower garage at the wall, which ends there in a step', async () => {
    await typeOutline({ xFt: corner.xFt + 30, yFt: corner.yFt + 2 }, [
      ["25'", 'right'],
      ["16'", 'up'],
      ["25'", 'left'],
    ])
    await build({ 'Pitch of all eaves, :12': '4', Name: 'Garage', 'Eave height, ft': '9' })
    await expect.poll(() => tableRows(facets()), soon).toHaveLength(10)
    // The hipped end of the garage lies against the wall: 16 ft of level eave.
    await sums().getByText('Step in height 16 ft 0 in').waitFor()
  })

  it('keeps the last good roof in sight while a dragged corner crosses its own outline', async () => {
    const { page } = work()
    await page.getByRole('button', { name: /^Shape the outline/ }).click()
    const grip = page.getByRole('button', { name: 'Corner 1 of House', exact: true })
    const lines = page.getByRole('application', { name: 'Roof plan' }).locator('svg > g').first()
    await grip.hover()
    await page.mouse.down()
    await hand().moveTo({ xFt: corner.xFt + 15, yFt: corner.yFt + 35 })
    const region = page.getByRole('region', { name: 'Shape the outline House' })
    await region
      .getByRole('alert')
      .getByText(/^Edge 1 meets edge 3 at -?\d+\.\d ft across/)
      .waitFor()
    const drawn = await lines.locator('path').count()
    expect(drawn).toBeGreaterThan(20)
    await hand().moveTo(corner)
    await region.getByRole('alert').waitFor({ state: 'hidden' })
    await page.mouse.up()
    await page.getByRole('button', { name: /^Done/ }).click()
    await expect.poll(() => tableRows(facets()), soon).toHaveLength(10)
  })

  it('lets an edge be stated by hand, shows that, and sets it back', async () => {
    const { page } = work()
    await facets().getByRole('gridcell', { name: 'C', exact: true }).click()
    await details().getByRole('heading', { name: 'Facet C' }).waitFor()
    await details()
      .getByText(/^\d+ edges$/)
      .click()
    const list = details().getByRole('list', { name: 'Edges of facet C' })
    await list.getByRole('button', { name: /^Hip/ }).first().click()
    await page.getByRole('option', { name: 'Valley', exact: true }).click()
    await list.getByText('Stated by hand; hip by the slopes').waitFor()
    await sums()
      .getByText(/^Valley .* \(1 stated by hand\)$/)
      .waitFor()
    await page.getByRole('list', { name: 'Legend' }).getByText('Edge stated by hand').waitFor()
    expect(await screenFaults(page)).toEqual([])
    await list.getByRole('button', { name: 'Set back' }).click()
    await list.getByText('Stated by hand').waitFor({ state: 'hidden' })
    await expect.poll(() => sums().getByText('stated by hand').count(), soon).toBe(0)
  })

  it('removes both outlines and leaves what was drawn by itself', async () => {
    const { page } = work()
    for (const left of [6, 2]) {
      await page.getByRole('button', { name: /^Shape the outline/ }).click()
      await page.getByRole('button', { name: /^Remove…/ }).click()
      await page
        .getByRole('alertdialog')
        .getByRole('button', { name: /^Remove/ })
        .click()
      await expect.poll(() => tableRows(facets()), soon).toHaveLength(left)
    }
  })
}
