import { useCallback, useEffect, useLayoutEffect, useMemo, useRef, useState } from 'react'
import type { PlanBounds } from '../../app/roof/plan-drawing.ts'
import { fittedView, pannedView, type PlanView, type ScreenPoint, type ScreenSize, zoomedView } from './plan-view.ts'

/** Room at the foot of the sheet for the scale bar and the legend, pixels. */
const FOOT_PX = 44

/** The drawing area and what part of the plan is in sight there. It outlives a change of tool. */
export interface PlanStage {
  readonly area: HTMLElement | null
  /** Given to the drawing area as its ref. */
  readonly setArea: (area: HTMLElement | null) => void
  readonly view: PlanView
  readonly size: ScreenSize
  /** Shows the whole plan. */
  fit(): void
  zoom(factor: number, at?: ScreenPoint): void
  pan(by: ScreenPoint): void
  /** Leaves the plan where it is from now on, because somebody works on it. */
  keep(): void
}

/**
 * Keeps what part of the plan is in sight. The plan is fitted once the drawing area has a size, again when its size or
 * the plan changes while nobody has moved it, and on demand.
 */
export function usePlanStage(bounds: PlanBounds): PlanStage {
  const [area, setArea] = useState<HTMLElement | null>(null)
  const [size, setSize] = useState<ScreenSize>({ width: 0, height: 0 })
  const [view, setView] = useState<PlanView>({ scale: 8, originX: 0, originY: 0 })
  const moved = useRef(false)
  const latest = useRef({ bounds, size })
  useEffect(() => {
    latest.current = { bounds, size }
  })
  useLayoutEffect(() => {
    if (area === null) return undefined
    const watcher = new ResizeObserver(() => setSize({ width: area.clientWidth, height: area.clientHeight }))
    watcher.observe(area)
    return () => watcher.disconnect()
  }, [area])
  const { minXFt, minYFt, maxXFt, maxYFt } = bounds
  useEffect(() => {
    if (size.width === 0 || moved.current) return
    setView(fittedView({ minXFt, minYFt, maxXFt, maxYFt }, size, FOOT_PX))
  }, [size, minXFt, minYFt, maxXFt, maxYFt])

  const fit = useCallback(() => {
    moved.current = false
    setView(fittedView(latest.current.bounds, latest.current.size, FOOT_PX))
  }, [])
  const zoom = useCallback((factor: number, at?: ScreenPoint) => {
    moved.current = true
    const { width, height } = latest.current.size
    setView((before) => zoomedView(before, factor, at ?? { x: width / 2, y: height / 2 }))
  }, [])
  const pan = useCallback((by: ScreenPoint) => {
    moved.current = true
    setView((before) => pannedView(before, by))
  }, [])
  const keep = useCallback(() => {
    moved.current = true
  }, [])
  return useMemo(() => ({ area, setArea, view, size, fit, zoom, pan, keep }), [area, view, size, fit, zoom, pan, keep])
}
