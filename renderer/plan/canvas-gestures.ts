import {
  type MouseEvent as ReactMouseEvent,
  type PointerEvent as ReactPointerEvent,
  type RefObject,
  useEffect,
  useLayoutEffect,
  useMemo,
  useRef,
} from 'react'
import { readCameraHit, readHit } from './plan-hit.ts'
import type { PlanDrawing } from '../../app/roof/plan-drawing.ts'
import type { PlanDrag, PlanPointer, PlanTool } from './plan-tool.ts'
import { toPlan, type ScreenPoint } from './plan-view.ts'
import type { PlanStage } from './use-plan-stage.ts'

/** A press that moves less than this is a click, pixels. */
const CLICK_SLACK_PX = 4
/** How near counts as near, pixels. */
export const REACH_PX = 10

type Gesture =
  | { readonly kind: 'press'; readonly start: ScreenPoint; readonly pointerId: number }
  | { readonly kind: 'pan'; last: ScreenPoint; readonly pointerId: number }
  | {
      readonly kind: 'drag'
      readonly drag: PlanDrag
      readonly start: ScreenPoint
      begun: boolean
      readonly pointerId: number
    }

interface GestureInput {
  readonly stage: PlanStage
  readonly cameras: PlanDrawing['cameras']
  readonly tool: PlanTool
}

/** Turns presses, drags, wheels and pinches over the drawing area into panning, zooming and calls of the present tool. */
export function useCanvasGestures(input: GestureInput) {
  const latest = useRef(input)
  useLayoutEffect(() => {
    latest.current = input
  })
  useWheelZoom(input.stage.area, latest)
  const spaceHeld = useSpaceKey(input.stage.area)
  const gesture = useRef<Gesture | null>(null)
  const touches = useRef(new Map<number, ScreenPoint>())
  return useMemo(() => handlers({ latest, spaceHeld, gesture, touches }), [spaceHeld])
}

interface GestureRefs {
  readonly latest: RefObject<GestureInput>
  readonly spaceHeld: RefObject<boolean>
  readonly gesture: RefObject<Gesture | null>
  readonly touches: RefObject<Map<number, ScreenPoint>>
}

function handlers(refs: GestureRefs) {
  const { latest, gesture, touches } = refs
  return {
    onPointerDown(event: ReactPointerEvent<HTMLElement>) {
      if (isOnControl(event.target)) return
      event.currentTarget.setPointerCapture(event.pointerId)
      const at = screenPoint(event)
      touches.current.set(event.pointerId, at)
      if (touches.current.size > 1) return letGo(refs)
      gesture.current = startGesture(refs, event, at)
    },
    onPointerMove(event: ReactPointerEvent<HTMLElement>) {
      const at = screenPoint(event)
      if (touches.current.size > 1 && touches.current.has(event.pointerId)) return pinch(refs, event.pointerId, at)
      if (touches.current.has(event.pointerId)) touches.current.set(event.pointerId, at)
      if (gesture.current === null) latest.current.tool.onMove?.(planPointer(latest.current, event, at))
      else carryOn(refs, event, at)
    },
    onPointerUp(event: ReactPointerEvent<HTMLElement>) {
      const at = screenPoint(event)
      touches.current.delete(event.pointerId)
      const held = gesture.current
      gesture.current = null
      if (held === null || held.pointerId !== event.pointerId || held.kind === 'pan') return
      const pointer = planPointer(latest.current, event, at)
      if (held.kind === 'drag' && held.begun) held.drag.drop(pointer)
      else {
        if (held.kind === 'drag') held.drag.cancel()
        latest.current.tool.onClick?.(pointer)
      }
    },
    onPointerCancel(event: ReactPointerEvent<HTMLElement>) {
      touches.current.delete(event.pointerId)
      letGo(refs)
    },
    onDoubleClick(event: ReactMouseEvent<HTMLElement>) {
      if (isOnControl(event.target)) return
      latest.current.tool.onDoubleClick?.(planPointer(latest.current, event, screenPoint(event)))
    },
  }
}

function startGesture(refs: GestureRefs, event: ReactPointerEvent<HTMLElement>, at: ScreenPoint): Gesture | null {
  const { pointerId } = event
  if (event.button === 1 || refs.spaceHeld.current) return { kind: 'pan', last: at, pointerId }
  if (event.button !== 0) return null
  const input = refs.latest.current
  const drag = input.tool.grab?.(planPointer(input, event, at)) ?? null
  return drag === null
    ? { kind: 'press', start: at, pointerId }
    : { kind: 'drag', drag, start: at, begun: false, pointerId }
}

