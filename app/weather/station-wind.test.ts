import { describe, expect, it } from 'vitest'
import type { Observation } from './observation.ts'
import { stationWinds } from './station-wind.ts'
import { countWinds } from './wind-counts.ts'
import { weatherSourceSchema, weatherStationSchema, weatherChoicesSchema, type JobWeather } from './weather-records.ts'
import { windPlot } from './wind-plot.ts'
import { windRose } from './wind-rose.ts'
import { windWindow } from './wind-window.ts'

const zone = 'America/New_York'
const window = windWindow('2026-11-04', { zone, hoursBefore: 2, hoursAfter: 2 })

function report(time: string, given: Partial<Observation> = {}): Observation {
  return {
    station: 'PIER',
    atMs: Date.parse(`2026-11-${time}Z`),
    line: 1,
    fromDeg: 200,
    isVariable: false,
    between: null,
    meanKt: 20,
    gustKt: null,
    peak: null,
    doubts: [],
    ...given,
  }
}

function weatherOf(observations: readonly Observation[]): JobWeather {
  return {
    stations: [weatherStationSchema.parse({ id: 'station-1', code: 'PIER' })],
    sources: [
      weatherSourceSchema.parse({
        id: 'source-1',
        attachmentId: null,
        fileName: '',
        sha256: '',
        choices: null,
        averaging: 'two-minute',
        observations,
      }),
    ],
    choices: weatherChoicesSchema.parse({}),
  }
}

function windOf(observations: readonly Observation[]) {
  const [wind] = stationWinds(weatherOf(observations), window)
  if (wind === undefined) throw new Error('no station')
  return wind
}

describe('the window around the day of loss', () => {
  it('goes by local midnights, and a day on which clocks change has 25 hours', () => {
    expect(new Date(window.lossStartMs).toISOString()).toBe('2026-11-04T05:00:00.000Z')
    const change = windWindow('2026-11-01', { zone, hoursBefore: 0, hoursAfter: 0 })
    expect((change.endMs - change.startMs) / 3_600_000).toBe(25)
  })
})

describe('the wind of a station', () => {
  it('takes the highest of gusts and peak remarks, with the time and direction that belong to it', () => {
    const wind = windOf([
      report('04T20:53', { gustKt: 41 }),
      report('04T21:53', {
        meanKt: 30,
        gustKt: 44,
        peak: { kt: 52, fromDeg: 190, atMs: Date.parse('2026-11-04T21:20Z') },
      }),
    ])
    expect(wind.peakGust).toMatchObject({
      kt: 52,
      fromDeg: 190,
      by: 'peak-remark',
      atMs: Date.parse('2026-11-04T21:20Z'),
    })
    expect(wind.peakMean).toMatchObject({ kt: 30, by: 'mean' })
  })

  it('leaves out what lies outside the window, a remark by its own time and not its report', () => {
    const before = Date.parse('2026-11-04T02:50Z')
    const wind = windOf([
      report('04T02:00', { gustKt: 90 }),
      report('04T03:10', { gustKt: 30, peak: { kt: 80, fromDeg: 190, atMs: before } }),
    ])
    expect(wind.observations).toHaveLength(1)
    expect(wind.peakGust?.kt).toBe(30)
  })

  it('does not count a speed that can not be meant, and says how many are in doubt', () => {
    const wind = windOf([
      report('04T20:00', { gustKt: 300, doubts: ['implausible'] }),
      report('04T21:00', { gustKt: 40 }),
    ])
    expect([wind.peakGust?.kt, wind.doubtful]).toEqual([40, 1])
  })

  it('says where reports and gusts are missing', () => {
    const hours = Array.from({ length: 8 }, (_, hour) => report(`04T0${hour + 1}:53`))
    const wind = windOf([...hours.slice(0, 3), report('04T12:00', { meanKt: null }), report('04T20:00')])
    expect(wind.withoutGust).toBe(wind.observations.length)
    expect(wind.withoutMean).toBe(1)
    expect(wind.gaps).toHaveLength(2)
    expect(new Date(wind.gaps[0]?.startMs ?? 0).toISOString()).toBe('2026-11-04T03:53:00.000Z')
  })
})

describe('winds by direction', () => {
  it('counts every report once; calm, variable and missing ones apart', () => {
    const rows = [
      report('04T10:00', { fromDeg: 360 }),
      report('04T11:00', { fromDeg: 5 }),
      report('04T12:00', { fromDeg: 225, meanKt: 35 }),
      report('04T13:00', { fromDeg: null, isVariable: true, meanKt: 4 }),
      report('04T14:00', { fromDeg: null, meanKt: 0 }),
      report('04T15:00', { meanKt: null }),
    ]
    const counts = countWinds(rows)
    expect(counts.bySector[0]).toEqual([0, 0, 2, 0, 0])
    expect(counts.bySector[10]).toEqual([0, 0, 0, 1, 0])
    expect([counts.calm, counts.variable, counts.notGiven, counts.total]).toEqual([1, 1, 1, 6])
  })
})

describe('charts', () => {
  it('stay inside their frame and break the line at a gap', () => {
    const wind = windOf([
      report('04T06:00'),
      report('04T07:00'),
      report('04T12:00'),
      report('04T13:00', { gustKt: 60 }),
    ])
    for (const chart of [windPlot(wind, window, zone), windRose(wind)]) {
      for (const mark of chart.marks) {
        const points = mark.kind === 'path' ? mark.points : [mark.at]
        for (const { xPt, yPt } of points) {
          expect(xPt >= 0 && xPt <= chart.widthPt && yPt >= 0 && yPt <= chart.heightPt).toBe(true)
        }
      }
    }
    const lines = windPlot(wind, window, zone).marks.filter(
      (mark) =>
        mark.kind === 'path' && mark.stroke === 'mean' && mark.points.length === 2 && mark.points[0]?.xPt !== 60,
    )
    expect(lines).toHaveLength(2)
  })
})
