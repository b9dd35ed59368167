import { cpSync, existsSync, mkdirSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { expect, it } from 'vitest'
import { dropOnWindow } from '../drop-on-window.ts'
import { screenFaults } from '../screen-faults.ts'
import { soon } from '../soon.ts'
import { jobNumber } from './first-run.ts'
import type { AtWork } from './work.ts'

const SAMPLES = fileURLToPath(new URL('../../../../shared/samples/', import.meta.url))
const FILES = ['photos-more/exiv2__Stonehenge.heic', 'videos/mei__with-gps.mov', 'subtitles/subtitles-php__srt.srt']
const isHere = FILES.every((name) => existsSync(SAMPLES + name))
const skipped = isHere ? '' : ' (skipped: the sample files are not here)'

/** A phone's picture and video come in; a frame of the video becomes a photo. */
export function workingWithVideo(work: AtWork): void {
  it.skipIf(!isHere)(`takes a phone's HEIC, a video and subtitles in, each as what it is${skipped}`, async () => {
    const { page, desktop } = work()
    const phone = join(desktop, 'phone')
    mkdirSync(phone, { recursive: true })
    for (const name of FILES) cpSync(SAMPLES + name, join(phone, name.split('/')[1] ?? ''))
    await page.getByRole('grid', { name: 'Jobs' }).getByRole('button', { name: jobNumber }).click()
    const progress = page.getByRole('region', { name: 'Work in progress' })
    await progress
      .or(page.getByRole('navigation', { name: 'Workspaces' }))
      .first()
      .waitFor()
    await dropOnWindow(page, [phone])
    await progress.getByText('1 photo and 1 video taken in, 1 other file kept').waitFor()
    await progress.getByRole('button', { name: 'Put this away' }).click()
    await page.getByRole('link', { name: /^Photos/ }).click()
    await page.getByPlaceholder('Find by caption, number, file').fill('Stonehenge')
    const tiles = page.getByRole('grid', { name: 'Photos' }).getByRole('gridcell')
    await expect.poll(() => tiles.getByRole('img').count(), soon).toBe(1)
    const thumb = tiles.getByRole('img').first()
    await expect.poll(() => thumb.evaluate((img: HTMLImageElement) => img.naturalWidth), soon).toBeGreaterThan(100)
    await page.getByPlaceholder('Find by caption, number, file').fill('')
  })

  it.skipIf(!isHere)(`plays the video, steps to a frame and stores it as a photo${skipped}`, async () => {
    const { page } = work()
    await page.getByRole('link', { name: /^Video/ }).click()
    const player = page.getByRole('region', { name: 'Player, V-001' })
    const still = player.getByRole('button', { name: /^Take still/ })
    await expect.poll(() => still.isEnabled(), soon).toBe(true)
    await player.getByText('11:25:40 +03:00 (offset written by the camera)').waitFor()
    await player.getByRole('button', { name: /^Play/ }).click()
    await expect
      .poll(() => player.locator('video').evaluate((video: HTMLVideoElement) => video.currentTime), soon)
      .toBeGreaterThan(0.3)
    await player.getByRole('button', { name: /^Pause/ }).click()
    const moment = player.getByRole('slider', { name: 'Moment of the video' })
    await player.getByRole('button', { name: 'One frame on' }).click()
    await expect.poll(() => moment.getAttribute('aria-valuetext'), soon).toMatch(/^00:0[0-4]\.\d{3}$/)
    expect(await screenFaults(page)).toEqual([])
    await still.click()
    await page.getByText(/P-\d{3} stored: still from V-001 at 00:0\d\.\d{3}\./).waitFor()
  })

  it.skipIf(!isHere)(
    `shows the still as a frame of that video, upright, and the kept subtitles by name${skipped}`,
    async () => {
      const { page } = work()
      await page.getByRole('grid', { name: 'Videos' }).getByText('V-001').click()
      const details = page.getByRole('complementary', { name: 'Details' })
      await details.getByRole('region', { name: 'Stills' }).getByRole('button').click()
      await details.getByText(/^still from V-001 at 00:0\d\.\d{3}, stored here/).waitFor()
      const picture = details.getByRole('img').first()
      await expect
        .poll(() => picture.evaluate((img: HTMLImageElement) => img.naturalHeight > img.naturalWidth), soon)
        .toBe(true)
      expect(await screenFaults(page)).toEqual([])
      await page.getByRole('link', { name: /^Job sheet/ }).click()
      const files = page.getByRole('region', { name: 'Other files' })
      await files.getByRole('textbox', { name: 'What subtitles-php__srt.srt is' }).fill('What the inspector said')
      await page.keyboard.press('Enter')
      await files.getByText('Subtitles: subtitle file (SRT)').waitFor()
      expect(await screenFaults(page)).toEqual([])
    },
  )
}
