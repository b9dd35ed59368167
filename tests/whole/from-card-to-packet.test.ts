import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import sharp from 'sharp'
import { afterAll, beforeAll, beforeEach, afterEach, describe, expect, it } from 'vitest'
import type { DescribedJobInput } from '../../app/job/described-job.ts'
import { ensureBuilt, ensurePagesBuilt } from '../built-program.ts'
import { battenbook } from '../cli/command.ts'
import { useScratch } from '../library/scratch.ts'
import { browserPath, openWindow, type Window } from './browser.ts'
import { dropOnWindow } from './drop-on-window.ts'
import { choose } from './fields.ts'
import { serveLibrary, type ServedLibrary } from './serve-library.ts'

const skipped = browserPath === null ? ' (skipped: no Chromium on this machine)' : ''
const PHOTOS = 300
/** Photos are taken in bursts as on a walk: twelve a place, four seconds apart, two minutes between places. */
const BURST = 12
const FACETS = ['A', 'B', 'C', 'D', 'E'] as const
const SLOW = { timeout: 60_000, interval: 100 } as const

/** A sheet and a plan as they stand before the walk; what the card brings is still to come. */
const job: DescribedJobInput = {
  format: 'battenbook-job',
  version: 1,
  number: 'W-300',
  sheet: {
    property: { address: '14 Example Lane', city: 'Sampleton', timeZone: 'America/New_York', frontAzimuthDeg: 180 },
    owner: { name: 'Ada Owner' },
    insurance: { insurer: 'Example Mutual', policyNumber: 'PN-1', claimNumber: 'CN-1' },
    loss: { date: '2026-03-10', cause: 'wind' },
    inspection: { dates: ['2026-03-20'], method: ['walked'], inspector: 'Ira Inspector', inspectorLicence: 'RC-000' },
    covering: { class: 'concrete-tile', profile: 'medium profile' },
    contractor: { name: 'Example Roofing', licence: 'CC-000' },
  },
  facets: FACETS.map((letter, k) => ({
    letter,
    outline: [
      { xFt: k * 40, yFt: 0 },
      { xFt: k * 40 + 30, yFt: 0 },
      { xFt: k * 40 + 30, yFt: 20 },
      { xFt: k * 40, yFt: 20 },
    ],
    pitchRise: 5,
    downslopeAzimuthDeg: 180,
    inspected: { percent: 100, note: '' },
  })),
}

async function writeCard(folder: string): Promise<void> {
  mkdirSync(folder, { recursive: true })
  for (let k = 0; k < PHOTOS; k += 1) {
    const second = Math.floor(k / BURST) * 165 + (k % BURST) * 4
    const [hour, minute] = [9 + Math.floor(second / 3600), Math.floor(second / 60) % 60]
    const clock = [hour, minute, second % 60].map((part) => String(part).padStart(2, '0')).join(':')
    const picture = sharp({
      create: { width: 160, height: 120, channels: 3, background: { r: (k * 7) % 256, g: (k * 31) % 256, b: k % 256 } },
    })
    const exif = {
      IFD0: { Make: 'Example', Model: 'One' },
      IFD2: { DateTimeOriginal: `2026:03:20 ${clock}`, OffsetTimeOriginal: '-04:00' },
    }
    const name = `ONE_${String(k + 1).padStart(4, '0')}.JPG`
    writeFileSync(join(folder, name), await picture.withExif(exif).jpeg({ quality: 70 }).toBuffer())
  }
}

