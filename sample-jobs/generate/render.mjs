/**
 * Renders the sample job's photos and writes them with EXIF. `node sample-jobs/generate/render.mjs` makes all of them;
 * `--only a,b` some views by name, `--passes n` sets quality, `--scale 0.5` the size, `--out folder` another folder (a draft without job.json); `--job-only` writes job.json
 * and leaves the photos.
 */
import { mkdir, readdir, rm } from 'node:fs/promises'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { parseArgs } from 'node:util'
import { CLOCK_SHOWS } from './cameras.mjs'
import { openStage } from './render-driver.mjs'
import { writePhoto } from './photo-file.mjs'
import { WALK, fileName, shotOf } from './walk.mjs'
import { writeJob } from './job.mjs'
import { NARRATION_FILE, writeNarration } from './narration.mjs'
import { writePriceBook } from './price-book.mjs'
import { writeStationFiles } from './station-files.mjs'

const { values } = parseArgs({
  options: {
    only: { type: 'string' },
    passes: { type: 'string' },
    scale: { type: 'string' },
    'job-only': { type: 'boolean' },
    out: { type: 'string' },
  },
})
const jobFolder = fileURLToPath(new URL('../heron-spit/', import.meta.url))
const photoFolder = values.out ?? join(jobFolder, 'photos')
const passes = Number(values.passes ?? 20)
const scale = Number(values.scale ?? 1)
const wanted = values.only?.split(',')
const views = values['job-only'] ? [] : WALK.filter((v) => wanted === undefined || wanted.includes(v.name))

await mkdir(photoFolder, { recursive: true })
if (views.length > 0) await renderViews()

async function renderViews() {
  const stage = await openStage()
  try {
    await stage.setUp({
      words: { clockTime: CLOCK_SHOWS.time, clockDate: CLOCK_SHOWS.date, forceLbf: 24 },
      grassPatches: [
        [17, -40, 26, 60_000],
        [62, -30, 9, 9_000],
        [84, 8, 20, 36_000],
        [32, 72, 18, 34_000],
        [-30, 15, 20, 36_000],
      ],
    })
    for (const view of views) {
      const started = Date.now()
      const shot = shotOf(view, passes)
      shot.width = Math.round(shot.width * scale)
      shot.height = Math.round(shot.height * scale)
      const pixels = await stage.take(shot)
      const bytes = await writePhoto({ view, shot, pixels, file: join(photoFolder, fileName(view)) })
      console.log(
        `${fileName(view)} ${view.name}: ${Math.round(bytes / 1024)} KiB, ${((Date.now() - started) / 1000).toFixed(1)} s`,
      )
    }
  } finally {
    await stage.close()
  }
}

if (values.out === undefined) {
  const kept = new Set(WALK.map(fileName))
  for (const name of await readdir(photoFolder)) if (!kept.has(name)) await rm(join(photoFolder, name))
  await writeJob(join(jobFolder, 'job.json'))
  await writeNarration(join(jobFolder, 'narration', NARRATION_FILE))
  await writeStationFiles(jobFolder)
  await writePriceBook(jobFolder)
}
