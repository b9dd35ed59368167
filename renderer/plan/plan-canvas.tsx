import { type CSSProperties, type KeyboardEvent, type ReactNode, useCallback, useEffect, useId } from 'react'
import type { PlanDrawing } from '../../app/roof/plan-drawing.ts'
import { classNames } from '../ui/class-names.ts'
import { CameraMarks } from './camera-marks.tsx'
import { REACH_PX, useCanvasGestures } from './canvas-gestures.ts'
import { moveByArrow } from './canvas-keys.ts'
import { EdgeLines } from './edge-lines.tsx'
import { FacetLabels, FacetShapes, type ShapeState } from './facet-shapes.tsx'
import { PinLines, PinMarks } from './pin-marks.tsx'
import styles from './plan-canvas.module.css'
import type { PlanTool } from './plan-tool.ts'
import { roundLengthFt, toScreen, type PlanView } from './plan-view.ts'
import { FrontMark, Legend, NorthArrow, ScaleBar } from './sheet-furniture.tsx'
import type { PlanStage } from './use-plan-stage.ts'

/** What of the plan belongs to the present selection. */
export interface PlanHighlights {
  readonly facet: (id: string) => ShapeState
  readonly finding: (id: string) => ShapeState
  readonly photo: (id: string) => ShapeState
}

/** The plan as every tool shows it. */
export interface PlanScene {
  readonly stage: PlanStage
  readonly drawing: PlanDrawing
  readonly highlights: PlanHighlights
  readonly showsCameras: boolean
}

interface PlanCanvasProps {
  readonly scene: PlanScene
  readonly tool: PlanTool
  /** What stands under the drawing, such as the panel of a tool. */
  readonly children?: ReactNode
}

/** The roof plan on a sheet that can be moved and zoomed, with the present tool at work on it. */
export function PlanCanvas({ scene, tool, children }: PlanCanvasProps) {
  const { stage, drawing, showsCameras } = scene
  const { area, view, size } = stage
  const hintId = useId()
  const gestures = useCanvasGestures({ stage, tool })
  const wantsKeys = tool.cross !== null
  useEffect(() => {
    if (wantsKeys) area?.focus({ preventScroll: true })
  }, [wantsKeys, area])
  const onKeyDown = useCallback(
    (event: KeyboardEvent<HTMLDivElement>) => moveByArrow(event, { stage, tool }),
    [stage, tool],
  )
  return (
    <div className={styles['frame']}>
      <div className={styles['sheet']}>
        {/* oxlint-disable jsx-a11y/no-noninteractive-tabindex, jsx-a11y/no-noninteractive-element-interactions -- a drawing sheet is worked by pointer and arrow keys; "application" is the role for that */}
        <div
          ref={stage.setArea}
          role="application"
          tabIndex={0}
          aria-label="Roof plan"
          aria-describedby={hintId}
          className={classNames(styles['area'], styles[tool.cursor])}
          style={gridStyle(view)}
          onKeyDown={onKeyDown}
          {...gestures}
        >
          <p id={hintId} className={styles['hidden']}>
            {tool.cross === null
              ? 'Arrow keys move the sheet, plus and minus zoom, 0 shows the whole roof. Facets and findings are also listed in tables.'
              : 'Arrow keys move the cross, with Shift in larger steps; Space puts a corner or pin there.'}
          </p>
          <svg className={styles['svg']} width={size.width} height={size.height} aria-hidden="true">
            <PlanShapes scene={scene} />
            <FrontMark drawing={drawing} view={view} />
            {tool.overlay?.(view)}
            <Cross tool={tool} view={view} />
          </svg>
          {tool.handles?.(view)}
        </div>
        {/* oxlint-enable jsx-a11y/no-noninteractive-tabindex, jsx-a11y/no-noninteractive-element-interactions */}
        <div className={styles['furniture']}>
          <ScaleBar view={view} />
          <Legend drawing={drawing} showsCameras={showsCameras} />
        </div>
        <NorthArrow upAzimuthDeg={drawing.upAzimuthDeg} />
      </div>
      {children}
    </div>
  )
}

/** Everything of the plan that moves and scales with the view: one transform, and shapes that don't know of it. */
function PlanShapes({ scene }: { scene: PlanScene }) {
  const { stage, drawing, highlights, showsCameras } = scene
  const { view } = stage
  return (
    <g
      transform={`translate(${view.originX} ${view.originY}) scale(${view.scale} ${-view.scale})`}
      style={perPixelStyle(view)}
    >
      <FacetShapes facets={drawing.facets} stateOf={highlights.facet} />
      <EdgeLines edges={drawing.edges} />
      <PinLines pins={drawing.pins} stateOf={highlights.finding} />
      {showsCameras ? <CameraMarks cameras={drawing.cameras} stateOf={highlights.photo} /> : null}
      <FacetLabels facets={drawing.facets} pins={drawing.pins} scale={view.scale} />
      <PinMarks pins={drawing.pins} stateOf={highlights.finding} />
    </g>
  )
}

function Cross({ tool, view }: { tool: PlanTool; view: PlanView }) {
  if (tool.cross?.at === null || tool.cross === null) return null
  const at = toScreen(view, tool.cross.at)
  return (
    <path
      className={styles['cross']}
      d={`M${at.x - REACH_PX} ${at.y}H${at.x + REACH_PX}M${at.x} ${at.y - REACH_PX}V${at.y + REACH_PX}`}
    />
  )
}

/** Shapes of a fixed size on the screen shrink by this, so that zooming changes one number and no shape. */
function perPixelStyle(view: PlanView): CSSProperties {
  return { ['--per-pixel' as string]: String(1 / view.scale) }
}

const LEAST_GRID_PX = 26

function gridStyle(view: PlanView): CSSProperties {
  const fine = gridStepFt(view) * view.scale
  const coarse = fine * 5
  return {
    backgroundSize: `${coarse}px ${coarse}px, ${coarse}px ${coarse}px, ${fine}px ${fine}px, ${fine}px ${fine}px`,
    backgroundPosition: `${view.originX}px ${view.originY}px`,
  }
}

/** Spacing of the grid's fine lines, feet: a round length that keeps them readably apart. */
function gridStepFt(view: PlanView): number {
  return roundLengthFt(view, LEAST_GRID_PX * 2.5)
}
