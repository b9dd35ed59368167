import { memo } from 'react'
import type { MarkShape } from '../../../app/evidence/markup-drawing.ts'

/** Shapes of marks inside an SVG whose units are pixels of the original. */
export const MarkShapes = memo(function MarkShapes({ shapes }: { shapes: readonly MarkShape[] }) {
  return shapes.map((shape, index) =>
    shape.kind === 'path' ? <PathShape key={index} shape={shape} /> : <TextShape key={index} shape={shape} />,
  )
})

function PathShape({ shape }: { shape: Extract<MarkShape, { kind: 'path' }> }) {
  const { points, closed, fill, stroke } = shape
  const steps = points.map(({ xPx, yPx }, i) => `${i === 0 ? 'M' : 'L'}${xPx.toFixed(1)} ${yPx.toFixed(1)}`).join('')
  const isDashed = stroke !== null && stroke.dashPx.length > 0
  return (
    <path
      d={`${steps}${closed ? 'Z' : ''}`}
      fill={fill ?? 'none'}
      stroke={stroke?.colour ?? 'none'}
      strokeWidth={stroke?.widthPx ?? 0}
      strokeDasharray={isDashed ? stroke.dashPx.join(' ') : undefined}
      strokeLinecap={isDashed ? 'butt' : 'round'}
      strokeLinejoin="round"
    />
  )
}

function TextShape({ shape }: { shape: Extract<MarkShape, { kind: 'text' }> }) {
  const { at, align, text, sizePx, colour, edge } = shape
  return (
    <text
      x={at.xPx}
      y={at.yPx}
      fontSize={sizePx}
      fontWeight={600}
      textAnchor={align}
      fill={colour}
      stroke={edge.colour}
      strokeWidth={edge.widthPx}
      strokeLinejoin="round"
      paintOrder="stroke"
    >
      {text}
    </text>
  )
}
