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

/** A chart as the marks that a sheet is drawn from, larger or smaller by `factor`. */
export function chartMarks({ marks }: Chart, factor: number): readonly PlanMark[] {
  const scaled = ({ xPt, yPt }: { xPt: number; yPt: number }) => ({ xPt: xPt * factor, yPt: yPt * factor })
  return marks.map((mark): PlanMark => {
    if (mark.kind === 'text') {
      const { text, align, tone } = mark
      const sizePt = mark.sizePt * factor
      return {
        kind: 'text',
        at: scaled(mark.at),
        text,
        sizePt,
        weight: 'regular',
        align,
        colour: colours[tone],
        onWhite: false,
      }
    }
    const { closed, stroke, fill, dashed } = mark
    const widthPt = mark.widthPt * factor
    const pen = stroke === null ? null : { colour: colours[stroke], widthPt, dashPt: dashed ? [3, 2] : [] }
    return { kind: 'path', points: mark.points.map(scaled), closed, pen, fill: fill === null ? null : colours[fill] }
  })
}
