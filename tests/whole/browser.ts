import { existsSync } from 'node:fs'
import { chromium, type Browser, type Page } from 'playwright-core'
import { patienceMs } from './soon.ts'

const paths = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome']

/** Where this machine's browser is; null where there is none, and the test is skipped by name. */
export const browserPath = paths.find((path) => existsSync(path)) ?? null

/** A browser window, and all that it complained of. */
export interface Window {
  readonly page: Page
  /** Console errors, uncaught errors, broken content policy, and requests that failed or went elsewhere. */
  readonly complaints: string[]
  readonly close: () => Promise<void>
}

/** Opens a window of the smallest size that the program is made for, on a machine in New York's time. */
export async function openWindow(address: string): Promise<Window> {
  const browser = await chromium.launch({
    ...(browserPath === null ? {} : { executablePath: browserPath }),
    args: ['--no-sandbox'],
  })
  const page = await newPage(browser)
  page.setDefaultTimeout(patienceMs)
  return { page, complaints: complaintsOf(page, address), close: () => browser.close() }
}

async function newPage(browser: Browser): Promise<Page> {
  const context = await browser.newContext({
    viewport: { width: 1280, height: 800 },
    reducedMotion: 'reduce',
    colorScheme: 'light',
    timezoneId: 'America/New_York',
    acceptDownloads: true,
  })
  return context.newPage()
}

function complaintsOf(page: Page, address: string): string[] {
  const complaints: string[] = []
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') complaints.push(`console: ${message.text()}`)
  })
  page.on('pageerror', (error) => complaints.push(`uncaught: ${error.message}`))
  page.on('response', (response) => {
    if (response.status() >= 400) complaints.push(`answer: ${response.status()} for ${response.url()}`)
  })
  page.on('request', (request) => {
    const isOwn = request.url().startsWith(address) || /^(data|blob):/.test(request.url())
    if (!isOwn) complaints.push(`request: ${request.url()}`)
  })
  return complaints
}
