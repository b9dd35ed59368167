import type { Page } from 'playwright-core'

/** Drops files or folders of this machine on the middle of the window, as the browser does when a person lets go of them. */
export async function dropOnWindow(page: Page, paths: readonly string[]): Promise<void> {
  const session = await page.context().newCDPSession(page)
  const data = { items: [], files: [...paths], dragOperationsMask: 1 }
  for (const type of ['dragEnter', 'dragOver', 'drop'] as const)
    await session.send('Input.dispatchDragEvent', { type, x: 640, y: 400, data })
  await session.detach()
}
