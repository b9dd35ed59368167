import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Locator } from 'playwright-core'
import { expect, it } from 'vitest'
import { fill } from '../fields.ts'
import { screenFaults } from '../screen-faults.ts'
import { soon } from '../soon.ts'
import type { AtWork } from './work.ts'

/** Why a problem may stand, as the log keeps it. */
export const reason = 'The rear slope is out of the scope of this visit.'

/** The packet is looked through, issued and taken away. */
export function issuingThePacket(work: AtWork): void {
  const preview = () => work().page.getByRole('region', { name: 'Preview' })
  const canvas = (page: number) => preview().getByRole('img', { name: new RegExp(`^Page ${page} of \\d+$`) })

  it('lists what is left to mend, and lets one thing stand with a reason', async () => {
    const { page } = work()
    await page.getByRole('link', { name: /^Packet/ }).click()
    await page.getByRole('heading', { name: /^Should be mended/ }).waitFor()
    expect(await page.getByRole('heading', { name: /^Must be mended/ }).count()).toBe(0)
    const problem = page.getByRole('listitem').filter({ hasText: 'It is not said how much of facet B was looked at.' })
    await problem.getByRole('button', { name: /^Let it stand/ }).click()
    await fill(problem, { 'Why it may stand; the log keeps the reason': reason })
    await problem.getByLabel('Why it may stand; the log keeps the reason').blur()
    await problem.getByText(`Stands: ${reason}`).waitFor()
  })

  it('shows the pages as they would be issued', async () => {
    const { page } = work()
    await canvas(1).waitFor()
    await expect.poll(() => inkOf(canvas(1)), soon).toMatchObject({ isDrawn: true })
    expect(await screenFaults(page)).toEqual([])
    const cover = await inkOf(canvas(1))
    await preview().getByRole('button', { name: 'Next page' }).click()
    await canvas(2).waitFor()
    await expect.poll(() => inkOf(canvas(2)), soon).not.toEqual(cover)
  })

  it('issues a revision, and shows how far it is', async () => {
    const { page } = work()
    await page.getByRole('button', { name: 'Issue revision 1' }).click()
    const dialog = page.getByRole('dialog', { name: 'Issue revision 1' })
    const issue = dialog.getByRole('button', { name: 'Issue revision 1' })
    // Other problems still want their reason.
    expect(await issue.isDisabled()).toBe(true)
    expect(await screenFaults(page)).toEqual([])
    await fill(dialog, { 'One reason for all that have none': 'Known, and of no weight for this claim file.' })
    await dialog.getByRole('button', { name: /^Use for \d+$/ }).click()
    await issue.click()
    const progress = page.getByRole('region', { name: 'Work in progress' })
    await progress.waitFor()
    await progress.getByText('Done.').waitFor()
    await page.getByText('Revision 1', { exact: true }).waitFor()
    await page.getByRole('link', { name: /^Packet rev\. 1/ }).waitFor()
    expect(await screenFaults(page)).toEqual([])
  })

  it('gives the packet and its evidence bundle out through the page', async () => {
    const { page, desktop } = work()
    for (const [link, name] of [
      [/^Packet, \d+ pages, /, 'packet.pdf'],
      [/^Evidence bundle, /, 'bundle.zip'],
    ] as const) {
      const coming = page.waitForEvent('download')
      await page.getByRole('link', { name: link }).click()
      const download = await coming
      expect(download.suggestedFilename()).toMatch(name === 'packet.pdf' ? /\.pdf$/ : /\.zip$/)
      await download.saveAs(join(desktop, name))
    }
    // The hash that the page shows is the hash of what came.
    const sha256 = createHash('sha256')
      .update(readFileSync(join(desktop, 'packet.pdf')))
      .digest('hex')
    await page.getByText(sha256).waitFor()
  })
}

/** How dark and how varied a drawn page is; one that is blank, or one colour all over, is not drawn. */
function inkOf(canvas: Locator): Promise<{ isDrawn: boolean; inkShare: number; tones: number }> {
  return canvas.evaluate((element) => {
    if (!(element instanceof HTMLCanvasElement)) throw new Error('This is no drawn page.')
    const copy = document.createElement('canvas')
    copy.width = element.width
    copy.height = element.height
    const context = copy.getContext('2d', { willReadFrequently: true })
    context?.drawImage(element, 0, 0)
    const pixels = context?.getImageData(0, 0, copy.width, copy.height).data ?? new Uint8ClampedArray()
    const tones = new Set<number>()
    let inked = 0
    for (let at = 0; at < pixels.length; at += 4) {
      const green = pixels[at + 1] ?? 255
      tones.add(green)
      if ((pixels[at + 3] ?? 0) > 0 && green < 128) inked += 1
    }
    const inkShare = inked / Math.max(pixels.length / 4, 1)
    return { isDrawn: inkShare > 0.002 && inkShare < 0.6 && tones.size > 20, inkShare, tones: tones.size }
  })
}
