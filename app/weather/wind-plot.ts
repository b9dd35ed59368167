import { Temporal } from 'temporal-polyfill'
import { type Chart, type ChartPath, type ChartPoint, type ChartText, box, line, shape, words } from './chart.ts'
import { fromKnots } from './speed.ts'
import type { SourcedObservation, StationWind } from './station-wind.ts'
import type { WindWindow } from './wind-window.ts'

const WIDTH_PT = 520
const HEIGHT_PT = 236
const AREA = { left: 30, right: 484, top: 26, bottom: 172 } as const
const ARROWS_Y = 204
const HOUR_MS = 3_600_000
/** More arrows than this would run into each other. */
const MOST_ARROWS = 44

type Mark = ChartPath | ChartText

/** Wind of one station over the window: mean as a line, gusts as triangles, peak remarks as diamonds, gaps left open. */
export function windPlot(wind: StationWind, window: WindWindow, zone: string): Chart {
  const highest = Math.max(wind.peakGust?.kt ?? 0, wind.peakMean?.kt ?? 0)
  const topKt = Math.max(Math.ceil((highest + 2) / 10) * 10, 20)
  const xOf = (ms: number) =>
    AREA.left + ((ms - window.startMs) / (window.endMs - window.startMs)) * (AREA.right - AREA.left)
  const yOf = (kt: number) => AREA.bottom - (kt / topKt) * (AREA.bottom - AREA.top)
  const scale: Scale = { xOf, yOf, topKt }
  return {
    widthPt: WIDTH_PT,
    heightPt: HEIGHT_PT,
    marks: [
      box({ xPt: xOf(window.lossStartMs), yPt: AREA.top }, { xPt: xOf(window.lossEndMs), yPt: AREA.bottom }, 'loss'),
      ...gaps(wind, scale),
      ...speedAxis(scale),
      ...timeAxis(window, zone, scale),
      ...meanLines(wind, scale),
      ...wind.observations.flatMap((one) => gustMarks(one, window, scale)),
      ...arrows(wind.observations, scale),
      ...key(),
    ],
    alt: altOf(wind),
  }
}

interface Scale {
  readonly xOf: (ms: number) => number
  readonly yOf: (kt: number) => number
  readonly topKt: number
}

function altOf({ station, observations, peakGust, peakMean, gaps: open }: StationWind): string {
  const figure = (kt: number) => `${Math.round(kt)} kt`
  return (
    `Wind at ${station.code} over the window, ${observations.length} reports. ` +
    (peakGust === null ? 'No gust was reported. ' : `Highest gust ${figure(peakGust.kt)}. `) +
    (peakMean === null ? 'No mean wind was reported. ' : `Highest mean wind ${figure(peakMean.kt)}. `) +
    `Gaps without reports: ${open.length}.`
  )
}

function gaps({ gaps: open }: StationWind, { xOf }: Scale): readonly Mark[] {
  return open.flatMap(({ startMs, endMs }) => {
    const [left, right] = [xOf(startMs), xOf(endMs)]
    const isWide = right - left > 46
    return [
      box({ xPt: left, yPt: AREA.bottom - 9 }, { xPt: right, yPt: AREA.bottom }, 'gap'),
      ...(isWide
        ? [
            words({ xPt: (left + right) / 2, yPt: AREA.bottom - 2 }, 'no reports', {
              align: 'middle',
              sizePt: 6.5,
              tone: 'ink',
            }),
          ]
        : []),
    ]
  })
}

function speedAxis({ yOf, topKt }: Scale): readonly Mark[] {
  const step = topKt > 60 ? 20 : 10
  const speeds = Array.from({ length: Math.floor(topKt / step) + 1 }, (_, index) => index * step)
  return [
    ...speeds.flatMap((kt) => [
      line(
        [
          { xPt: AREA.left, yPt: yOf(kt) },
          { xPt: AREA.right, yPt: yOf(kt) },
        ],
        'grid',
      ),
      words({ xPt: AREA.left - 4, yPt: yOf(kt) + 2.5 }, String(kt), { align: 'end' }),
      words({ xPt: AREA.right + 4, yPt: yOf(kt) + 2.5 }, fromKnots(kt, 'mph').toFixed(0)),
    ]),
    words({ xPt: AREA.left - 4, yPt: AREA.top - 8 }, 'kt', { align: 'end', tone: 'ink' }),
    words({ xPt: AREA.right + 4, yPt: AREA.top - 8 }, 'mph', { tone: 'ink' }),
  ]
}

function timeAxis({ startMs, endMs }: WindWindow, zone: string, { xOf }: Scale): readonly Mark[] {
  const hours = (endMs - startMs) / HOUR_MS
  const every = hours > 240 ? 24 : hours > 100 ? 12 : 6
  const first = Temporal.Instant.fromEpochMilliseconds(startMs)
    .toZonedDateTimeISO(zone)
    .round({ smallestUnit: 'hour', roundingMode: 'ceil' })
  const ticks = Array.from({ length: Math.ceil(hours) + 1 }, (_, index) => first.add({ hours: index })).filter(
    (tick) => tick.hour % every === 0 && tick.epochMilliseconds <= endMs,
  )
  const isCrowded = ticks.length > 24
  return ticks.flatMap((tick) => {
    const xPt = xOf(tick.epochMilliseconds)
    const isMidnight = tick.hour === 0
    return [
      line(
        [
          { xPt, yPt: isMidnight ? AREA.top : AREA.bottom },
          { xPt, yPt: AREA.bottom + 3 },
        ],
        isMidnight ? 'quiet' : 'grid',
      ),
      ...(isCrowded
        ? []
        : [words({ xPt, yPt: AREA.bottom + 11 }, String(tick.hour).padStart(2, '0'), { align: 'middle' })]),
      ...(isMidnight && tick.epochMilliseconds < endMs
        ? [words({ xPt: xPt + 3, yPt: AREA.bottom + 20 }, tick.toPlainDate().toString(), { tone: 'ink' })]
        : []),
    ]
  })
}

