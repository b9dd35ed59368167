// The assessment after an edit on a roof of about 60 facets with 400 findings: worked out by itself, and from the key to the screen.
//   npm run build && npm run bench:assessment [-- --edges 76] [-- --findings 400] [-- --rounds 10] [-- --picture FILE]
import { spawn } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { cpus, tmpdir } from 'node:os'
import { join } from 'node:path'
import { createInterface } from 'node:readline'
import { parseArgs } from 'node:util'
import { chromium } from 'playwright-core'
import { runnerImport } from 'vite'
import { houseOfWings, numbersFrom } from './house-of-wings.mjs'

const { values } = parseArgs({
  options: {
    edges: { type: 'string', default: '76' },
    findings: { type: 'string', default: '400' },
    rounds: { type: 'string', default: '10' },
    browser: { type: 'string', default: '/usr/bin/chromium' },
    picture: { type: 'string' },
  },
})

const rounds = Number(values.rounds)
const work = mkdtempSync(join(tmpdir(), 'battenbook-bench-'))
const served = await serve(join(work, 'library'))
const browser = await chromium.launch({ executablePath: values.browser, args: ['--no-sandbox'] })
try {
  const page = await browser.newPage({ viewport: { width: 1600, height: 1000 } })
  await page.goto(served.entrance)
  const job = await makeJob(page)
  const rows = [...(await measurePure(job)), ...(await measureScreen(page, job))]
  console.log(
    `${job.facets.length} facets, ${job.findings.length} findings; ${cpus().length} x ${cpus()[0]?.model ?? 'unknown processor'}; Node ${process.version}, Chromium ${browser.version()}`,
  )
  console.table(rows)
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

function callFrom(page) {
  return async (name, input) => {
    const reply = await page.evaluate(
      async ([to, given]) => {
        const headers = { 'content-type': 'application/json' }
        const answer = await fetch(`/call/${to}`, { method: 'POST', headers, body: JSON.stringify(given) })
        return answer.json()
      },
      [name, input],
    )
    if (!reply.ok) throw new Error(`${name}: ${JSON.stringify(reply.error)}`)
    return reply.value
  }
}

/** A house of wings, all of it looked at, with pinned and counted findings spread over its facets. */
async function makeJob(page) {
  const call = callFrom(page)
  const random = numbersFrom(60)
  const corners = houseOfWings(Number(values.edges), random)
  const { jobId } = await call('jobs.new', { number: 'B-1' })
  const outline = {
    name: 'Main roof',
    outer: { corners, edges: corners.map((_, i) => ({ id: `e${i}`, kind: 'eave', pitchRise: 6 })) },
  }
  await call('outlines.save', { jobId, id: null, outline })
  const { job, facets } = await call('jobs.open', { jobId })
  const { sheet } = job
  await call('sheet.save', {
    jobId,
    sheet: {
      ...sheet,
      property: { ...sheet.property, windEdition: '7-16', meanRoofHeightFt: 14 },
      covering: { ...sheet.covering, class: 'concrete-tile', exposureIn: 13.5, coverWidthIn: 12 },
    },
  })
  for (const { id } of facets) {
    await call('assessment.state-inspected', { jobId, facetId: id, inspected: { percent: 90, note: '' } })
  }
  for (let i = 0; i < Number(values.findings); i++) {
    const facet = facets[Math.floor(random() * facets.length)]
    await call('findings.save', { jobId, id: null, finding: findingOn(facet, random) })
  }
  await call('assessment.save', { jobId, set: { wind: { fromDeg: 200, source: 'Bench.' } } })
  return call('jobs.open', { jobId })
}

function findingOn(facet, random) {
  const weights = facet.outline.map(() => random())
  const whole = weights.reduce((sum, weight) => sum + weight, 0)
  const at = (axis) => facet.outline.reduce((sum, corner, i) => sum + (corner[axis] * weights[i]) / whole, 0)
  return {
    kind: 'damage',
    component: 'field-tile',
    condition: random() < 0.5 ? 'slipped' : 'missing',
    extent: random() < 0.8 ? { kind: 'exactly', count: 1 + Math.floor(random() * 4) } : { kind: 'several' },
    facetId: facet.id,
    pin: { kind: 'point', at: { xFt: at('xFt'), yFt: at('yFt') } },
  }
}

/** Tallies and patterns by themselves. */
async function measurePure({ job, facets, findings, weather, assessment }) {
  const load = async (path) => (await runnerImport(path)).module
  const { facetTallies } = await load('./app/assessment/facet-tallies.ts')
  const { sidePattern, zonePattern } = await load('./app/assessment/pattern.ts')
  const { windForSides } = await load('./app/assessment/wind-side.ts')
  const { jobZones } = await load('./app/roof/zones/job-zones.ts')
  const roof = { facets, upAzimuthDeg: job.frame.upAzimuthDeg, property: job.sheet.property }
  const zones = jobZones(roof)
  const piece = { exposureIn: 13.5, coverWidthIn: 12 }
  const wind = windForSides({ job, weather, assessment }, 'UTC')
  return [
    summed(
      'tallies',
      timed(() => facetTallies({ facets, findings, piece })),
    ),
    summed(
      'pattern by zone; slowest: before any pin was looked up',
      timed(() => zonePattern({ facets, findings }, zones)),
    ),
    summed(
      'pattern by side of the wind',
      timed(() => sidePattern({ facets, findings }, wind)),
    ),
  ]
}

function timed(what) {
  return Array.from({ length: rounds }, () => {
    const from = performance.now()
    what()
    return performance.now() - from
  })
}

/** From the key that ends an edit until the screen shows what follows from it; the desk's answer and the new snapshot are in it. */
async function measureScreen(page, { job, facets }) {
  await page.goto(`${served.address.replace(/\/$/, '')}/job/${job.id}/assessment`)
  const [facet] = facets
  const field = page.getByLabel(`Looked at of facet ${facet.letter}, %`, { exact: true })
  await field.waitFor()
  await page.waitForTimeout(1500)
  const inspected = []
  for (let round = 0; round < rounds; round++) {
    await field.fill(round % 2 === 0 ? '20' : '80')
    inspected.push(await untilChanged(page, 'Enter', { selector: '[aria-label="Facets"]' }))
  }
  await page.getByText('Where findings lie', { exact: true }).click()
  await page.getByRole('table', { name: 'By zone of the roof' }).waitFor()
  await page.waitForTimeout(1500)
  if (values.picture !== undefined) await page.screenshot({ path: values.picture })
  const pattern = []
  for (let round = 0; round < rounds; round++) {
    await page.waitForTimeout(300)
    pattern.push(await untilChanged(page, 'Control+z', { selector: '[aria-label="By zone of the roof"]' }))
  }
  return [
    ...(await measureDesk(page, { job, facets })),
    summed('edit to screen: share looked at, tallies', inspected),
    summed('undo to screen: share looked at, both patterns', pattern),
  ]
}

/** The call that the edit makes, until a page has its answer. */
async function measureDesk(page, { job, facets }) {
  const call = callFrom(page)
  const times = []
  for (let round = 0; round < rounds; round++) {
    const from = performance.now()
    const inspected = { percent: 60 + round, note: '' }
    await call('assessment.state-inspected', { jobId: job.id, facetId: facets[0].id, inspected })
    times.push(performance.now() - from)
  }
  return [summed('the edit at the desk', times)]
}

/** What a table says changes with every edit here: its text is watched from the key on. */
async function untilChanged(page, keys, { selector }) {
  await page.evaluate((watched) => {
    window.changedAfter = new Promise((resolve) => {
      addEventListener('keydown', start, { capture: true, once: true })
      function start() {
        const from = performance.now()
        const before = document.querySelector(watched)?.textContent
        function look() {
          if (document.querySelector(watched)?.textContent !== before) resolve(performance.now() - from)
          else if (performance.now() - from > 10_000) resolve(Infinity)
          else requestAnimationFrame(look)
        }
        requestAnimationFrame(look)
      }
    })
  }, selector)
  await page.keyboard.press(keys)
  return page.evaluate(() => window.changedAfter)
}

function summed(what, times) {
  const sorted = times.toSorted((a, b) => a - b)
  const ms = (value) => (Number.isFinite(value) ? `${value.toFixed(1)} ms` : 'not within 10 s')
  return { what, middle: ms(sorted[Math.floor(sorted.length / 2)]), slowest: ms(sorted.at(-1)), accept: '100 ms' }
}
