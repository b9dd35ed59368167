import {
  type Chart,
  type ChartPath,
  type ChartPoint,
  type ChartText,
  type ChartTone,
  box,
  line,
  shape,
  words,
} from './chart.ts'
import { SECTORS, sectorName } from './direction-words.ts'
import { CLASS_FROM_KT, countWinds } from './wind-counts.ts'
import type { StationWind } from './station-wind.ts'

const SIZE_PT = { width: 330, height: 232 }
const CENTRE = { xPt: 116, yPt: 116 }
const RADIUS_PT = 92
const TONES = ['speed-1', 'speed-2', 'speed-3', 'speed-4', 'speed-5'] as const satisfies readonly ChartTone[]

/** Where the mean wind came from, by share of reports; petals point to where it came from, darker is stronger. */
export function windRose({ station, observations }: StationWind): Chart {
  const counts = countWinds(observations)
  const bySector = counts.bySector.map((classes) => classes.reduce((sum, count) => sum + count, 0))
  const most = Math.max(...bySector)
  const ring = ringStep(most / Math.max(counts.total, 1))
  const outer = Math.max(Math.ceil(most / Math.max(counts.total, 1) / ring), 1) * ring
  const radius = (count: number) => (count / Math.max(counts.total, 1) / outer) * RADIUS_PT
  const petals = counts.bySector.flatMap((classes, sector) => petal(classes, sector, radius))
  const apart = [
    ['calm', counts.calm],
    ['variable', counts.variable],
    ['no direction or speed', counts.notGiven],
  ] as const
  const leading = bySector.indexOf(most)
  return {
    widthPt: SIZE_PT.width,
    heightPt: SIZE_PT.height,
    marks: [...rings(ring, outer), ...petals, ...key(counts.total, apart)],
    alt:
      `Wind rose of ${station.code}, ${counts.total} reports. ` +
      (most === 0 ? 'No report has a direction. ' : `Most often from ${sectorName(leading)}, ${most} reports. `) +
      `${apart.map(([name, count]) => `${name}: ${count}`).join(', ')}.`,
  }
}

function ringStep(share: number): number {
  return share > 0.4 ? 0.2 : share > 0.15 ? 0.1 : 0.05
}

function at(azimuthDeg: number, radiusPt: number): ChartPoint {
  const angle = (azimuthDeg * Math.PI) / 180
  return { xPt: CENTRE.xPt + radiusPt * Math.sin(angle), yPt: CENTRE.yPt - radiusPt * Math.cos(angle) }
}

function arc(fromDeg: number, toDeg: number, radiusPt: number): readonly ChartPoint[] {
  const steps = Math.max(Math.ceil(Math.abs(toDeg - fromDeg) / 5), 1)
  return Array.from({ length: steps + 1 }, (_, step) => at(fromDeg + ((toDeg - fromDeg) * step) / steps, radiusPt))
}

function rings(step: number, outer: number): readonly (ChartPath | ChartText)[] {
  const shares = Array.from({ length: Math.round(outer / step) }, (_, index) => (index + 1) * step)
  return [
    ...shares.map((share) => shape(arc(0, 360, (share / outer) * RADIUS_PT), null, 'grid')),
    ...[0, 90].map((deg) => line([at(deg, RADIUS_PT), at(deg + 180, RADIUS_PT)], 'grid')),
    ...[0, 4, 8, 12].map((sector) => {
      const { xPt, yPt } = at(sector * 22.5, RADIUS_PT + 11)
      return words({ xPt, yPt: yPt + 3 }, sectorName(sector), { align: 'middle', tone: 'ink', sizePt: 8.5 })
    }),
    ...shares.map((share) => {
      const { xPt, yPt } = at(34, (share / outer) * RADIUS_PT)
      return words({ xPt: xPt + 1, yPt: yPt - 1 }, `${Math.round(share * 100)} %`, { sizePt: 6.5 })
    }),
  ]
}

function petal(classes: readonly number[], sector: number, radius: (count: number) => number): readonly ChartPath[] {
  const middle = sector * (360 / SECTORS)
  let below = 0
  return classes.flatMap((count, index) => {
    if (count === 0) return []
    const inner = radius(below)
    below += count
    const outer = radius(below)
    const tone = TONES[index] ?? 'speed-5'
    return [shape([...arc(middle - 8, middle + 8, outer), ...arc(middle + 8, middle - 8, inner)], tone, 'paper')]
  })
}

function key(total: number, apart: readonly (readonly [string, number])[]): readonly (ChartPath | ChartText)[] {
  const xPt = 232
  const rows = CLASS_FROM_KT.map((from, index) => {
    const next = CLASS_FROM_KT[index + 1]
    return next === undefined ? `${from} kt and more` : index === 0 ? `below ${next} kt` : `${from} to below ${next} kt`
  })
  return [
    words({ xPt, yPt: 20 }, `${total} reports, mean wind`, { tone: 'ink' }),
    ...rows.flatMap((text, index) => {
      const yPt = 36 + index * 14
      return [
        box({ xPt, yPt: yPt - 7 }, { xPt: xPt + 9, yPt: yPt + 1 }, TONES[index] ?? 'speed-5'),
        words({ xPt: xPt + 14, yPt }, text),
      ]
    }),
    ...apart.map(([name, count], index) => words({ xPt, yPt: 122 + index * 12 }, `${name}: ${count}`)),
    words({ xPt, yPt: 172 }, 'Petals point to where'),
    words({ xPt, yPt: 182 }, 'the wind came from.'),
  ]
}
