import { AxeBuilder } from '@axe-core/playwright'
import type { Page } from 'playwright-core'

/** WCAG 2.0 to 2.2, levels A and AA, as axe-core names them. */
const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']

/** What is wrong with the screen as it stands: what axe-core finds in both themes, and a desk that slips out of its window. */
export async function screenFaults(page: Page): Promise<readonly string[]> {
  const faults: string[] = []
  for (const colorScheme of ['dark', 'light'] as const) {
    await page.emulateMedia({ colorScheme })
    // No frames are used, so that one pass over the page sees all of it.
    const { violations } = await new AxeBuilder({ page }).setLegacyMode(true).withTags(tags).analyze()
    for (const { id, nodes } of violations)
      for (const { target, failureSummary } of nodes)
        faults.push(`${colorScheme}, ${id}: ${target.join(' ')}: ${failureSummary?.replaceAll('\n', ' ')}`)
  }
  const { over, slipped } = await page.evaluate(() => {
    const { scrollHeight, scrollWidth } = document.documentElement
    return {
      over: Math.max(scrollHeight - window.innerHeight, scrollWidth - window.innerWidth),
      slipped: Math.max(window.scrollX, window.scrollY),
    }
  })
  if (over > 0 || slipped > 0) faults.push(`the desk is ${over} px larger than its window and slipped by ${slipped} px`)
  return faults
}
