import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import sharp from 'sharp'
import { expect, it } from 'vitest'
import { choose as chooseLine, fill } from '../fields.ts'
import { PlanHand } from '../plan-hand.ts'
import { screenFaults } from '../screen-faults.ts'
import { soon } from '../soon.ts'
import { tableRows } from '../table-rows.ts'
import type { AtWork } from './work.ts'

/** A house seen from above as a test draws it: a grey roof of 400 by 240 pixels on green, its top left corner at 200, 150. */
async function siteModel(): Promise<Buffer> {
  const roof = { create: { width: 400, height: 240, channels: 3 as const, background: '#8a8d91' } }
  const ground = { create: { width: 800, height: 600, channels: 3 as const, background: '#8fae7c' } }
  return sharp(ground)
    .composite([{ input: await sharp(roof).png().toBuffer(), left: 200, top: 150 }])
    .jpeg()
    .toBuffer()
}

/** A rendered picture is laid under the plan, scaled by one length, a garage is traced over it, and the door is marked. */
export function tracingAnImage(work: AtWork): void {
  const panel = () => work().page.getByRole('region', { name: 'Image under the plan' })
  const facets = () => work().page.getByRole('grid', { name: 'Facets' })
  const hand = () => new PlanHand(work().page.getByRole('application', { name: 'Roof plan' }))
  const image = () => work().page.locator('svg > image')

  /** Where a place on the picture is drawn on the plan: read from the picture's own transform and the plan's. */
  async function onPlan(x: number, y: number) {
    const point = await image().evaluate(
      (element, at) => {
        const group = document.querySelector('[role="application"] svg > g')
        if (!(element instanceof SVGGraphicsElement) || !(group instanceof SVGGraphicsElement)) return null
        const [pixels, feet] = [element.getCTM(), group.getCTM()]
        if (pixels === null || feet === null) return null
        const { x: xFt, y: yFt } = new DOMPoint(at.x, at.y).matrixTransform(pixels).matrixTransform(feet.inverse())
        return { xFt, yFt }
      },
      { x, y },
    )
    if (point === null) throw new Error('The image is not drawn.')
    return point
  }

  it('refuses what is no picture in words, and takes a rendered picture in under its own name', async () => {
    const { page, desktop } = work()
    const [letter, model] = [join(desktop, 'letter.jpg'), join(desktop, 'model.jpg')]
    writeFileSync(letter, 'Dear owner, this is no picture.')
    writeFileSync(model, await siteModel())
    await page.getByRole('button', { name: /^Image/ }).click()
    await panel().getByText('Only a view from straight above can be laid.').waitFor()
    await chooseLine(panel(), 'What it is', 'Rendered picture')
    await fill(panel(), { Name: 'Site model', 'Where it comes from': 'drawn by this test' })
    const choose = async (path: string) => {
      const chooser = page.waitForEvent('filechooser')
      await panel().getByRole('button', { name: 'Choose the image…' }).click()
      await (await chooser).setFiles(path)
    }
    await choose(letter)
    await panel().getByRole('alert').getByText("is not a picture, so it can't be laid under the plan").waitFor()
    expect(await screenFaults(page)).toEqual([])
    await choose(model)
    await page.getByText('Rendered: Site model, drawn by this test. Not to scale yet.').waitFor()
    expect(await screenFaults(page)).toEqual([])
  })

  it('scales it by one known length, says what a pixel does to it, and refuses two marks on one place', async () => {
    const { page } = work()
    await panel().getByRole('button', { name: 'Give one length on it' }).click()
    const [left, right] = [await onPlan(200, 390), await onPlan(600, 390)]
    await hand().click(left)
    await hand().click(left)
    await panel().getByLabel('Length of the line').fill("80'")
    await page.keyboard.press('Enter')
    await panel().getByText('The two marks are on one place.').waitFor()
    await hand().click(left)
    await hand().click(right)
    await panel().getByLabel('Length of the line').fill('0')
    await page.keyboard.press('Enter')
    await panel().getByText('Type a length above zero').waitFor()
    await panel().getByLabel('Length of the line').fill('42\' 6"')
    await page.keyboard.press('Enter')
    await panel()
      .getByText(/^Scaled by a line of 42′ 6″\. A mark one pixel off changes every length by/)
      .waitFor()
    const [a, b] = [await onPlan(200, 390), await onPlan(600, 390)]
    // The hand clicks whole pixels of the screen, two of which can be missed on the line of 400.
    expect(Math.hypot(b.xFt - a.xFt, b.yFt - a.yFt)).toBeCloseTo(42.5, 0)
    expect(await screenFaults(page)).toEqual([])
    await page.keyboard.press('Escape')
  })

  it('lets an outline be drawn over it, with the directions and steps that drawing always has', async () => {
    const { page } = work()
    await expect.poll(async () => (await tableRows(facets())).length, soon).toBe(2)
    await page.getByRole('button', { name: /^Draw an outline/ }).click()
    const outline = page.getByRole('region', { name: 'Draw an outline' })
    for (const [x, y] of [
      [220, 170],
      [300, 170],
      [300, 220],
      [220, 220],
    ] as const) {
      await hand().click(await onPlan(x, y))
    }
    await page.getByText('Rendered: Site model, drawn by this test').waitFor()
    await outline.getByRole('button', { name: /^Close the outline/ }).click()
    const form = page.getByRole('form', { name: 'New outline' })
    await fill(form, { Name: 'Traced roof', 'Pitch of all eaves, :12': '4' })
    await form.getByRole('button', { name: /^Build the roof/ }).click()
    await page.getByRole('region', { name: 'Shape the outline Traced roof' }).waitFor()
    await page.keyboard.press('Escape')
    await expect.poll(async () => (await tableRows(facets())).length, soon).toBeGreaterThan(2)
    // Undone, so that what follows finds the roof that was drawn before.
    await page.getByRole('button', { name: /^Undo/ }).click()
    await expect.poll(async () => (await tableRows(facets())).length, soon).toBe(2)
  })

  it('marks the front door by hand, moves it by the keyboard, and names facets by it', async () => {
    const { page } = work()
    await page.getByRole('button', { name: /^Front door/ }).click()
    const door = page.getByRole('region', { name: 'Front door' })
    await hand().click(await hand().placeAt(0.5, 0.8))
    const handle = page.getByRole('button', { name: 'Front door', exact: true })
    await handle.waitFor()
    expect(await screenFaults(page)).toEqual([])
    const left = async () => (await handle.boundingBox())?.x ?? NaN
    const before = await left()
    await handle.focus()
    await page.keyboard.press('Shift+ArrowRight')
    await expect.poll(left, soon).toBeGreaterThan(before)
    await door.getByRole('button', { name: /^Done/ }).click()
    await page.getByRole('button', { name: /^Undo/ }).click()
    await page.getByRole('button', { name: /^Front door/ }).click()
    await door.getByRole('button', { name: 'Remove the mark' }).click()
    await door.getByText('Click where the front door is.').waitFor()
    await page.keyboard.press('Escape')
  })

  it('takes the image off the plan and, by undo, lays it there again; hidden, it is out of sight', async () => {
    const { page } = work()
    await page.getByRole('button', { name: /^Image/ }).click()
    await panel().getByRole('button', { name: 'Take it off the plan' }).click()
    await expect.poll(() => image().count(), soon).toBe(0)
    await page.keyboard.press('Escape')
    await page.getByRole('button', { name: 'Undo: Take the image "Site model" off the plan' }).click()
    await expect.poll(() => image().count(), soon).toBe(1)
    await page.getByRole('button', { name: /^Image/ }).click()
    await panel().getByText('Shown', { exact: true }).click()
    await expect
      .poll(() => page.getByRole('button', { name: 'Undo: Hide the image "Site model"' }).count(), soon)
      .toBe(1)
    await page.keyboard.press('Escape')
    await expect.poll(() => image().count(), soon).toBe(0)
  })
}
