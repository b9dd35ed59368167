import { useMemo } from 'react'
import { CameraMarks } from './camera-marks.tsx'
import { ByHandMarks, EdgeLines } from './edge-lines.tsx'
import { FacetLabels, FacetShapes } from './facet-shapes.tsx'
import { LengthLabels } from './lengths/length-labels.tsx'
import { planLabels } from './lengths/plan-labels.ts'
import { PinLines, PinMarks } from './pin-marks.tsx'
import type { PlanDrawing } from '../../app/roof/plan-drawing.ts'
import type { ShapeState } from './facet-shapes.tsx'
import { TestMarks } from './tested/test-marks.tsx'
import type { PlannedTests } from './tested/planned-tests.ts'
import type { PlanView } from './plan-view.ts'
import { ZoneShapes } from './zones/zone-shapes.tsx'

/** What of the plan belongs to the present selection. */
export interface PlanHighlights {
  readonly facet: (id: string) => ShapeState
  readonly finding: (id: string) => ShapeState
  readonly photo: (id: string) => ShapeState
  readonly reading: (id: string) => ShapeState
}

interface PlanShapesProps {
  readonly drawing: PlanDrawing
  readonly highlights: PlanHighlights
  readonly view: PlanView
  /** True where the lengths of the roof's outside stand beside it. */
  readonly showsLengths?: boolean
  /** Where tiles were tested, when they are to be seen. */
  readonly tests?: PlannedTests | undefined
  /** Where letters and lengths are placed by an earlier state of the drawing, that state. */
  readonly lettersOf?: PlanDrawing | undefined
}

/**
 * The whole drawing, for use inside an SVG. Lines and areas stand in plan feet under one transform; letters, pins and
 * cameras keep their size on the screen and only change place. Panning changes nothing but the two transforms.
 */
export function PlanShapes(props: PlanShapesProps) {
  const { drawing, highlights, view, showsLengths = false, tests, lettersOf = drawing } = props
  const { originX, originY, scale } = view
  const { facets, pins } = drawing
  const labels = useMemo(() => {
    const marks = tests?.readings.map(({ at }) => at) ?? []
    return planLabels(lettersOf, scale, { lengths: showsLengths, marks })
  }, [lettersOf, scale, showsLengths, tests])
  return (
    <>
      <g transform={`translate(${originX} ${originY}) scale(${scale} ${-scale})`}>
        <FacetShapes facets={facets} stateOf={highlights.facet} />
        {drawing.zones === undefined ? null : <ZoneShapes zones={drawing.zones} scale={scale} />}
        <EdgeLines edges={drawing.edges} />
        <PinLines pins={pins} stateOf={highlights.finding} />
      </g>
      <g transform={`translate(${originX} ${originY})`}>
        <CameraMarks cameras={drawing.cameras} stateOf={highlights.photo} scale={scale} />
        <ByHandMarks edges={drawing.edges} scale={scale} />
        <FacetLabels places={labels.facets} />
        <LengthLabels lengths={labels.lengths} />
        {tests === undefined ? null : <TestMarks tests={tests} stateOf={highlights.reading} scale={scale} />}
        <PinMarks pins={pins} stateOf={highlights.finding} scale={scale} />
      </g>
    </>
  )
}