function carryOn(refs: GestureRefs, event: ReactPointerEvent<HTMLElement>, at: ScreenPoint): void {
  const held = refs.gesture.current
  if (held === null || held.pointerId !== event.pointerId) return
  const { stage } = refs.latest.current
  switch (held.kind) {
    case 'press':
      if (away(held.start, at) > CLICK_SLACK_PX) {
        stage.pan({ x: at.x - held.start.x, y: at.y - held.start.y })
        refs.gesture.current = { kind: 'pan', last: at, pointerId: held.pointerId }
      }
      return
    case 'pan':
      stage.pan({ x: at.x - held.last.x, y: at.y - held.last.y })
      held.last = at
      return
    case 'drag':
      if (!held.begun && away(held.start, at) <= CLICK_SLACK_PX) return
      held.begun = true
      held.drag.move(planPointer(refs.latest.current, event, at))
  }
}

function pinch({ latest, touches }: GestureRefs, pointerId: number, at: ScreenPoint): void {
  const other = [...touches.current].find(([id]) => id !== pointerId)?.[1]
  const before = touches.current.get(pointerId)
  touches.current.set(pointerId, at)
  if (other === undefined || before === undefined) return
  const middle = (a: ScreenPoint, b: ScreenPoint) => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 })
  const from = middle(before, other)
  const to = middle(at, other)
  const { stage } = latest.current
  stage.pan({ x: to.x - from.x, y: to.y - from.y })
  if (away(before, other) > 0) stage.zoom(away(at, other) / away(before, other), to)
}

function letGo({ gesture }: GestureRefs): void {
  if (gesture.current?.kind === 'drag') gesture.current.drag.cancel()
  gesture.current = null
}

function useWheelZoom(element: HTMLElement | null, latest: RefObject<GestureInput>): void {
  useEffect(() => {
    if (element === null) return undefined
    // React listens to wheels passively, which would let the page scroll or zoom as well.
    const onWheel = (event: WheelEvent) => {
      event.preventDefault()
      const perNotch = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 33 : 1
      const strength = event.ctrlKey ? 0.01 : 0.0015
      latest.current.stage.zoom(Math.exp(-event.deltaY * perNotch * strength), screenPoint(event, element))
    }
    element.addEventListener('wheel', onWheel, { passive: false })
    return () => element.removeEventListener('wheel', onWheel)
  }, [element, latest])
}

function useSpaceKey(area: HTMLElement | null): RefObject<boolean> {
  const held = useRef(false)
  useEffect(() => {
    const set = (event: KeyboardEvent) => {
      if (event.key !== ' ') return
      held.current = event.type === 'keydown' && area?.matches(':hover') === true
    }
    window.addEventListener('keydown', set)
    window.addEventListener('keyup', set)
    return () => {
      window.removeEventListener('keydown', set)
      window.removeEventListener('keyup', set)
    }
  }, [area])
  return held
}

function planPointer(input: GestureInput, event: MouseLike, at: ScreenPoint): PlanPointer {
  const { view } = input.stage
  const place = toPlan(view, at)
  // A captured pointer reports the capturing element as its target: ask what is really there.
  const under = document.elementFromPoint(event.clientX, event.clientY)
  const over = readHit(under) ?? readCameraHit(under, place, input.cameras)
  return { at: place, over, reachFt: REACH_PX / view.scale, free: event.altKey }
}

interface MouseLike {
  readonly clientX: number
  readonly clientY: number
  readonly altKey: boolean
}

function screenPoint(
  event: { clientX: number; clientY: number; currentTarget: EventTarget | null },
  area?: HTMLElement,
): ScreenPoint {
  const element = area ?? event.currentTarget
  if (!(element instanceof HTMLElement)) return { x: 0, y: 0 }
  const box = element.getBoundingClientRect()
  return { x: event.clientX - box.left, y: event.clientY - box.top }
}

function away(a: ScreenPoint, b: ScreenPoint): number {
  return Math.hypot(a.x - b.x, a.y - b.y)
}

function isOnControl(target: EventTarget | null): boolean {
  return target instanceof Element && target.closest('button') !== null
}