describe.skipIf(browserPath === null)(`300 photos from the card to the packet${skipped}`, { timeout: 600_000 }, () => {
  const scratch = useScratch()
  let served: ServedLibrary | undefined
  let window: Window | undefined
  let card = ''
  /** Every key press and every click counts as one action, and so does every letter typed into a field. */
  let actions = 0

  beforeAll(async () => {
    await ensureBuilt()
    await ensurePagesBuilt()
    card = scratch('card')
    await writeCard(card)
    const folder = scratch('described')
    mkdirSync(join(folder, 'photos'))
    writeFileSync(join(folder, 'job.json'), JSON.stringify(job))
    const library = scratch('library')
    await battenbook('new', library, '--from', folder)
    served = await serveLibrary(library)
    window = await openWindow(served.address)
    await window.page.goto(served.entrance)
  }, 240_000)

  afterAll(async () => {
    await window?.close()
    await served?.stop()
  })

  // Each step rests on the ones before it: after one that failed, the others would only wait in vain.
  let hasFailed = false
  beforeEach((step) => step.skip(hasFailed, 'a step before it failed'))
  afterEach(({ task }) => {
    hasFailed ||= task.result?.state === 'fail'
  })

  const page = (): Page => window?.page ?? expect.fail('the window is open')
  const bar = () => page().getByRole('region', { name: 'Tags of the selected photos' })
  async function press(keys: string): Promise<void> {
    actions += 1
    await page().keyboard.press(keys)
  }
  /** Enters a step by its key and types the letters that stand beside a choice. */
  async function tag(stepKey: string, choice: string): Promise<void> {
    await press(stepKey)
    const letters = bar()
      .getByRole('listitem')
      .filter({ hasText: new RegExp(`${choice}$`) })
      .locator('kbd')
    await letters.first().waitFor()
    for (const letter of await letters.allInnerTexts()) await press(letter.toLowerCase())
    await bar().getByRole('listitem').first().waitFor({ state: 'hidden' })
  }

  it('are taken in by one drop', async () => {
    await page().getByRole('grid', { name: 'Jobs' }).getByRole('button', { name: 'W-300' }).click()
    // Files can be dropped once the job is there.
    await page().getByRole('heading', { name: 'W-300', level: 1 }).waitFor()
    actions += 2
    await dropOnWindow(page(), [card])
    await page()
      .getByRole('link', { name: /^Photos/ })
      .click()
    actions += 1
    await page().getByText('300 photos taken in').waitFor({ timeout: SLOW.timeout })
    await expect.poll(() => page().getByRole('button', { name: '300 untagged' }).count(), SLOW).toBe(1)
  })

  it('are tagged burst by burst from the keyboard alone, each burst a finding', async () => {
    // Groups end at a pause of a minute: two presses to group by pauses, four to say so.
    await choose(page().locator('body'), 'Grouping', 'Group by pause')
    await page()
      .getByLabel(/^Pause that parts groups/)
      .fill('60')
    await press('Enter')
    actions += 5
    await page().getByRole('grid', { name: 'Photos' }).focus()
    const bursts = PHOTOS / BURST
    const what = [
      ['Field tile', 'Crack to the fastener'],
      ['Ridge tile', 'Cap loose'],
    ] as const
    for (let burst = 0; burst < bursts; burst += 1) {
      const [component, condition] = what[burst % what.length] ?? what[0]
      await press('Shift+U')
      await bar().getByText(`${BURST} photos`, { exact: true }).waitFor()
      await tag('f', FACETS[Math.floor((burst * FACETS.length) / bursts)] ?? 'A')
      await tag('c', component)
      await tag('d', condition)
      await press('Shift+R')
      // Without a pause, as a quick hand does it: the desk has not yet answered for the roles.
      await press('Shift+N')
      await expect
        .poll(
          () =>
            page()
              .getByRole('link', { name: /^Findings/ })
              .innerText(),
          SLOW,
        )
        .toContain(`${burst + 1}`)
    }
    await page().getByText('none untagged').waitFor()
    await page().getByText('lacking facet 0, component 0, condition 0, role 0').waitFor()
  })

  it('issue as a packet, and the whole takes no more than two actions a photo', async () => {
    await page()
      .getByRole('link', { name: /^Packet/ })
      .click()
    await page().getByRole('button', { name: 'Issue revision 1' }).click({ timeout: SLOW.timeout })
    const dialog = page().getByRole('dialog', { name: 'Issue revision 1' })
    const why = 'Known, and of no weight.'
    await dialog.getByLabel('One reason for all that have none').fill(why)
    await dialog.getByRole('button', { name: /^Use for \d+$/ }).click()
    await dialog.getByRole('button', { name: 'Issue revision 1' }).click()
    actions += 5 + why.length
    await page()
      .getByRole('link', { name: /^Packet rev\. 1/ })
      .waitFor({ timeout: SLOW.timeout })
    const each = actions / PHOTOS
    console.log(`${actions} actions for ${PHOTOS} photos, ${each.toFixed(2)} a photo (bar 2, aim 1)`)
    expect(each).toBeLessThanOrEqual(2)
    expect(window?.complaints).toEqual([])
  })
})
