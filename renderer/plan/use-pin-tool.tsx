import { useMemo, useState } from 'react'
import type { Pin } from '../../app/evidence/finding.ts'
import type { PlanPoint } from '../../app/job/places.ts'
import type { Facet } from '../../app/roof/facet.ts'
import { checkOutline, outlineFaultSentence } from '../../app/roof/outline.ts'
import { linePath } from './draw-overlay.tsx'
import styles from './plan-overlay.module.css'
import type { PlanPointer, PlanTool } from './plan-tool.ts'
import { toScreen, type PlanView } from './plan-view.ts'
import { roofTargets } from './roof-targets.ts'
import { samePlace, tidyPoint } from './sheet-geometry.ts'
import { snapPoint } from './snapping.ts'

export type PinKind = Pin['kind']

/** A pin being put on the plan. */
export interface Pinning {
  readonly tool: PlanTool
  readonly points: readonly PlanPoint[]
  readonly refusal: string | null
  /** True when a line or area has enough points. */
  readonly canFinish: boolean
  finish(): void
  removeLast(): void
}

interface PinInput {
  readonly kind: PinKind
  readonly facets: readonly Facet[]
  readonly onPlaced: (pin: Pin) => void
}

/** Puts a pin on the plan: one click for a point, a click for each point of a line or area. */
export function usePinTool({ kind, facets, onPlaced }: PinInput): Pinning {
  const [points, setPoints] = useState<readonly PlanPoint[]>([])
  const [next, setNext] = useState<PlanPoint | null>(null)
  const [refusal, setRefusal] = useState<string | null>(null)
  const targets = useMemo(() => roofTargets(facets), [facets])
  const canFinish = kind === 'line' ? points.length >= 2 : kind === 'area' && points.length >= 3

  /** Lines follow ridges and valleys, so they hold on to the roof; a point is meant where it is put. */
  function placeOf({ at, free, reachFt }: PlanPointer): PlanPoint {
    if (free || kind === 'point') return tidyPoint(at)
    return snapPoint(at, null, { targets, settings: { reachFt, stepFt: null } }).at
  }
  function finish() {
    if (!canFinish) return
    const [fault] = kind === 'area' ? checkOutline(points) : []
    setRefusal(fault === undefined ? null : outlineFaultSentence(fault))
    if (fault !== undefined) return
    setPoints([])
    onPlaced(kind === 'line' ? { kind: 'line', points: [...points] } : { kind: 'area', points: [...points] })
  }
  function place(at: PlanPoint) {
    setRefusal(null)
    if (kind === 'point') return onPlaced({ kind: 'point', at })
    const [first] = points
    if (kind === 'area' && canFinish && first !== undefined && samePlace(first, at)) return finish()
    if (points.some((point) => samePlace(point, at))) return undefined
    setPoints([...points, at])
    return undefined
  }
  return {
    points,
    refusal,
    canFinish,
    finish,
    removeLast: () => setPoints(points.slice(0, -1)),
    tool: {
      cursor: 'crosshair',
      onMove: (pointer) => setNext(placeOf(pointer)),
      onClick: (pointer) => place(placeOf(pointer)),
      onDoubleClick: finish,
      cross: {
        at: next,
        onMove: (at) => setNext(tidyPoint(at)),
        onPlace: () => {
          if (next !== null) place(next)
        },
      },
      overlay: (view) => (
        <PinOverlay points={next === null ? points : [...points, next]} closes={kind === 'area'} view={view} />
      ),
    },
  }
}

/** The pin as it would become. */
export function PinOverlay({
  points,
  closes,
  view,
}: {
  points: readonly PlanPoint[]
  closes: boolean
  view: PlanView
}) {
  const [first] = points
  const line = closes && first !== undefined && points.length > 2 ? [...points, first] : points
  return (
    <g>
      <path className={styles['pinGhostLine']} d={linePath(line, view)} />
      {points.map((point, index) => {
        const at = toScreen(view, point)
        return <circle key={index} className={styles['pinGhost']} cx={at.x} cy={at.y} r="6" pointerEvents="none" />
      })}
    </g>
  )
}
