import { cpus } from 'node:os'
import { createServer } from 'vite'

/** What narration gives: precision and recall by field on labelled cues, and how long two hours of speech take to read. */

const server = await createServer({
  server: { middlewareMode: true, hmr: false, ws: false },
  appType: 'custom',
  logLevel: 'error',
})
const load = (path) => server.ssrLoadModule(path)
const { labelledRuns } = await load('/tests/narration/labelled-cues.ts')
const { scoreRuns } = await load('/tests/narration/score-runs.ts')
const { precisionOf, recallOf, scoredFields } = await load('/tests/narration/score-drafts.ts')
const { readNarration } = await load('/app/narration/read-narration.ts')
const { marrowQuay } = await load('/tests/narration/marrow-quay.ts')

const share = (value) => (value === null ? '    -' : value.toFixed(2).padStart(5))
const sets = {
  development: 'dev',
  'development 2': 'dev2',
  'development 3': 'dev3',
  'development 4': 'dev4',
  fresh: 'fresh',
  'nothing said': 'nothing',
}
console.log('set            field                      precision  recall   right  wrong  missed')
for (const [name, beginning] of Object.entries(sets)) {
  const runs = labelledRuns(beginning)
  if (runs.length === 0) continue
  const { score, cues, silentCues, silentCuesWithDraft, differences } = scoreRuns(runs)
  if (beginning !== 'nothing')
    for (const field of scoredFields) {
      const tally = score[field]
      const counts = [tally.right, tally.wrong, tally.missed].map((count) => String(count).padStart(7)).join('')
      console.log(
        `${name.padEnd(14)} ${field.padEnd(26)} ${share(precisionOf(tally))}    ${share(recallOf(tally))}  ${counts}`,
      )
    }
  console.log(
    `${name.padEnd(14)} ${cues} cues; ${silentCuesWithDraft} of ${silentCues} that report nothing got a draft`,
  )
  if (process.argv.includes(`--tell=${beginning}`)) for (const difference of differences) console.log(`  ${difference}`)
}

const said = labelledRuns('dev').flatMap((run) => run.cues)
const twoHours = Array.from({ length: 2400 }, (_, at) => ({
  ...(said[at % said.length] ?? said[0]),
  startMs: at * 3000,
  endMs: at * 3000 + 2500,
}))
const times = Array.from({ length: 7 }, () => {
  const before = performance.now()
  readNarration(twoHours, { house: marrowQuay, covering: 'concrete-tile' })
  return performance.now() - before
}).toSorted((a, b) => a - b)
console.log(
  `two hours of speech (2,400 cues): ${times[3].toFixed(0)} ms, first ${Math.max(...times).toFixed(0)} ms; ${cpus()[0]?.model ?? ''}, Node ${process.version}`,
)
await server.close()
