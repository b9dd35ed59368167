import { type CSSProperties, type KeyboardEvent, type ReactNode, useCallback, useEffect, useId } from 'react'
import type { PlanDrawing } from '../../app/roof/plan-drawing.ts'
import { classNames } from '../ui/class-names.ts'
import { IconButton } from '../ui/icon-button.tsx'
import { REACH_PX, useCanvasGestures } from './canvas-gestures.ts'
import { moveByArrow } from './canvas-keys.ts'
import styles from './plan-canvas.module.css'
import { DoorSign } from './door/door-sign.tsx'
import shapes from './plan-shapes.module.css'
import { type PlanHighlights, PlanShapes } from './plan-shapes.tsx'
import type { PlanTool } from './plan-tool.ts'
import { roundLengthFt, toScreen, type PlanView } from './plan-view.ts'
import type { PlannedTests } from './tested/planned-tests.ts'
import { FrontMark, Legend, NorthArrow, ScaleBar } from './sheet-furniture.tsx'
import { UnderlayCaption, UnderlayPicture } from './underlay/underlay-picture.tsx'
import { type Underlay, useUnderlay } from './underlay/use-underlay.ts'
import type { PlanStage } from './use-plan-stage.ts'

/** The plan as every tool shows it. */
export interface PlanScene {
  readonly stage: PlanStage
  readonly drawing: PlanDrawing
  readonly highlights: PlanHighlights
  /** True where the lengths of the roof's outside stand beside it. */
  readonly showsLengths: boolean
  /** Where tiles were tested, when they are to be seen. */
  readonly tests?: PlannedTests | undefined
  /** While a hand changes the roof: the state of the drawing by which its letters are placed. */
  readonly lettersOf?: PlanDrawing
}

interface PlanCanvasProps {
  readonly scene: PlanScene
  readonly tool: PlanTool
  /** What stands under the drawing, such as the panel of a tool. */
  readonly children?: ReactNode
}

/** The roof plan on a sheet that can be moved and zoomed, with the present tool at work on it. */
export function PlanCanvas({ scene, tool, children }: PlanCanvasProps) {
  const { stage, drawing } = scene
  const { view } = stage
  const underlay = useUnderlay(tool.underlay)
  return (
    <div className={styles['frame']}>
      <div className={styles['sheet']}>
        <DrawingArea scene={scene} tool={tool} underlay={underlay} />
        <UnderlayCaption underlay={underlay} />
        <div className={styles['furniture']}>
          <ScaleBar view={view} />
          <Legend drawing={drawing} tests={scene.tests} />
        </div>
        <div className={styles['corner']}>
          <NorthArrow upAzimuthDeg={drawing.upAzimuthDeg} />
          <ZoomButtons stage={stage} />
        </div>
      </div>
      {children}
    </div>
  )
}

interface DrawingAreaProps {
  readonly scene: PlanScene
  readonly tool: PlanTool
  readonly underlay: Underlay | null
}

function DrawingArea({ scene, tool, underlay }: DrawingAreaProps) {
  const { stage, drawing, highlights } = scene
  const { area, view, size } = stage
  const hintId = useId()
  const gestures = useCanvasGestures({ stage, tool, cameras: drawing.cameras })
  const wantsKeys = tool.cross !== null
  useEffect(() => {
    if (wantsKeys) area?.focus({ preventScroll: true })
  }, [wantsKeys, area])
  const onKeyDown = useCallback(
    (event: KeyboardEvent<HTMLDivElement>) => moveByArrow(event, { stage, tool }),
    [stage, tool],
  )
  return (
    // oxlint-disable-next-line jsx-a11y/no-noninteractive-element-interactions -- a drawing sheet is worked by pointer and arrow keys, and "application" is the role for that
    <div
      ref={stage.setArea}
      role="application"
      // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- as above
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
      <svg
        className={classNames(styles['svg'], underlay !== null && !underlay.isMissing && shapes['overImage'])}
        width={size.width}
        height={size.height}
        aria-hidden="true"
      >
        <UnderlayPicture underlay={underlay} view={view} />
        <PlanShapes
          drawing={drawing}
          highlights={highlights}
          view={view}
          showsLengths={scene.showsLengths}
          tests={scene.tests}
          lettersOf={scene.lettersOf}
        />
        <FrontMark drawing={drawing} view={view} />
        <DoorSign drawing={drawing} view={view} />
        {tool.overlay?.(view)}
        <Cross tool={tool} view={view} />
      </svg>
      {tool.handles?.(view)}
    </div>
  )
}

const ZOOM_STEP = 1.4

function ZoomButtons({ stage }: { stage: PlanStage }) {
  return (
    <>
      <IconButton icon="plus" label="Zoom in" keys="+" onPress={() => stage.zoom(ZOOM_STEP)} />
      <IconButton icon="minus" label="Zoom out" keys="-" onPress={() => stage.zoom(1 / ZOOM_STEP)} />
      <IconButton icon="fit" label="Show the whole roof" keys="0" onPress={stage.fit} />
    </>
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

/** The grid's fine lines are at least this far apart, pixels. */
const LEAST_GRID_PX = 26

function gridStyle(view: PlanView): CSSProperties {
  const fine = roundLengthFt(view, LEAST_GRID_PX * 2.5) * view.scale
  const coarse = fine * 5
  return {
    backgroundSize: `${coarse}px ${coarse}px, ${coarse}px ${coarse}px, ${fine}px ${fine}px, ${fine}px ${fine}px`,
    backgroundPosition: `${view.originX}px ${view.originY}px`,
  }
}
