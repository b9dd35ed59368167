// Take-in of 100 camera-like 12-megapixel JPEGs, side by side with one preview each by vipsthumbnail (Y) on the same files.
//   npm run bench:take-in [-- --runs 3] [-- --photos FOLDER]
import { existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync } from 'node:fs'
import { cpus, tmpdir } from 'node:os'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import { runMeasured } from './run-measured.mjs'

const MAKER = '../shared/bench/make-photos.mjs'
const { values } = parseArgs({ options: { runs: { type: 'string', default: '3' }, photos: { type: 'string' } } })

const work = mkdtempSync(join(tmpdir(), 'battenbook-bench-'))
try {
  const photos = values.photos ?? (await makePhotos(join(work, 'photos')))
  const count = readdirSync(photos).length
  const table = []
  for (let run = 1; run <= Number(values.runs); run++) {
    const previews = join(work, `previews-${run}`)
    mkdirSync(previews)
    const y = await runMeasured('vipsthumbnail', [
      '--size',
      '1600x1600',
      '-o',
      `${previews}/%s.jpg`,
      ...readdirSync(photos).map((name) => join(photos, name)),
    ])
    const library = join(work, `library-${run}`)
    await runMeasured(process.execPath, ['main/cli/battenbook.js', 'new', library, '--number', 'B-1'])
    const all = await runMeasured(process.execPath, [
      'main/cli/battenbook.js',
      'take-in',
      library,
      'B-1',
      photos,
      '--json',
    ])
    const { intake } = JSON.parse(all.output)
    if (intake.photosAdded !== count) throw new Error(`${intake.photosAdded} of ${count} photos were taken in`)
    table.push({
      run,
      'Y, s': y.seconds.toFixed(2),
      'take-in, s': all.seconds.toFixed(2),
      'in Y': (all.seconds / y.seconds).toFixed(3),
      'photos/s': (count / all.seconds).toFixed(1),
      'CPU s a photo': (all.cpuSeconds / count).toFixed(3),
      'peak MiB': all.peakMiB.toFixed(0),
    })
    rmSync(library, { recursive: true, force: true })
    rmSync(previews, { recursive: true, force: true })
  }
  console.log(`${count} photos; ${cpus().length} x ${cpus()[0]?.model ?? 'unknown processor'}; Node ${process.version}`)
  console.table(table)
} finally {
  rmSync(work, { recursive: true, force: true })
}

async function makePhotos(folder) {
  if (!existsSync(MAKER)) throw new Error(`${MAKER} is not here; name a folder of photos with --photos`)
  await runMeasured(process.execPath, [MAKER, folder, '--count', '100'])
  return folder
}
