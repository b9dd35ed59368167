import { type KeyboardEvent, type PointerEvent, useRef } from 'react'
import type { PlanPoint } from '../../app/job/places.ts'
import { classNames } from '../ui/class-names.ts'
import { REACH_PX } from './canvas-gestures.ts'
import styles from './plan-overlay.module.css'
import { toPlan, toScreen, type PlanView } from './plan-view.ts'

const CLICK_SLACK_PX = 3
const STEP_FT = 0.5

/** Where a handle was taken to, and how near counts as near. */
export interface HandleMove {
  readonly at: PlanPoint
  readonly reachFt: number
  /** True while Alt is held: the place is meant as it is. */
  readonly free: boolean
}

interface DragHandleProps {
  readonly label: string
  readonly at: PlanPoint
  readonly view: PlanView
  readonly look: 'corner' | 'insert' | 'move'
  readonly picked?: boolean
  readonly onMove: (move: HandleMove) => void
  readonly onDrop: () => void
  /** A press without a drag, or Enter. */
  readonly onPress: () => void
  readonly onRemove?: () => void
}

/** A grip on the plan: dragged by the pointer, moved by arrow keys, pressed by Enter, removed by Delete. */
export function DragHandle(props: DragHandleProps) {
  const { label, at, view, look, picked = false, onDrop, onPress } = props
  const held = useRef<{ x: number; y: number; moved: boolean } | null>(null)
  const place = toScreen(view, at)
  function onPointerMove(event: PointerEvent<HTMLButtonElement>) {
    const grip = held.current
    if (grip === null) return
    if (Math.hypot(event.clientX - grip.x, event.clientY - grip.y) > CLICK_SLACK_PX) grip.moved = true
    if (grip.moved) props.onMove(handleMove(event, view))
  }
  return (
    <button
      type="button"
      aria-label={label}
      className={classNames(styles['handle'], lookClass(look), picked && styles['handlePicked'])}
      style={{ left: place.x, top: place.y }}
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId)
        held.current = { x: event.clientX, y: event.clientY, moved: false }
      }}
      onPointerMove={onPointerMove}
      onPointerUp={() => {
        if (held.current?.moved === true) onDrop()
        else if (held.current !== null) onPress()
        held.current = null
      }}
      onKeyDown={(event) => onHandleKey(event, props)}
      onBlur={onDrop}
    />
  )
}

function lookClass(look: DragHandleProps['look']): string | undefined {
  if (look === 'insert') return styles['insertHandle']
  return look === 'move' ? styles['moveHandle'] : undefined
}

function handleMove(event: PointerEvent<HTMLElement>, view: PlanView): HandleMove {
  const box = event.currentTarget.parentElement?.getBoundingClientRect()
  const screen = { x: event.clientX - (box?.left ?? 0), y: event.clientY - (box?.top ?? 0) }
  return { at: toPlan(view, screen), reachFt: REACH_PX / view.scale, free: event.altKey }
}

const arrows: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
}

function onHandleKey(
  event: KeyboardEvent<HTMLElement>,
  { at, onMove, onDrop, onPress, onRemove }: DragHandleProps,
): void {
  const arrow = arrows[event.key]
  if (arrow !== undefined) {
    const stepFt = event.shiftKey ? STEP_FT * 10 : event.altKey ? 1 / 12 : STEP_FT
    event.preventDefault()
    onMove({ at: { xFt: at.xFt + arrow[0] * stepFt, yFt: at.yFt + arrow[1] * stepFt }, reachFt: 0, free: true })
  } else if (event.key === 'Enter') {
    event.preventDefault()
    onDrop()
    onPress()
  } else if ((event.key === 'Delete' || event.key === 'Backspace') && onRemove !== undefined) {
    event.preventDefault()
    event.stopPropagation()
    onRemove()
  }
}
