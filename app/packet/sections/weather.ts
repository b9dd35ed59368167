import { directionWords } from '../../weather/direction-words.ts'
import { contextCautions, contextFigures } from '../../weather/context-figures.ts'
import { jobWind, type PlacedWind } from '../../weather/job-wind.ts'
import { stationDoubles } from '../../weather/station-doubles.ts'
import { windPlot } from '../../weather/wind-plot.ts'
import { windRose } from '../../weather/wind-rose.ts'
import type { WindWindow } from '../../weather/wind-window.ts'
import {
  completenessWords,
  gapWords,
  peakKindWords,
  peakWords,
  placeInSource,
  scaleWords,
  sourceWords,
  windTimeWords,
} from '../../weather/wind-words.ts'
import { plotOfChart } from '../chart-plot.ts'
import type { Block, FactsBlock, Section, TableBlock } from '../document.ts'
import { shortHash } from '../format/files.ts'
import type { PacketContext } from '../packet-context.ts'
import { plain } from '../text.ts'
import { column, heading, paragraph, titledSection } from './section.ts'

/** Stations that have a plot of their own; all are in the table. */
const MOST_PLOTTED = 3

/** What stations measured around the day of loss, where it comes from, and figures of the standard as context. */
export function weatherSection(context: PacketContext): Section | null {
  const { caseFile } = context.input
  if (caseFile.weather.stations.length === 0) return null
  const wind = jobWind(caseFile, context.zone)
  if (wind === null) {
    return titledSection('weather', 'Weather', [
      paragraph('The job sheet states no date of loss, so no window of time can be looked at.'),
      ...sourcesOf(context),
    ])
  }
  const reported = wind.stations.filter((one) => one.wind.observations.length > 0)
  return titledSection('weather', 'Weather', [
    paragraph(windowWords(wind.window, context.zone)),
    stationTable(wind.stations),
    ...stationDoubles(caseFile.weather.stations).map((sentence) => paragraph(sentence, 'caution')),
    peakTable(reported, context.zone),
    paragraph(
      'A gust is the highest short average, a mean wind an average over minutes; the two are not compared. Stations measure where they stand, not at the property.',
      'small',
    ),
    ...reported.slice(0, MOST_PLOTTED).flatMap((one) => plots(one, wind.window, context)),
    ...sourcesOf(context),
    ...contextBlocks(context),
  ])
}

function windowWords({ startMs, endMs }: WindWindow, zone: string): string {
  return `Looked at from ${windTimeWords(startMs, zone)} to ${windTimeWords(endMs, zone)}. Directions are where the wind came from, by true north.`
}

function stationTable(stations: readonly PlacedWind[]): TableBlock {
  return {
    kind: 'table',
    summary: 'Stations, their distance from the property, and how complete their reports are',
    columns: [
      column('Station', 2.4),
      column('From the property', 1.7),
      column('Elevation, ft', 0.9, 'end'),
      column('Instrument height, ft', 1.1, 'end'),
      column('Reports in the window', 2),
      column('Without reports', 1.8),
    ],
    rows: stations.map(({ wind, distance }) => {
      const { code, name, elevationFt, anemometerHeightFt } = wind.station
      const figure = (value: number | null) => plain(value === null ? 'not stated' : value.toFixed(0))
      return {
        cells: [
          [{ text: code, style: 'strong' }, ...plain(name === '' ? '' : ` ${name}`)],
          plain(
            distance === null
              ? 'place not known'
              : `${distance.miles.toFixed(1)} mi, ${directionWords({ fromDeg: Math.round(distance.bearingDeg), isVariable: false })}`,
          ),
          figure(elevationFt),
          figure(anemometerHeightFt),
          plain(completenessWords(wind)),
          plain(gapWords(wind.gaps)),
        ],
      }
    }),
  }
}

function peakTable(stations: readonly PlacedWind[], zone: string): TableBlock {
  return {
    kind: 'table',
    summary: 'Highest gust and highest mean wind of each station in the window',
    columns: [
      column('Station', 0.9),
      column('Highest', 2.2),
      column('What it is', 2),
      column('When', 1.7),
      column('Where it stands', 2.2),
    ],
    rows: stations.flatMap(({ wind }) =>
      [wind.peakGust, wind.peakMean].flatMap((peak) => {
        if (peak === null) return []
        const kind = peakKindWords(peak)
        return [
          {
            cells: [
              [{ text: wind.station.code, style: 'strong' as const }],
              plain(peakWords(peak)),
              plain(peak.by === 'mean' ? `${kind}; ${scaleWords(peak)}` : kind),
              plain(windTimeWords(peak.atMs, zone)),
              plain(placeInSource(peak)),
            ],
          },
        ]
      }),
    ),
  }
}

function plots({ wind }: PlacedWind, window: WindWindow, context: PacketContext): readonly Block[] {
  const { code, name } = wind.station
  return [
    {
      kind: 'group',
      blocks: [
        heading(name === '' ? code : `${code}, ${name}`),
        { kind: 'plot', plot: plotOfChart(windPlot(wind, window, context.zone)) },
      ],
    },
    { kind: 'plot', plot: plotOfChart(windRose(wind)) },
  ]
}

function sourcesOf({ input }: PacketContext): readonly Block[] {
  return [
    heading('Where the observations come from'),
    {
      kind: 'list',
      items: input.caseFile.weather.sources.map((source) => [
        ...plain(sourceWords(source)),
        ...(source.sha256 === ''
          ? []
          : [
              ...plain(' SHA-256 '),
              { text: shortHash(source.sha256), style: 'mono' as const },
              ...plain(', whole in Custody.'),
            ]),
      ]),
    },
  ]
}

function contextBlocks({ sheet, input }: PacketContext): readonly Block[] {
  const { choices } = input.caseFile.weather
  const { figures, momentLacks } = contextFigures(sheet, choices)
  if (figures.length === 0) return []
  const rows = figures.flatMap(({ edition, pressure, moment }): FactsBlock['rows'] => [
    { label: `ASCE ${edition}`, value: plain(pressure.formula), wide: true },
    { label: 'Velocity pressure', value: plain(pressure.working), wide: true },
    ...(moment === null
      ? []
      : [
          { label: 'Uplift moment', value: plain(moment.formula), wide: true as const },
          { label: 'On one tile', value: plain(moment.working), wide: true as const },
          ...moment.outside.map((sentence) => ({
            label: 'Outside its use',
            value: plain(sentence),
            wide: true as const,
          })),
        ]),
  ])
  const speed = choices.speedMph === null ? '' : `${choices.speedMph.toFixed(0)} mph`
  return [
    heading('Figures of the wind standard, as context'),
    paragraph(
      `For a 3-second gust of ${speed}${choices.speedSource === '' ? ', its source not stated' : ` (${choices.speedSource})`}, exposure ${choices.exposure ?? ''}, mean roof height ${sheet.property.meanRoofHeightFt ?? 0} ft.${sheet.property.windEdition === null ? ' The sheet names no edition, so all three are shown.' : ''}`,
    ),
    { kind: 'facts', columns: 1, rows },
    ...(momentLacks.length === 0 ? [] : [paragraph(`No uplift moment is given. ${momentLacks.join(' ')}`, 'small')]),
    ...contextCautions.map((sentence) => paragraph(sentence, 'caution')),
  ]
}
