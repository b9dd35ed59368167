import { chartMarks } from '../../../../app/packet/chart-marks.ts'
import type { ChartContent } from '../measure/strip-content.ts'
import { drawMarks } from './draw-plan.ts'
import type { Pen, Spot } from './pen.ts'

/** Draws a chart as one figure with words of its own. */
export function drawChart(pen: Pen, { chart, factor }: ChartContent, spot: Spot): void {
  const corner: [number, number] = [spot.xPt, spot.yPt]
  const box: [number, number, number, number] = [
    ...corner,
    spot.xPt + chart.widthPt * factor,
    spot.yPt + chart.heightPt * factor,
  ]
  pen.tags.inside('Figure', { alt: chart.alt, bbox: box }, () => {
    pen.tags.content(() => drawMarks(pen, chartMarks(chart, factor), spot))
  })
}
