import { expect, it } from 'vitest'
import { screenFaults } from '../screen-faults.ts'
import { descriptionOf, fill } from '../fields.ts'
import { soon } from '../soon.ts'
import type { AtWork } from './work.ts'

/** The number of the job that the work is about. */
export const jobNumber = '2026-0417'
const otherNumber = '2026-0416'

/** An empty library, and the first job in it. */
export function firstRun(work: AtWork): void {
  it('teaches how to start, and offers a sample job', async () => {
    const { page, served } = work()
    await page.goto(served.entrance)
    await page.getByRole('heading', { name: 'No jobs yet' }).waitFor()
    await page.getByText(/^Drop a camera card's folder or its photos anywhere/).waitFor()
    await page.getByRole('button', { name: 'Open a sample job' }).waitFor()
    // The way in leaves no secret in the address.
    expect(page.url()).toBe(served.address)
    expect(await screenFaults(page)).toEqual([])
  })

  it('asks once whose name the log signs', async () => {
    const { page } = work()
    await page.getByRole('group', { name: 'Your name' }).getByRole('button', { name: 'Change' }).click()
    const question = page.getByRole('dialog', { name: 'Who works here?' })
    await question.getByLabel('Your name').fill('Nora Quill')
    expect(await screenFaults(page)).toEqual([])
    await page.keyboard.press('Enter')
    await page.getByRole('button', { name: 'Signing as Nora Quill. Change the name' }).waitFor()
  })

  it('starts a job with a number of its own', async () => {
    const { page } = work()
    await page.getByRole('button', { name: 'New job' }).click()
    await fill(page.getByRole('dialog', { name: 'New job' }), { 'Job number': otherNumber })
    await page.keyboard.press('Enter')
    await page.getByRole('heading', { name: otherNumber, level: 1 }).waitFor()
    expect(await page.title()).toBe(`${otherNumber}, job sheet – Battenbook`)
  })

  it('says at the field that a number is in use or is none, and takes another one', async () => {
    const { page } = work()
    await page.getByRole('link', { name: 'Jobs' }).click()
    await page.getByRole('grid', { name: 'Jobs' }).getByRole('button', { name: otherNumber }).waitFor()
    await page.getByRole('button', { name: 'New job' }).click()
    const number = page.getByRole('dialog', { name: 'New job' }).getByLabel('Job number')
    for (const [typed, sentence] of [
      [otherNumber, `${otherNumber} is in use`],
      ['../2', 'A job number starts with a letter or digit'],
    ] as const) {
      await number.fill(typed)
      await page.keyboard.press('Enter')
      await expect.poll(() => descriptionOf(number), soon).toContain(sentence)
      expect(await number.getAttribute('aria-invalid')).toBe('true')
    }
    expect(await screenFaults(page)).toEqual([])
    await number.fill(jobNumber)
    await page.keyboard.press('Enter')
    await page.getByRole('heading', { name: jobNumber, level: 1 }).waitFor()
  })
}
