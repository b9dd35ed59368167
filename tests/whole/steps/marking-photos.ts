import type { Locator } from 'playwright-core'
import { expect, it } from 'vitest'
import { screenFaults } from '../screen-faults.ts'
import { soon } from '../soon.ts'
import type { AtWork } from './work.ts'

/** Words drawn over a photo, as the packet prints them. */
export const markedWords = 'Broken along the nose'

/** A photo that a camera stored lying on its side is drawn over, with the pointer and from the keyboard. */
export function markingPhotos(work: AtWork): void {
  const press = (keys: string) => work().page.keyboard.press(keys)
  const canvas = () => work().page.getByRole('group', { name: 'Marks on P-003' })
  const mark = (name: string | RegExp) => canvas().getByRole('button', { name })

  /** Drags over the picture between places given as parts of its width and height. */
  async function drag(...places: readonly (readonly [number, number])[]): Promise<void> {
    const { page } = work()
    const box = await canvas().boundingBox()
    if (box === null) throw new Error('The picture is not on the screen.')
    const [first, ...others] = places.map(([x, y]) => [box.x + box.width * x, box.y + box.height * y] as const)
    await page.mouse.move(...(first ?? [0, 0]))
    await page.mouse.down()
    for (const [x, y] of others) await page.mouse.move(x, y, { steps: 6 })
    await page.mouse.up()
  }
  async function withTool(key: string, ...places: readonly (readonly [number, number])[]): Promise<void> {
    await press(key)
    await drag(...places)
  }

  it('opens the photo upright and has its tools under it', async () => {
    const { page } = work()
    await page.getByRole('gridcell').filter({ hasText: 'P-003' }).dblclick()
    await page.getByRole('region', { name: 'Photo P-003, large' }).waitFor()
    await press('m')
    await canvas().waitFor()
    const box = await canvas().boundingBox()
    expect((box?.height ?? 0) / (box?.width ?? 1)).toBeCloseTo(800 / 600, 1)
  })

  it('draws with the pointer: arrow, ellipse and freehand, in colours chosen by key', async () => {
    await drag([0.2, 0.2], [0.5, 0.4])
    await mark('Arrow').waitFor()
    await press('Escape')
    await press('c')
    await press('e')
    await drag([0.5, 0.5], [0.8, 0.7])
    await mark('Ellipse').waitFor()
    await withTool('d', [0.1, 0.8], [0.2, 0.75], [0.3, 0.85])
    await mark('Freehand line').waitFor()
    expect(await screenFaults(work().page)).toEqual([])
  })

  it('measures by a known length in the picture', async () => {
    const { page } = work()
    await withTool('l', [0.1, 0.3], [0.4, 0.3])
    await page.getByText('Draw a known length first').waitFor()
    await withTool('k', [0.1, 0.1], [0.7, 0.1])
    await page.getByLabel('Its length').fill('12')
    await page.getByLabel('What has this length').fill('steel rule')
    await press('Enter')
    await mark('Scale line').waitFor()
    // Half as long as the known twelve inches.
    await withTool('l', [0.1, 0.6], [0.4, 0.6])
    await expect.poll(() => canvas().locator('text').allTextContents(), soon).toContain('6.0 in (S1)')
  })

  it('writes words, which are found by the search', async () => {
    const { page } = work()
    await withTool('t', [0.1, 0.95], [0.1, 0.95])
    await page.getByLabel('Words').fill(markedWords)
    await press('Enter')
    await mark(`Text “${markedWords}”`).waitFor()
    await press('Control+k')
    await page.getByRole('dialog', { name: 'Search this job' }).getByRole('searchbox').fill('along nose')
    await expect.poll(() => page.getByRole('option').filter({ hasText: 'P-003' }).count(), soon).toBe(1)
    await press('Escape')
  })

  it('does the same from the keyboard alone: places, moves, restacks, removes, and undoes', async () => {
    const { page } = work()
    await page
      .getByRole('button', { name: /^Arrow/ })
      .first()
      .focus()
    await press('Escape')
    await press('Escape')
    await press('a')
    await page.getByRole('region', { name: 'Photo P-003, large' }).focus()
    await press('Enter')
    await expect.poll(() => mark('Arrow').count(), soon).toBe(2)
    const arrow = mark('Arrow').last()
    const before = await placeOf(arrow)
    await press('Shift+ArrowRight')
    await expect.poll(async () => (await placeOf(arrow)).x - before.x, soon).toBeGreaterThan(4)
    await press('PageDown')
    await page.getByText('Reorder marks on photo P-003').waitFor()
    await press('Delete')
    await expect.poll(() => mark('Arrow').count(), soon).toBe(1)
    await press('Control+z')
    await expect.poll(() => mark('Arrow').count(), soon).toBe(2)
    await press('Control+Shift+z')
    await expect.poll(() => mark('Arrow').count(), soon).toBe(1)
  })

  it('hides an area in the picture as it is given out, and takes that back', async () => {
    const { page } = work()
    await withTool('o', [0.3, 0.3], [0.6, 0.5])
    await mark('Obscured area').waitFor()
    await press('m')
    const shown = page.getByRole('region', { name: 'Photo P-003, large' }).getByRole('img', { name: /^P-003/ })
    await expect.poll(() => tonesInArea(shown), soon).toBeLessThanOrEqual(16 * 3)
    await press('Control+z')
    await expect.poll(() => shown.evaluate((element) => element.tagName), soon).toBe('IMG')
  })

  it('shows the marks on the contact sheet', async () => {
    const { page } = work()
    await press('Escape')
    const tile = page.getByRole('grid', { name: 'Photos' }).getByRole('gridcell').filter({ hasText: 'P-003' })
    await expect.poll(() => tile.locator('svg text').allTextContents(), soon).toContain(markedWords)
  })
}

async function placeOf(element: Locator): Promise<{ x: number; y: number }> {
  const box = await element.boundingBox()
  if (box === null) throw new Error('The mark is not on the screen.')
  return box
}

/** How many different colours a painted picture has inside the hidden area, its rim left aside. */
function tonesInArea(picture: Locator): Promise<number> {
  return picture.evaluate((element) => {
    if (!(element instanceof HTMLCanvasElement) || element.width < 10) return Infinity
    const [x, y] = [Math.round(element.width * 0.32), Math.round(element.height * 0.32)]
    const [width, height] = [Math.round(element.width * 0.26), Math.round(element.height * 0.16)]
    const pixels = element.getContext('2d')?.getImageData(x, y, width, height).data ?? new Uint8ClampedArray()
    const tones = new Set<number>()
    for (let at = 0; at < pixels.length; at += 4) {
      const [r = 0, g = 0, b = 0] = pixels.subarray(at, at + 3)
      tones.add((r << 16) | (g << 8) | b)
    }
    return tones.size
  })
}
