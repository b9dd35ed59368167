import type { Plot } from '../../app/fieldtest/plots/plot.ts'
import type { PlanMark } from '../../app/roof/plan-sheet/marks.ts'
import styles from './field-tests.module.css'

/** A plot as the packet prints it, on white paper in either theme. */
export function PlotFigure({ plot, legend }: { plot: Plot; legend: string }) {
  return (
    <figure className={styles['figure']}>
      <svg viewBox={`0 0 ${plot.widthPt} ${plot.heightPt}`} role="img" aria-label={plot.alt}>
        {plot.marks.map((mark, i) => (
          <Mark key={i} mark={mark} />
        ))}
      </svg>
      <figcaption className={styles['quiet']}>{legend}</figcaption>
    </figure>
  )
}

function Mark({ mark }: { mark: PlanMark }) {
  switch (mark.kind) {
    case 'path': {
      const points = mark.points.map(({ xPt, yPt }) => `${xPt},${yPt}`).join(' ')
      return mark.closed ? <polygon points={points} {...paint(mark)} /> : <polyline points={points} {...paint(mark)} />
    }
    case 'pill':
      return (
        <rect
          x={mark.at.xPt - mark.halfWidthPt}
          y={mark.at.yPt - mark.halfHeightPt}
          width={mark.halfWidthPt * 2}
          height={mark.halfHeightPt * 2}
          rx={mark.halfHeightPt}
          {...paint(mark)}
        />
      )
    case 'text':
      return (
        <text
          x={mark.at.xPt}
          y={mark.at.yPt}
          fontSize={mark.sizePt}
          textAnchor={mark.align}
          fill={mark.colour}
          fontWeight={mark.weight === 'strong' ? 600 : 400}
        >
          {mark.text}
        </text>
      )
  }
}

function paint({ pen, fill }: Extract<PlanMark, { kind: 'path' | 'pill' }>) {
  return {
    fill: fill ?? 'none',
    ...(pen === null ? {} : { stroke: pen.colour, strokeWidth: pen.widthPt, strokeDasharray: pen.dashPt.join(' ') }),
  }
}
