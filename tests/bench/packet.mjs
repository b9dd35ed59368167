// A packet of 100 photos, two a page, side by side with img2pdf of the same previews; then one of 400 photos for its memory.
//   npm run bench:packet [-- --photos FOLDER] [-- --runs 3]
import { existsSync, linkSync, mkdirSync, mkdtempSync, readdirSync, rmSync, statSync } from 'node:fs'
import { cpus, tmpdir } from 'node:os'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import { runMeasured } from './run-measured.mjs'

const MAKER = '../shared/bench/make-photos.mjs'
const { values } = parseArgs({
  options: {
    runs: { type: 'string', default: '3' },
    photos: { type: 'string' },
    count: { type: 'string', default: '100' },
  },
})

const work = mkdtempSync(join(tmpdir(), 'battenbook-bench-'))
const battenbook = (...args) => runMeasured(process.execPath, ['main/cli/battenbook.js', ...args])
try {
  const photos = values.photos ?? (await makePhotos(join(work, 'photos')))
  const library = join(work, 'library')
  await battenbook('new', library, '--number', 'B-1')
  await battenbook('take-in', library, 'B-1', pick(photos, Number(values.count)))
  const [job] = readdirSync(join(library, 'jobs'))
  const derived = join(library, 'jobs', job, 'derived')
  const previews = readdirSync(derived).filter((name) => name.endsWith('-preview.jpg'))
  const table = []
  for (let run = 1; run <= Number(values.runs); run++) {
    const yard = await runMeasured('img2pdf', [
      ...previews.map((name) => join(derived, name)),
      '-o',
      join(work, `yard-${run}.pdf`),
    ])
    const out = join(work, `packet-${run}`)
    const packet = await battenbook(
      'packet',
      library,
      'B-1',
      '--out',
      out,
      '--photos-per-page',
      '2',
      '--overrule',
      'Bench.',
    )
    table.push({
      run,
      photos: previews.length,
      'img2pdf, s': yard.seconds.toFixed(2),
      'packet and bundle, s': packet.seconds.toFixed(2),
      ratio: (packet.seconds / yard.seconds).toFixed(2),
      'CPU s': packet.cpuSeconds.toFixed(2),
      'peak MiB': packet.peakMiB.toFixed(0),
      'PDF MB': (statSync(join(out, `B-1-packet-r${run}.pdf`)).size / 1e6).toFixed(1),
    })
    rmSync(out, { recursive: true, force: true })
  }
  console.log(`${cpus().length} x ${cpus()[0]?.model ?? 'unknown processor'}; Node ${process.version}`)
  console.table(table)
} finally {
  rmSync(work, { recursive: true, force: true })
}

async function makePhotos(folder) {
  if (!existsSync(MAKER)) throw new Error(`${MAKER} is not here; name a folder of photos with --photos`)
  await runMeasured(process.execPath, [MAKER, folder, '--count', values.count])
  return folder
}

/** The first photos of a folder, linked together so that the whole folder need not be taken in. */
function pick(folder, count) {
  const names = readdirSync(folder).slice(0, count)
  const target = join(work, 'picked')
  mkdirSync(target)
  for (const name of names) linkSync(join(folder, name), join(target, name))
  return target
}
