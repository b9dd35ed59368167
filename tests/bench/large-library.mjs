import { linkSync, mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import sharp from 'sharp'
import { runMeasured } from './run-measured.mjs'

/** Identity of the one large job. */
export const LARGE_JOB = 'job-large'

const WALK_MS = Date.UTC(2026, 2, 14, 14)
const POSITION = { latDeg: 27.1, lonDeg: -82.4 }
const WORDS =
  'cracked slipped broken loose lifted missing chipped sound stained worn field ridge hip valley eave rake flashing chimney pipe skylight gutter debris fastener mortar underlayment north south east west left right near above below corner front back garage porch tile tiles cap course batten'.split(
    ' ',
  )

/**
 * Fills a new library by way of its database: jobs, photos with captions, the search index, and for the large job facets,
 * findings and small pictures. No originals are written, since nothing that is measured reads them.
 *
 * @param {string} folder
 * @param {{ jobs: number, photosEach: number, largePhotos: number }} sizes
 */
export async function makeLargeLibrary(folder, { jobs, photosEach, largePhotos }) {
  await runMeasured(process.execPath, ['main/cli/battenbook.js', 'new', folder, '--number', 'B-0'])
  const db = new Database(join(folder, 'battenbook.db'))
  db.pragma('synchronous = OFF')
  const put = statements(db)
  for (let job = 1; job <= jobs; job++) {
    db.transaction(() => {
      put.job(`job-${job}`, job)
      for (let photo = 1; photo <= photosEach; photo++) put.photo(`job-${job}`, `p${job}-${photo}`, photo)
    })()
  }
  db.transaction(() => {
    put.job(LARGE_JOB, jobs + 1)
    for (let photo = 1; photo <= largePhotos; photo++) put.photo(LARGE_JOB, `large-${photo}`, photo)
    for (let facet = 0; facet < 10; facet++) put.facet(LARGE_JOB, facet)
    for (let finding = 1; finding <= 150; finding++) put.finding(LARGE_JOB, finding)
  })()
  db.exec('analyze')
  db.close()
  await pictures(join(folder, 'jobs', LARGE_JOB, 'derived'), largePhotos)
}

function statements(db) {
  const job = db.prepare(
    'insert into jobs (id, number, number_key, folder, created_at_ms, changed_at_ms, sheet, frame, lacks) values (?, ?, ?, ?, ?, ?, ?, ?, 12)',
  )
  const camera = db.prepare('insert into cameras (id, job_id, make, model, serial, clock) values (?, ?, ?, ?, ?, ?)')
  const photo = db.prepare(
    "insert into photos (id, job_id, number, sha256, stored_name, camera_id, file, tags, preview, taken_in_at_ms) values (?, ?, ?, ?, ?, ?, ?, ?, 'ready', ?)",
  )
  const words = db.prepare('insert into search_words (words, job_id, kind, record_id, label) values (?, ?, ?, ?, ?)')
  const row = db.prepare('insert into search_rows (kind, record_id, word_row) values (?, ?, ?)')
  const facet = db.prepare('insert into facets (id, job_id, letter, data) values (?, ?, ?, ?)')
  const finding = db.prepare('insert into findings (id, job_id, number, data) values (?, ?, ?, ?)')
  const index = ({ jobId, kind, id }, { label, text }) => {
    const { lastInsertRowid } = words.run(text, jobId, kind, id, label)
    row.run(kind, id, lastInsertRowid)
  }
  return {
    job(id, at) {
      const number = `B-${String(at).padStart(4, '0')}`
      const sheet = {
        property: { address: `${at} Example Lane`, city: 'Sampleton', position: POSITION, frontAzimuthDeg: 90 },
        owner: { name: `Owner ${at}` },
        inspection: { dates: ['2026-03-14'] },
      }
      const changed = WALK_MS + at * 1000
      job.run(id, number, number.toLowerCase(), id, WALK_MS, changed, JSON.stringify(sheet), '{}')
      camera.run(`camera-${id}`, id, 'Example', 'Field 1', 'S1', '{"correctionMs":0,"why":""}')
      index(
        { jobId: id, kind: 'job', id },
        { label: number, text: `${number}\nOwner ${at}\n${at} Example Lane\nSampleton` },
      )
    },
    photo(jobId, id, number) {
      const label = `P-${String(number).padStart(3, '0')}`
      const file = fileOf(id, number)
      const caption = captionOf(id, number)
      const tags = {
        facetId: jobId === LARGE_JOB ? `facet-${number % 10}` : null,
        component: null,
        condition: null,
        role: null,
        caption,
        leftOutBecause: null,
      }
      photo.run(
        id,
        jobId,
        number,
        file.sha256,
        file.fileName,
        `camera-${jobId}`,
        JSON.stringify(file),
        JSON.stringify(tags),
        WALK_MS,
      )
      index({ jobId, kind: 'photo', id }, { label, text: `${label}\n${caption}\n${file.fileName}` })
    },
    facet(jobId, at) {
      const letter = 'ABCDEFGHIJ'[at]
      const [x, y] = [(at % 5) * 30, Math.floor(at / 5) * 20]
      const outline = [
        [x, y],
        [x + 30, y],
        [x + 30, y + 20],
        [x, y + 20],
      ].map(([xFt, yFt]) => ({ xFt, yFt }))
      const data = {
        id: `facet-${at}`,
        letter,
        outline,
        pitchRise: 5,
        downslopeAzimuthDeg: 180,
        inspected: { percent: 100 },
      }
      facet.run(`facet-${at}`, jobId, letter, JSON.stringify(data))
    },
    finding(jobId, number) {
      const id = `finding-${number}`
      const shown = [1, 2, 3].map((part) => ({
        photoId: `large-${number * 20 + part}`,
        role: ['mid', 'close', 'scale'][part - 1],
      }))
      const data = {
        id,
        number,
        kind: 'damage',
        component: 'field-tile',
        condition: 'slipped',
        facetId: `facet-${number % 10}`,
        photos: shown,
      }
      finding.run(id, jobId, number, JSON.stringify(data))
    },
  }
}

function captionOf(id, number) {
  let seed = number * 2_654_435_761 + [...id].reduce((sum, sign) => sum * 31 + sign.charCodeAt(0), 7)
  const word = () => {
    seed = (seed * 1_103_515_245 + 12_345) % 2_147_483_648
    return WORDS[Math.floor((seed / 2_147_483_648) * WORDS.length)]
  }
  return Array.from({ length: 7 }, word).join(' ')
}

function fileOf(id, number) {
  const at = new Date(WALK_MS + number * 4000).toISOString().slice(0, 19)
  return {
    sha256: Buffer.from(id.padEnd(32, '.')).toString('hex').slice(0, 64),
    bytes: 4_000_000 + number,
    fileName: `IMG_${String(number).padStart(4, '0')}.JPG`,
    mediaType: 'image/jpeg',
    widthPx: 4000,
    heightPx: 3000,
    orientation: 1,
    camera: { make: 'Example', model: 'Field 1', serial: 'S1' },
    written: {
      tag: 'DateTimeOriginal',
      raw: at.replaceAll('-', ':').replace('T', ' '),
      local: at,
      offsetMinutes: null,
      gpsUtcMs: WALK_MS + 4 * 3_600_000 + number * 4000,
    },
    position: { latDeg: POSITION.latDeg + (number % 50) * 1e-6, lonDeg: POSITION.lonDeg, altitudeM: 8, errorM: 5 },
    direction: { azimuthDeg: number % 360, reference: 'true' },
    problems: [],
  }
}

/** A few dozen different small pictures, each under many names. */
async function pictures(folder, count) {
  mkdirSync(folder, { recursive: true })
  const kinds = 48
  for (let kind = 0; kind < kinds; kind++) {
    const noise = { type: 'gaussian', mean: 128, sigma: 40 }
    const picture = await sharp({ create: { width: 320, height: 240, channels: 3, background: '#000', noise } })
      .tint({ r: (kind * 37) % 256, g: (kind * 91) % 256, b: (kind * 53) % 256 })
      .jpeg({ quality: 76 })
      .toBuffer()
    writeFileSync(join(folder, `kind-${kind}.jpg`), picture)
  }
  for (let photo = 1; photo <= count; photo++)
    linkSync(join(folder, `kind-${photo % kinds}.jpg`), join(folder, `large-${photo}-thumbnail.jpg`))
}
