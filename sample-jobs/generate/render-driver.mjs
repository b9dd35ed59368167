/** Serves the scene to a headless browser on loopback and collects the pixels of each picture. */
import { createServer } from 'node:http'
import { readFile } from 'node:fs/promises'
import { fileURLToPath } from 'node:url'
import { join } from 'node:path'
import { chromium } from 'playwright-core'

const HERE = fileURLToPath(new URL('.', import.meta.url))
const THREE_BUILD = fileURLToPath(new URL('../../node_modules/three/build/', import.meta.url))
const PAGE = `<!doctype html><script type="importmap">{"imports":{"three":"/three/three.module.js"}}</script><script type="module" src="/stage.mjs"></script>`

/** @returns {Promise<{ setUp: (given: unknown) => Promise<void>, take: (shot: any) => Promise<Buffer>, close: () => Promise<void> }>} */
export async function openStage() {
  /** @type {Buffer} */
  let pixels = Buffer.alloc(0)
  const server = createServer(async (request, response) => {
    const path = (request.url ?? '/').split('?')[0]
    if (path === '/pixels') {
      const parts = []
      for await (const part of request) parts.push(part)
      pixels = Buffer.concat(parts)
      response.end()
      return
    }
    if (path === '/') return void response.setHeader('content-type', 'text/html').end(PAGE)
    const name = path.replace(/^\/(three\/)?/, '')
    if (!/^[\w.-]+$/.test(name)) return void response.writeHead(404).end()
    try {
      const body = await readFile(join(path.startsWith('/three/') ? THREE_BUILD : HERE, name))
      response.setHeader('content-type', 'text/javascript').end(body)
    } catch {
      response.writeHead(404).end()
    }
  })
  await new Promise((resolve) => server.listen(0, '127.0.0.1', () => resolve(undefined)))
  const address = server.address()
  if (address === null || typeof address === 'string')
    throw new Error('The scene could not be served on this computer.')
  const browser = await chromium.launch({
    executablePath: process.env.CHROMIUM_PATH ?? '/usr/bin/chromium',
    args: [
      '--no-sandbox',
      '--enable-unsafe-swiftshader',
      '--use-gl=angle',
      '--use-angle=swiftshader',
      '--ignore-gpu-blocklist',
      '--disable-gpu-watchdog',
    ],
  })
  const page = await browser.newPage()
  page.setDefaultTimeout(900_000)
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') console.error(message.text())
  })
  page.on('pageerror', (error) => console.error(error))
  await page.goto(`http://127.0.0.1:${address.port}/`)
  await page.waitForFunction(() => 'take' in window)
  return {
    setUp: (given) => page.evaluate((g) => /** @type {any} */ (window).setUp(g), given),
    take: async (shot) => {
      await page.evaluate((s) => /** @type {any} */ (window).take(s), shot)
      return pixels
    },
    close: async () => {
      await browser.close()
      server.close()
    },
  }
}
