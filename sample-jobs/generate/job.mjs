/** Writes job.json from the same house, damage and walk that the pictures are made from. */
import { writeFile } from 'node:fs/promises'
import { CAMERAS } from './cameras.mjs'
import { ANCHOR, FACETS, PITCH_RISE, UP_AZIMUTH_DEG, downslopeAzimuthDeg } from './house-plan.mjs'
import { ASSESSMENT } from './assessment.mjs'
import { DIARY } from './diary.mjs'
import { FRONT_FINDINGS } from './findings-front.mjs'
import { GARAGE_FINDINGS } from './findings-garage.mjs'
import { BACK_FINDINGS } from './findings-back.mjs'
import { MARKS } from './marks.mjs'
import { NARRATION_FILE, RECORDED_FROM } from './narration.mjs'
import { SCOPE } from './price-book.mjs'
import { READINGS } from './readings.mjs'
import { SURVEY } from './field-survey.mjs'
import { SHEET } from './job-sheet.mjs'
import { WEATHER } from './station-files.mjs'
import { WALK, fileName } from './walk.mjs'

/** How much of each facet was looked at closely, percent, and why not more. @type {Record<string, [number, string]>} */
const INSPECTED = {
  A: [95, 'Walked. The two courses at the eave were seen from above only.'],
  B: [90, 'Seen from the front slope and from the entry ridge.'],
  C: [90, 'Seen from the entry ridge.'],
  D: [100, 'Walked.'],
  E: [90, 'Walked to the last two courses.'],
  F: [85, 'Seen from the garage ridge; not stepped on.'],
  G: [90, 'Walked above the third course.'],
  H: [85, 'Walked. Damp growth on the lowest three courses, not stepped on.'],
  I: [80, 'Walked on its upper half.'],
  J: [30, 'Not walked: wet with growth in the shade. Seen from the ladder at the right corner only.'],
  K: [70, 'Seen across the valley from the back slope.'],
  L: [95, 'Walked. The course at the eave was seen from above only.'],
}

/** @param {string} file path of job.json */
export async function writeJob(file) {
  await writeFile(file, `${shortListsOnOneLine(JSON.stringify(describedJob(), null, 2))}\n`)
}

/** The repository's formatting: a list of plain values stands on one line where it fits. @param {string} json */
function shortListsOnOneLine(json) {
  return json.replace(/^( *)(.*)\[\n\s+([^[\]{}]+?)\n\s*\](,?)$/gm, (whole, indent, before, inside, comma) => {
    const line = `${indent}${before}[${inside.replace(/\n\s+/g, ' ')}]${comma}`
    return line.length <= 120 ? line : whole
  })
}

function describedJob() {
  return {
    format: 'battenbook-job',
    version: 1,
    number: 'SAMPLE-2026-01',
    sheet: SHEET,
    frame: { upAzimuthDeg: UP_AZIMUTH_DEG, anchor: ANCHOR },
    facets: FACETS.map((f) => ({
      letter: f.letter,
      name: f.name,
      outline: f.outline.map(point),
      pitchRise: PITCH_RISE,
      downslopeAzimuthDeg: downslopeAzimuthDeg(f),
      inspected: { percent: INSPECTED[f.letter][0], note: INSPECTED[f.letter][1] },
    })),
    cameras: Object.values(CAMERAS).map((c) => ({
      make: c.make,
      model: c.model,
      serial: c.serial,
      clock: { correctionMs: c.correctionMs, why: c.clockWhy },
    })),
    photos: WALK.map((view) => ({ file: fileName(view), ...view.tags, ...marksOf(view.name) })),
    findings: [...GARAGE_FINDINGS, ...FRONT_FINDINGS, ...BACK_FINDINGS].map(finding),
    narrations: [{ file: NARRATION_FILE, recordedFrom: RECORDED_FROM }],
    readings: READINGS.map((r, i) => ({ number: i + 1, ...r, at: point(r.at), photos: (r.photos ?? []).map(fileOf) })),
    diary: DIARY,
    survey: SURVEY,
    scope: SCOPE,
    assessment: ASSESSMENT,
    weather: WEATHER,
  }
}

/** @param {string} name of a view */
function marksOf(name) {
  const marks = MARKS[name]
  return marks === undefined ? {} : { marks }
}

/** @param {any} written @param {number} index */
function finding({ photos, pin, ...rest }, index) {
  return {
    number: index + 1,
    ...rest,
    pin: pinOf(pin),
    photos: photos.map((/** @type {[string, string]} */ [name, role]) => ({ file: fileOf(name), role })),
  }
}

/** @param {any} pin */
function pinOf(pin) {
  if (pin === undefined) return null
  if (pin.kind === 'point') return { kind: 'point', at: point(pin.at) }
  return { kind: pin.kind, points: pin.points.map(point) }
}

/** Plan point to a hundredth of a foot. @param {[number, number]} at */
function point([x, y]) {
  return { xFt: Math.round(x * 100) / 100, yFt: Math.round(y * 100) / 100 }
}

/** @param {string} name of a view */
function fileOf(name) {
  const view = WALK.find((v) => v.name === name)
  if (view === undefined) throw new Error(`The walk has no view ${name}.`)
  return fileName(view)
}
