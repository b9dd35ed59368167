import { expect, it } from 'vitest'
import { fill } from '../fields.ts'
import { PlanHand } from '../plan-hand.ts'
import { screenFaults } from '../screen-faults.ts'
import { tableRows } from '../table-rows.ts'
import { soon } from '../soon.ts'
import type { AtWork } from './work.ts'

/**
 * Sloped area over plan area for a rise in 12: the square root of 1 + (rise / 12) squared, as in construction-handbook
 * slope tables, which give 1.0833 for 5 in 12 and 1.2019 for 8 in 12.
 */
const slopeFactors = { 5: 1.0833, 8: 1.2019 } as const

/** Two slopes of a gable roof are drawn: one by typed sides, one by clicks. */
export function drawingTheRoof(work: AtWork): void {
  const panel = () => work().page.getByRole('region', { name: 'Draw a facet' })
  const facets = () => work().page.getByRole('grid', { name: 'Facets' })
  const hand = () => new PlanHand(work().page.getByRole('application', { name: 'Roof plan' }))
  let firstCorner = { xFt: 0, yFt: 0 }
  async function typeSides(...sides: readonly (readonly [length: string, direction: string])[]) {
    for (const [length, direction] of sides) {
      await fill(panel(), { Length: length, Direction: direction })
      await work().page.keyboard.press('Enter')
      await expect.poll(() => panel().getByLabel('Length').inputValue(), soon).toBe('')
    }
  }
  async function addFacet(pitch: string, eave: RegExp) {
    const form = work().page.getByRole('form', { name: 'New facet' })
    await fill(form, { 'Pitch, :12': pitch })
    await work().page.getByRole('button', { name: eave }).click()
    await form.getByRole('button', { name: /^Add the facet/ }).click()
    await form.waitFor({ state: 'hidden' })
  }

  it('draws a facet by typed lengths, and says at the field what is no length', async () => {
    const { page } = work()
    await page.getByRole('link', { name: /^Roof plan/ }).click()
    await page.getByRole('heading', { name: 'No facet is drawn yet' }).waitFor()
    expect(await screenFaults(page)).toEqual([])
    await page.getByRole('button', { name: 'Draw single facets' }).click()
    firstCorner = await hand().placeAt(0.25, 0.75)
    await hand().click(firstCorner)
    await fill(panel(), { Length: 'forty', Direction: 'right' })
    await page.keyboard.press('Enter')
    await panel().getByText('Type a length such as 24').waitFor()
    expect(await screenFaults(page)).toEqual([])
    await typeSides(["40'", 'right'], ['16', '-90'], ['12.192 m', 'left'])
    await panel()
      .getByRole('button', { name: /^Close the outline/ })
      .click()
    await addFacet('5', /^Water leaves over side 1:/)
    await expect.poll(() => tableRows(facets()), soon).toHaveLength(1)
  })

  it('draws a facet by clicks, which hold on to corners, directions and half feet', async () => {
    const { page } = work()
    await page.getByRole('button', { name: 'Show the whole roof' }).click()
    for (let times = 0; times < 3; times += 1) await page.getByRole('button', { name: 'Zoom out' }).click()
    const ridgeLeft = { ...firstCorner, yFt: firstCorner.yFt + 16 }
    await page.getByRole('button', { name: /^Draw a facet/ }).click()
    // The hand misses each place by a few pixels.
    await hand().click(ridgeLeft, 4)
    await hand().moveTo({ xFt: ridgeLeft.xFt + 40, yFt: ridgeLeft.yFt }, 4)
    await panel().getByText('Side 1: 40′ 0″, direction 90°').waitFor()
    await hand().click({ xFt: ridgeLeft.xFt + 40, yFt: ridgeLeft.yFt }, 4)
    await hand().moveTo({ xFt: ridgeLeft.xFt + 40.3, yFt: ridgeLeft.yFt + 12.2 })
    await panel().getByText('Side 2: 12′ 0″, direction 0°, corner 90°').waitFor()
    await hand().click({ xFt: ridgeLeft.xFt + 40.3, yFt: ridgeLeft.yFt + 12.2 })
    await hand().click({ xFt: ridgeLeft.xFt, yFt: ridgeLeft.yFt + 12 }, 4)
    expect(await screenFaults(page)).toEqual([])
    await hand().click(ridgeLeft, 4)
    await addFacet('8', /^Water leaves over side 3:/)
    await expect.poll(() => tableRows(facets()), soon).toHaveLength(2)
  })

  it('shows areas that are the plan area times the slope factor', async () => {
    const { page } = work()
    const planAreas = { A: 40 * 16, B: 40 * 12 }
    const sloped = { A: planAreas.A * slopeFactors[5], B: planAreas.B * slopeFactors[8] }
    const [a, b] = await tableRows(facets())
    expect(a).toMatchObject({ Facet: 'A', 'Area, sq ft': sloped.A.toFixed(0), Squares: (sloped.A / 100).toFixed(2) })
    expect(b).toMatchObject({ Facet: 'B', 'Area, sq ft': sloped.B.toFixed(0), Squares: (sloped.B / 100).toFixed(2) })
    await page.getByText(`on ${(planAreas.A + planAreas.B).toLocaleString('en-US')} sq ft of plan`).waitFor()
    // The two slopes face away from each other.
    await facets().getByRole('gridcell', { name: 'A', exact: true }).click()
    const details = page.getByRole('complementary', { name: 'Details' })
    await details.getByRole('heading', { name: 'Facet A' }).waitFor()
    const facing = Number(await details.getByLabel('Faces downhill, °').inputValue())
    await fill(details, { 'Share that was looked at, %': '100' })
    await facets().getByRole('gridcell', { name: 'B', exact: true }).click()
    await details.getByRole('heading', { name: 'Facet B' }).waitFor()
    expect(Number(await details.getByLabel('Faces downhill, °').inputValue())).toBe((facing + 180) % 360)
    await expect
      .poll(async () => (await tableRows(facets())).map((row) => row['Inspected']), soon)
      .toEqual(['100%', 'not stated'])
    expect(await screenFaults(page)).toEqual([])
  })

  it('refuses an outline that crosses itself, and says where', async () => {
    const { page } = work()
    await page.getByRole('button', { name: /^Draw a facet/ }).click()
    await hand().click(await hand().placeAt(0.1, 0.1))
    await typeSides(['10', 'right'], ['10', 'up'], ['5', 'left'], ['20', 'down'])
    await panel().getByRole('alert').getByText('Side 4 would cross side 1. Put its corner elsewhere.').waitFor()
    await page.getByRole('button', { name: /^Cancel/ }).click()
    // A bow tie: only the side that closes it crosses another.
    await page.getByRole('button', { name: /^Draw a facet/ }).click()
    await hand().click(await hand().placeAt(0.1, 0.1))
    await typeSides(['10', 'right'], ['14.142', '315'], ['10', 'right'])
    await panel()
      .getByRole('button', { name: /^Close the outline/ })
      .click()
    await panel()
      .getByRole('alert')
      .getByText('Side 2 (from corner 2) crosses side 4 (from corner 4). Move one of their corners.')
      .waitFor()
    expect(await screenFaults(page)).toEqual([])
    await page.keyboard.press('Escape')
    await expect.poll(() => tableRows(facets()), soon).toHaveLength(2)
  })
}