/** The line is broken where reports are missing, so that nothing is drawn that nobody measured. */
function meanLines({ observations, gaps: open }: StationWind, { xOf, yOf }: Scale): readonly Mark[] {
  const runs: ChartPoint[][] = [[]]
  let lastMs: number | null = null
  for (const { meanKt, atMs, doubts } of observations) {
    if (meanKt === null || doubts.includes('implausible')) continue
    const from = lastMs
    if (from !== null && open.some((gap) => gap.startMs >= from && gap.endMs <= atMs)) runs.push([])
    runs.at(-1)?.push({ xPt: xOf(atMs), yPt: yOf(meanKt) })
    lastMs = atMs
  }
  return runs.flatMap((points) => {
    const [only] = points
    if (only !== undefined && points.length === 1) return [dot(only)]
    return points.length === 0 ? [] : [line(points, 'mean', { widthPt: 1.4 })]
  })
}

function dot({ xPt, yPt }: ChartPoint): ChartPath {
  return box({ xPt: xPt - 1, yPt: yPt - 1 }, { xPt: xPt + 1, yPt: yPt + 1 }, 'mean')
}

function gustMarks(
  { gustKt, peak, atMs, doubts }: SourcedObservation,
  window: WindWindow,
  { xOf, yOf }: Scale,
): readonly Mark[] {
  if (doubts.includes('implausible')) return []
  const marks: Mark[] = []
  if (gustKt !== null) marks.push(triangle({ xPt: xOf(atMs), yPt: yOf(gustKt) }))
  if (peak !== null && peak.atMs >= window.startMs && peak.atMs < window.endMs) {
    marks.push(diamond({ xPt: xOf(peak.atMs), yPt: yOf(peak.kt) }))
  }
  return marks
}

function triangle({ xPt, yPt }: ChartPoint): ChartPath {
  return shape(
    [
      { xPt, yPt: yPt - 2.6 },
      { xPt: xPt + 2.4, yPt: yPt + 1.8 },
      { xPt: xPt - 2.4, yPt: yPt + 1.8 },
    ],
    'gust',
  )
}

function diamond({ xPt, yPt }: ChartPoint): ChartPath {
  return shape(
    [
      { xPt, yPt: yPt - 3.4 },
      { xPt: xPt + 3.4, yPt },
      { xPt, yPt: yPt + 3.4 },
      { xPt: xPt - 3.4, yPt },
    ],
    'paper',
    'gust',
  )
}

/** Arrows fly with the wind: one from the south points up. Variable winds are small rings of no direction. */
function arrows(observations: readonly SourcedObservation[], { xOf }: Scale): readonly Mark[] {
  const given = observations.filter(({ fromDeg, meanKt }) => fromDeg !== null && meanKt !== 0)
  const every = Math.max(Math.ceil(given.length / MOST_ARROWS), 1)
  return [
    words(
      { xPt: AREA.left, yPt: ARROWS_Y + 20 },
      `Arrows fly with the wind${every > 1 ? `; one for every ${every} reports` : ''}.`,
    ),
    ...given
      .filter((_, index) => index % every === 0)
      .flatMap(({ fromDeg, atMs }) => (fromDeg === null ? [] : arrow({ xPt: xOf(atMs), yPt: ARROWS_Y }, fromDeg))),
  ]
}

function arrow(centre: ChartPoint, fromDeg: number): readonly Mark[] {
  const angle = (fromDeg * Math.PI) / 180
  const along = (share: number, side = 0): ChartPoint => ({
    xPt: centre.xPt - Math.sin(angle) * share + Math.cos(angle) * side,
    yPt: centre.yPt + Math.cos(angle) * share + Math.sin(angle) * side,
  })
  return [
    line([along(-6), along(6)], 'ink', { widthPt: 0.8 }),
    line([along(2.4, 2.4), along(6), along(2.4, -2.4)], 'ink', { widthPt: 0.8 }),
  ]
}

function key(): readonly Mark[] {
  const yPt = 10
  return [
    line(
      [
        { xPt: 60, yPt: yPt - 2.5 },
        { xPt: 74, yPt: yPt - 2.5 },
      ],
      'mean',
      { widthPt: 1.4 },
    ),
    words({ xPt: 78, yPt }, 'mean wind'),
    triangle({ xPt: 132, yPt: yPt - 2.5 }),
    words({ xPt: 138, yPt }, 'gust in a report'),
    diamond({ xPt: 212, yPt: yPt - 2.5 }),
    words({ xPt: 219, yPt }, 'peak wind remark, at its own time'),
    box({ xPt: 350, yPt: yPt - 7 }, { xPt: 360, yPt: yPt + 1 }, 'loss'),
    words({ xPt: 364, yPt }, 'day of loss'),
    box({ xPt: 418, yPt: yPt - 7 }, { xPt: 428, yPt: yPt + 1 }, 'gap'),
    words({ xPt: 432, yPt }, 'no reports'),
  ]
}
