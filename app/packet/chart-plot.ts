import type { Plot } from '../fieldtest/plots/plot.ts'
import type { PlanMark } from '../roof/plan-sheet/marks.ts'
import type { Chart, ChartTone } from '../weather/chart.ts'

/** Colours of a chart on white paper, darker for stronger wind so that they also differ without colour. */
const colours = {
  ink: '#1b2123',
  quiet: '#525b5b',
  grid: '#d3d8d5',
  loss: '#f5efcf',
  gap: '#e3e6e3',
  mean: '#332288',
  gust: '#882255',
  paper: '#ffffff',
  'speed-1': '#cfd9ea',
  'speed-2': '#9fb3d6',
  'speed-3': '#6c86bd',
  'speed-4': '#434f9e',
  'speed-5': '#24195f',
} as const satisfies Record<ChartTone, string>

/** A chart as a plot on white paper, at its own size. */
export function plotOfChart({ widthPt, heightPt, alt, marks }: Chart): Plot {
  return { widthPt, heightPt, alt, marks: marks.map(markOf) }
}

function markOf(mark: Chart['marks'][number]): PlanMark {
  if (mark.kind === 'text') {
    const { at, text, sizePt, align, tone } = mark
    return { kind: 'text', at, text, sizePt, weight: 'regular', align, colour: colours[tone], onWhite: false }
  }
  const { points, closed, stroke, fill, dashed, widthPt } = mark
  const pen = stroke === null ? null : { colour: colours[stroke], widthPt, dashPt: dashed ? [3, 2] : [] }
  return { kind: 'path', points, closed, pen, fill: fill === null ? null : colours[fill] }
}
