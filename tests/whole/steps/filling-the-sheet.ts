import { expect, it } from 'vitest'
import { cardCameras } from '../../builders/camera-card.ts'
import { screenFaults } from '../screen-faults.ts'
import { choose, descriptionOf, fill } from '../fields.ts'
import { soon } from '../soon.ts'
import type { AtWork } from './work.ts'

/** What the sheet says, and so the packet. */
export const ownerName = 'Ines Marlow'
export const address = '12 Heronry Lane'

/** The job sheet is filled in, section by section. */
export function fillingTheSheet(work: AtWork): void {
  const section = (name: string) => work().page.getByRole('region', { name, exact: true })

  it('saves each section when it is left', async () => {
    const { page } = work()
    await page.getByRole('link', { name: /^Job sheet/ }).click()
    await fill(section('Property'), {
      Address: address,
      'Position, latitude and longitude': '27.1000, -82.4000',
      'Front faces, °': '90',
    })
    await fill(section('Owner'), { Name: ownerName })
    await fill(section('Insurance'), { 'Claim number': 'C-55-0192' })
    await choose(section('Roof covering'), 'Class', 'Concrete tile')
    await fill(section('Inspection'), { Inspector: 'Nora Quill' })
    await section('Inspection').getByText('Walked', { exact: true }).click()
    expect(await section('Inspection').getByRole('checkbox', { name: 'Walked' }).isChecked()).toBe(true)
    await section('Inspection').getByRole('button', { name: 'Add a day' }).click()
    await fill(section('Inspection'), { 'Day 1': '2026-03-20' })
    await fill(section('Contractor'), { Name: 'Marlin Roof Works', Licence: 'CCC-000417' })
    await section('Contractor').getByLabel('Address').focus()
    const head = page.getByRole('navigation', { name: 'Workspaces' })
    await head.getByText(ownerName).waitFor()
    await head.getByText(address).waitFor()
    expect(await screenFaults(page)).toEqual([])
  })

  it('refuses a date that the calendar does not have, at the field, and takes a right one', async () => {
    const { page } = work()
    const date = section('Loss').getByLabel('Date of loss')
    await date.fill('2026-02-30')
    await date.blur()
    await expect
      .poll(() => descriptionOf(date), soon)
      .toContain('This is not a date in the calendar. Write it as year-month-day')
    expect(await date.getAttribute('aria-invalid')).toBe('true')
    await section('Loss').getByText('Not saved: mend the marked field.').waitFor()
    expect(await screenFaults(page)).toEqual([])
    await date.fill('2026-03-14')
    await choose(section('Loss'), 'Reported cause', 'Wind')
    await section('Loss').getByRole('button', { name: 'Save' }).click()
    await section('Loss').getByRole('button', { name: 'Save' }).waitFor({ state: 'hidden' })
    await page.reload()
    await expect.poll(() => date.inputValue(), soon).toBe('2026-03-14')
  })

  it("corrects a camera's clock, and shows what that makes of a photo's time", async () => {
    const camera = section('Cameras').getByRole('group', { name: new RegExp(cardCameras.second) })
    await fill(camera, { 'Add to its clock': '7 min', 'How that is known': "Photo of a phone's clock" })
    await camera.getByLabel('How that is known').blur()
    await camera.getByText(/the camera wrote .*09:15:05, it is read as .*09:22:05/).waitFor()
    await expect.poll(() => camera.getByLabel('Add to its clock').inputValue(), soon).toBe('+7 min 0 s')
    await work()
      .page.getByText(/Last change: .*clock/i)
      .waitFor()
  })
}
