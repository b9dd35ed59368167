// How often the first suggested facet is right on simulated walks with known truth, and whether it is as sure as it is right.
// A walk goes over every facet of a house of ten once, mostly from neighbour to neighbour, and starts and often ends on the
// ground. It has some 300 photos: things one after the other, three in four with an overview, a mid and a close photo within
// seconds, half of these with one more close with a scale (how findings are documented: common practice, no source).
// Sparse walks have some 90 single photos. About one standpoint in fourteen shows a neighbouring facet instead of the one
// stood on, which is all that is left to miss when the wander of the positions is known: see the row "bound".
//   npm run bench:placement [-- --walks 60] [-- --first-seed 800001]
import { cpus } from 'node:os'
import { parseArgs } from 'node:util'
import { runnerImport } from 'vite'

const { values } = parseArgs({
  options: { walks: { type: 'string', default: '60' }, 'first-seed': { type: 'string', default: '800001' } },
})
const load = async (path) => (await runnerImport(`./${path}`, { configFile: false, logLevel: 'error' })).module
const { calibrationGaps, judgedWalks, shareRight, tenths } = await load('tests/placement/accuracy.ts')
const { CONDITIONS, seedsFrom, TEST } = await load('tests/placement/walks.ts')

const BARS = { learned: [85, 95], fresh: [85, 95], offset: [80, 92], spoken: [70, 85] }
/** Tenths with fewer photos say nothing of calibration. */
const LEAST_PHOTOS = 50

const seeds = seedsFrom(Number(values['first-seed']), Number(values.walks))
const table = Object.entries(CONDITIONS).map(([key, condition]) => {
  const began = process.cpuUsage().user
  const judged = judgedWalks(condition, TEST, seeds)
  const gaps = calibrationGaps(judged, LEAST_PHOTOS)
  const [accept = '', aim = ''] = BARS[key] ?? []
  return {
    condition: condition.name,
    photos: judged.length,
    'right, %': (100 * shareRight(judged)).toFixed(1),
    accept,
    aim,
    ...Object.fromEntries(tenths(judged).map(tenthCell)),
    'gap mean': gaps.mean.toFixed(1),
    'gap max': gaps.largest.toFixed(1),
    'CPU ms a walk': ((process.cpuUsage().user - began) / 1000 / seeds.length).toFixed(0),
  }
})
console.log(`${cpus().length} x ${cpus()[0]?.model ?? 'unknown processor'}; Node ${process.version}`)
console.log(
  'Tenths of stated probability: the share that was right, and of how many photos. Gaps in points; accept 10, aim 5.',
)
console.table(table)

function tenthCell({ stated, right, count }) {
  return [`~${Math.min(95, Math.floor(stated * 10) * 10 + 5)}`, `${(100 * right).toFixed(0)} of ${count}`]
}
