import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import ICAL from 'ical.js'
import { expect, it } from 'vitest'
import { screenFaults } from '../screen-faults.ts'
import { soon } from '../soon.ts'
import { jobNumber } from './first-run.ts'
import type { AtWork } from './work.ts'

/** Calls are written down, corrected and struck out; clocks are off until asked for; the calendar reads back. */
export function keepingTheDiary(work: AtWork): void {
  const entries = () => work().page.getByRole('grid', { name: 'Diary entries, newest first' })
  const dialog = () => work().page.getByRole('dialog')

  it('takes a call by keyboard and shows what was said', async () => {
    const { page } = work()
    await page.getByRole('grid', { name: 'Jobs' }).getByRole('button', { name: jobNumber }).click()
    await page.getByRole('link', { name: /^Diary/ }).click()
    await page.getByText('Nothing is in the diary yet').waitFor()
    expect(await screenFaults(page)).toEqual([])
    await page.keyboard.press('n')
    await dialog().getByLabel('In your own words').fill('She asked when the tarp comes off.')
    await dialog().getByLabel('Who was on the line').press('Enter')
    await dialog().getByText('Say who was on the line.').waitFor()
    await dialog().getByLabel('Who was on the line').fill('Ada Owner')
    expect(await screenFaults(page)).toEqual([])
    await dialog().getByLabel('Who was on the line').press('Enter')
    await entries().getByText('Call with Ada Owner').click()
    await page.getByRole('region', { name: 'Entry D-1' }).getByText('She asked when the tarp comes off.').waitFor()
    expect(await screenFaults(page)).toEqual([])
  })

  it('keeps what stood before a correction', async () => {
    const { page } = work()
    await page.getByRole('button', { name: 'Correct…' }).click()
    await dialog().getByLabel('Who was on the line').fill('Ada M. Owner')
    await dialog().getByLabel('Why it is corrected').fill('Her name in full')
    await page.getByRole('button', { name: 'Save the correction' }).click()
    await page.getByText('Before corrections (1)').click()
    const before = page.getByRole('region', { name: 'Entry D-1' }).getByText(/corrected by .*: Her name in full\./)
    await expect.poll(() => before.count(), soon).toBe(1)
  })

  it('shows a clock only when it was asked for, with its caution', async () => {
    const { page } = work()
    await page.getByText('Statutory clocks', { exact: true }).click()
    await page.getByText(/^None\. Clocks are off until/).waitFor()
    await page.getByText('US-FL', { exact: true }).click()
    await page.getByRole('button', { name: 'Ask for Notice of a new or reopened claim' }).click()
    await dialog().getByLabel(/^Day/).fill('2024-02-29')
    await page.getByRole('button', { name: 'Show this clock' }).click()
    await page.getByText(/^If this statute applies: .* the time runs to February 28, 2025\./).waitFor()
    await page.getByText(/^General information, not legal advice\./).waitFor()
    expect(await screenFaults(page)).toEqual([])
    await page.getByText('Rules', { exact: true }).click()
    await expect.poll(() => page.getByRole('table', { name: 'Rules of the library' }).count(), soon).toBe(1)
    expect(await screenFaults(page)).toEqual([])
  })

  it('writes a calendar that another program reads', async () => {
    const { page, desktop } = work()
    await page.getByRole('button', { name: 'Calendar file…' }).click()
    const arriving = page.waitForEvent('download')
    await page.getByRole('button', { name: 'Save the file' }).click()
    const path = join(desktop, 'diary.ics')
    await (await arriving).saveAs(path)
    const events = new ICAL.Component(ICAL.parse(readFileSync(path, 'utf8'))).getAllSubcomponents('vevent')
    expect(events.map((event) => new ICAL.Event(event).startDate.toString())).toEqual(['2025-02-28'])
    // The next steps begin at the list of jobs.
    await page.getByRole('link', { name: 'Jobs', exact: true }).click()
    await page.getByRole('grid', { name: 'Jobs' }).waitFor()
  })
}
