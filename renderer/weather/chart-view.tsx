import type { Chart } from '../../app/weather/chart.ts'
import styles from './chart-view.module.css'

/** A chart of the weather, drawn in the colours of the theme. */
export function ChartView({ chart }: { chart: Chart }) {
  return (
    <svg
      className={styles['chart']}
      viewBox={`0 0 ${chart.widthPt} ${chart.heightPt}`}
      style={{ maxWidth: chart.widthPt * 1.6 }}
      role="img"
      aria-label={chart.alt}
    >
      {chart.marks.map((mark, index) =>
        mark.kind === 'text' ? (
          <text
            key={index}
            x={mark.at.xPt}
            y={mark.at.yPt}
            fontSize={mark.sizePt}
            textAnchor={mark.align}
            fill={`var(--chart-${mark.tone})`}
          >
            {mark.text}
          </text>
        ) : (
          <path
            key={index}
            d={`M${mark.points.map(({ xPt, yPt }) => `${xPt.toFixed(2)} ${yPt.toFixed(2)}`).join('L')}${mark.closed ? 'Z' : ''}`}
            fill={mark.fill === null ? 'none' : `var(--chart-${mark.fill})`}
            stroke={mark.stroke === null ? 'none' : `var(--chart-${mark.stroke})`}
            strokeWidth={mark.widthPt}
            strokeLinejoin="round"
            {...(mark.dashed ? { strokeDasharray: '3 2' } : {})}
          />
        ),
      )}
    </svg>
  )
}
