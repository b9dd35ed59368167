import type { KeyboardEvent } from 'react'
import type { PlanPoint } from '../../app/job/places.ts'
import type { PlanTool } from './plan-tool.ts'
import { toPlan, type ScreenPoint } from './plan-view.ts'
import type { PlanStage } from './use-plan-stage.ts'

const PAN_PX = 60
const ZOOM_STEP = 1.25
/** The keyboard's cross moves by half a foot, by five feet with Shift, by an inch with Alt. */
const CROSS_STEP_FT = 0.5

const arrows: Readonly<Record<string, { readonly x: number; readonly y: number }>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: 1 },
  ArrowDown: { x: 0, y: -1 },
}

interface KeyInput {
  readonly stage: PlanStage
  readonly tool: PlanTool
}

/** What the keys do while the sheet itself has the focus: pan, zoom, or move and place the tool's cross. */
export function moveByArrow(event: KeyboardEvent<HTMLElement>, { stage, tool }: KeyInput): void {
  if (event.target !== event.currentTarget || event.ctrlKey || event.metaKey) return
  const arrow = arrows[event.key]
  if (arrow !== undefined) {
    event.preventDefault()
    if (tool.cross === null) stage.pan({ x: -arrow.x * PAN_PX, y: arrow.y * PAN_PX })
    else tool.cross.onMove(steppedCross(tool.cross.at ?? middleOfSheet(stage), arrow, event))
    return
  }
  if (event.key === ' ' && tool.cross !== null) {
    event.preventDefault()
    tool.cross.onPlace()
  } else if (event.key === '+' || event.key === '=') stage.zoom(ZOOM_STEP)
  else if (event.key === '-') stage.zoom(1 / ZOOM_STEP)
  else if (tool.onDigit !== undefined && /^[0-9.]$/.test(event.key)) {
    event.preventDefault()
    tool.onDigit(event.key)
  } else if (event.key === '0') stage.fit()
}

function steppedCross(from: PlanPoint, arrow: ScreenPoint, keys: { shiftKey: boolean; altKey: boolean }): PlanPoint {
  const stepFt = keys.shiftKey ? CROSS_STEP_FT * 10 : keys.altKey ? 1 / 12 : CROSS_STEP_FT
  return { xFt: from.xFt + arrow.x * stepFt, yFt: from.yFt + arrow.y * stepFt }
}

function middleOfSheet({ view, size }: PlanStage): PlanPoint {
  const middle = toPlan(view, { x: size.width / 2, y: size.height / 2 })
  return {
    xFt: Math.round(middle.xFt / CROSS_STEP_FT) * CROSS_STEP_FT,
    yFt: Math.round(middle.yFt / CROSS_STEP_FT) * CROSS_STEP_FT,
  }
}
