/** Writes the two invented station files of the sample job: no such stations, no such storm. */
import { mkdir, writeFile } from 'node:fs/promises'
import { join } from 'node:path'

const HOUR_MS = 3_600_000
/** When the invented storm passed nearest: 4 November 2026, 22:10 local standard time. */
const NEAREST_MS = Date.UTC(2026, 10, 5, 3, 10)

/** How the job reads them; goes into job.json as it stands. */
export const WEATHER = {
  stations: [
    {
      code: 'XHS1',
      name: 'Heron Spit airfield (invented)',
      position: { latDeg: 29.176, lonDeg: -82.861 },
      elevationFt: 21,
      anemometerHeightFt: 33,
      note: 'Invented station; nothing was measured.',
    },
    {
      code: 'XPIER',
      name: 'Saltwort pier (invented)',
      position: { latDeg: 29.098, lonDeg: -82.981 },
      elevationFt: 6,
      anemometerHeightFt: 26,
      note: 'Invented station; its power is cut while the storm is nearest.',
    },
  ],
  files: [
    {
      file: 'invented-airfield-reports.txt',
      provenance: 'Invented for the sample job; made by its generator, downloaded from nowhere',
      choices: { nearDate: '2026-11-04', averaging: 'two-minute' },
    },
    {
      file: 'invented-pier.csv',
      provenance: 'Invented for the sample job; made by its generator, downloaded from nowhere',
      choices: {
        timeBasis: { kind: 'fixed-offset', offsetMinutes: -300 },
        unit: 'mph',
        averaging: 'ten-minute',
        stationCode: 'XPIER',
        columns: { time: 'local standard time', direction: 'from deg', mean: 'mean mph', gust: 'gust mph' },
      },
    },
  ],
  choices: {
    exposure: 'C',
    speedMph: 69,
    speedSource: 'highest gust of XHS1 in the window, as measured there (invented)',
    elevationFt: 9,
    tileLengthFt: 1.375,
    gcp: -2,
  },
}

/** @param {string} folder the job's folder */
export async function writeStationFiles(folder) {
  const to = join(folder, 'weather')
  await mkdir(to, { recursive: true })
  await writeFile(join(to, 'invented-airfield-reports.txt'), airfield())
  await writeFile(join(to, 'invented-pier.csv'), pier())
}

/** Wind of the invented storm: mean and gust in knots, direction in degrees. @param {number} atMs */
function storm(atMs) {
  const hours = (atMs - NEAREST_MS) / HOUR_MS
  const strength = Math.exp(-((hours / (hours < 0 ? 11 : 7)) ** 2))
  // A slow wave instead of chance, so that the files come out the same each time.
  const wave = Math.sin(hours * 2.3) * 1.6 + Math.sin(hours * 5.1) * 0.9
  const meanKt = Math.max(3, 6 + 31 * strength + wave)
  const fromDeg = 165 + 62 / (1 + Math.exp(-hours / 3.2)) + Math.sin(hours) * 4
  return { meanKt, gustKt: meanKt * 1.5 + Math.abs(wave) * 1.4, fromDeg }
}

function airfield() {
  const lines = [
    '# INVENTED for the sample job of Battenbook. No such station, no such storm, nothing was measured.',
    '# Reports in the form of METAR, times in UTC.',
  ]
  for (let atMs = Date.UTC(2026, 10, 3, 5, 53); atMs < Date.UTC(2026, 10, 6, 6); atMs += HOUR_MS)
    lines.push(report(atMs))
  return `${lines.join('\n')}\n`
}

/** @param {number} atMs */
function report(atMs) {
  const at = new Date(atMs)
  const { meanKt, gustKt, fromDeg } = storm(atMs)
  const direction = meanKt < 5 ? 'VRB' : pad(Math.round(fromDeg / 10) * 10, 3)
  const gust = gustKt - meanKt >= 8 ? `G${pad(Math.round(gustKt), 2)}` : ''
  const isNearest = Math.abs(atMs - NEAREST_MS) < HOUR_MS && atMs > NEAREST_MS
  const remark = isNearest ? ' RMK PK WND 20058/0312' : ' RMK'
  const day = `${pad(at.getUTCDate(), 2)}${pad(at.getUTCHours(), 2)}${pad(at.getUTCMinutes(), 2)}Z`
  return `METAR XHS1 ${day} AUTO ${direction}${pad(Math.round(meanKt), 2)}${gust}KT${remark} INVENTED=`
}

/** Every 20 minutes, none while the power is out. */
function pier() {
  const lines = ['local standard time,from deg,mean mph,gust mph,note']
  const outFrom = NEAREST_MS - 1.4 * HOUR_MS
  const outTo = NEAREST_MS + 5.6 * HOUR_MS
  for (let atMs = Date.UTC(2026, 10, 4, 11); atMs < Date.UTC(2026, 10, 5, 20); atMs += HOUR_MS / 3) {
    if (atMs > outFrom && atMs < outTo) continue
    const local = new Date(atMs - 5 * HOUR_MS).toISOString().slice(0, 16).replace('T', ' ')
    const { meanKt, gustKt, fromDeg } = storm(atMs + HOUR_MS / 4)
    const [mean, gust] = [meanKt, gustKt].map((kt) => Math.round(kt * 1.150779))
    lines.push(`${local},${Math.round(fromDeg / 5) * 5},${mean},${gust},invented`)
  }
  return `${lines.join('\n')}\n`
}

/** @param {number} value @param {number} digits */
function pad(value, digits) {
  return String(value).padStart(digits, '0')
}
