// Frames while a corner of a roof of 60 facets is dragged, in headless Chromium over the built program.
//   npm run build && npm run bench:plan [-- --edges 76] [-- --seconds 4] [-- --profile FILE] [-- --picture FILE]
import { spawn } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { cpus, tmpdir } from 'node:os'
import { join } from 'node:path'
import { createInterface } from 'node:readline'
import { parseArgs } from 'node:util'
import { chromium } from 'playwright-core'
import { houseOfWings, numbersFrom } from './house-of-wings.mjs'

const { values } = parseArgs({
  options: {
    edges: { type: 'string', default: '76' },
    seconds: { type: 'string', default: '4' },
    browser: { type: 'string', default: '/usr/bin/chromium' },
    profile: { type: 'string' },
    picture: { type: 'string' },
  },
})

const work = mkdtempSync(join(tmpdir(), 'battenbook-bench-'))
const served = await serve(join(work, 'library'))
const browser = await chromium.launch({ executablePath: values.browser, args: ['--no-sandbox'] })
try {
  const page = await browser.newPage({ viewport: { width: 1600, height: 1000 } })
  await page.goto(served.entrance)
  const jobId = await drawHouse(page)
  await page.goto(`${served.address.replace(/\/$/, '')}/job/${jobId}/plan`)
  await page.getByRole('button', { name: 'Shape the outline' }).click()
  const facets = await page
    .locator('[aria-label="Roof plan"] svg > g')
    .first()
    .locator('g')
    .first()
    .locator('path')
    .count()
  const idle = await framesWhile(page, () => page.waitForTimeout(1000))
  const profiler = values.profile === undefined ? null : await page.context().newCDPSession(page)
  await profiler?.send('Profiler.enable')
  await profiler?.send('Profiler.start')
  const dragged = await framesWhile(page, () => drag(page))
  const profiled = await profiler?.send('Profiler.stop')
  if (profiled !== undefined) writeFileSync(values.profile, JSON.stringify(profiled.profile))
  console.log(`${cpus().length} x ${cpus()[0]?.model ?? 'unknown processor'}; Node ${process.version}`)
  console.table([
    { while: 'nothing happens', ...summed(idle) },
    { while: `a corner of a roof of ${facets} facets is dragged`, ...summed(dragged) },
  ])
  if (summed(dragged)['roofs drawn'] === 0) throw new Error('The roof did not follow the hand.')
} finally {
  await browser.close()
  served.child.kill('SIGTERM')
  await served.ended
  rmSync(work, { recursive: true, force: true })
}

/** Starts the program over a library and waits until it serves. */
async function serve(folder) {
  const child = spawn(process.execPath, ['main/cli/battenbook.js', 'serve', folder, '--json'], {
    stdio: ['ignore', 'pipe', 'inherit'],
  })
  const ended = new Promise((resolve) => child.once('exit', resolve))
  const line = await new Promise((resolve) => createInterface(child.stdout).once('line', resolve))
  return { child, ended, ...JSON.parse(line) }
}

/** A job with one outline; every edge an eave, so that each bears a facet. */
async function drawHouse(page) {
  const corners = houseOfWings(Number(values.edges), numbersFrom(60))
  const outline = {
    name: 'Main roof',
    outer: { corners, edges: corners.map((_, i) => ({ id: `e${i}`, kind: 'eave', pitchRise: 6 })) },
  }
  const call = (name, input) =>
    page.evaluate(
      async ([to, given]) => {
        const headers = { 'content-type': 'application/json' }
        const answer = await fetch(`/call/${to}`, { method: 'POST', headers, body: JSON.stringify(given) })
        return answer.json()
      },
      [name, input],
    )
  const made = await call('jobs.new', { number: 'B-1' })
  const { jobId } = made.value
  const saved = await call('outlines.save', { jobId, id: null, outline })
  if (!saved.ok) throw new Error(JSON.stringify(saved))
  return jobId
}

/** Milliseconds between frames while something goes on, and whether the roof was drawn anew. */
async function framesWhile(page, what) {
  await page.evaluate(() => {
    const frames = []
    const roof = () => document.querySelector('[aria-label="Roof plan"] svg > g')?.innerHTML
    let before = performance.now()
    let shown = roof()
    const next = (now) => {
      const drawn = roof()
      frames.push({ ms: now - before, isNew: drawn !== shown })
      before = now
      shown = drawn
      if (globalThis.benchFrames === frames) requestAnimationFrame(next)
    }
    globalThis.benchFrames = frames
    requestAnimationFrame(next)
  })
  await what()
  return page.evaluate(() => {
    const frames = globalThis.benchFrames
    globalThis.benchFrames = null
    return frames.slice(2)
  })
}

/** Takes the second corner round in circles, a move about every 8 ms. */
async function drag(page) {
  const grip = page.getByRole('button', { name: 'Corner 3 of Main roof', exact: true })
  const box = await grip.boundingBox()
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]
  await page.mouse.move(x, y)
  // With Alt the corner does not hold on to half feet: every move is another roof.
  await page.keyboard.down('Alt')
  await page.mouse.down()
  const moves = []
  const start = performance.now()
  for (let at = 0; at < Number(values.seconds) * 1000; at = performance.now() - start) {
    const turn = (at / 1000) * 2 * Math.PI
    // Not waited for: a hand does not wait for the screen either.
    moves.push(page.mouse.move(x + 12 * Math.sin(turn), y + 10 * (1 - Math.cos(turn))))
    await new Promise((resolve) => setTimeout(resolve, 8))
  }
  await Promise.all(moves)
  if (values.picture !== undefined) await page.screenshot({ path: values.picture })
  await page.mouse.up()
  await page.keyboard.up('Alt')
}

function summed(frames) {
  const ms = frames.map((frame) => frame.ms)
  const sorted = ms.toSorted((a, b) => a - b)
  const at = (share) => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))]?.toFixed(1)
  return {
    frames: frames.length,
    'p50, ms': at(0.5),
    'p95, ms': at(0.95),
    'worst, ms': at(1),
    'over 17 ms': ms.filter((one) => one > 17).length,
    'over 33 ms': ms.filter((one) => one > 33).length,
    'roofs drawn': frames.filter(({ isNew }) => isNew).length,
  }
}
