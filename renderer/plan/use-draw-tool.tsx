import { useMemo, useState } from 'react'
import type { PlanPoint } from '../../app/job/places.ts'
import type { Facet } from '../../app/roof/facet.ts'
import { checkOutline, outlineFaultSentence } from '../../app/roof/outline.ts'
import { lengthFt } from '../../app/roof/polygon.ts'
import { DrawOverlay } from './draw-overlay.tsx'
import { cornerRefusal } from './open-path.ts'
import type { PlanPointer, PlanTool } from './plan-tool.ts'
import { LENGTH_STEP_FT, roofTargets } from './roof-targets.ts'
import { cornerAngle, directionFrom, pointTowards } from './sheet-direction.ts'
import { samePlace, tidyPoint } from './sheet-geometry.ts'
import { type Snap, snapPoint } from './snapping.ts'

/** What the side that is being drawn measures now. */
export interface LiveSide {
  readonly lengthFt: number
  readonly directionDeg: number
  /** Angle to the side before; null for the first side. */
  readonly cornerDeg: number | null
}

/** A facet in the drawing: its corners so far and what can be done next. */
export interface Drawing {
  readonly tool: PlanTool
  readonly path: readonly PlanPoint[]
  readonly live: LiveSide | null
  readonly refusal: string | null
  /** Direction of the last drawn side; null before there is one. */
  readonly lastDirectionDeg: number | null
  addSide(lengthFt: number, directionDeg: number): void
  close(): void
  removeLast(): void
}

interface DrawInput {
  readonly facets: readonly Facet[]
  /** Corners that were drawn before. */
  readonly startWith: readonly PlanPoint[]
  readonly onClosed: (outline: readonly PlanPoint[]) => void
  readonly onDigit: (typed: string) => void
}

/** Draws a facet corner by corner, by pointer, by typed sides or by the keyboard's cross. */
export function useDrawTool({ facets, startWith, onClosed, onDigit }: DrawInput): Drawing {
  const [path, setPath] = useState<readonly PlanPoint[]>(startWith)
  const [snap, setSnap] = useState<Snap | null>(null)
  const [refusal, setRefusal] = useState<string | null>(null)
  const targets = useMemo(() => {
    const roof = roofTargets(facets, { levels: path })
    const first = path.length >= 3 ? path.slice(0, 1) : []
    return { ...roof, corners: [...first, ...roof.corners] }
  }, [facets, path])

  function snapped({ at, free, reachFt }: PlanPointer): Snap {
    if (free) return { at: tidyPoint(at), to: 'free' }
    return snapPoint(at, path.at(-1) ?? null, { targets, settings: { reachFt, stepFt: LENGTH_STEP_FT } })
  }
  function close() {
    const [fault] = checkOutline(path)
    setRefusal(fault === undefined ? null : outlineFaultSentence(fault))
    if (fault === undefined) onClosed(path)
  }
  function place(at: PlanPoint) {
    const [first] = path
    if (first !== undefined && path.length >= 3 && samePlace(first, at)) return close()
    const refused = cornerRefusal(path, at)
    setRefusal(refused)
    if (refused === null) setPath([...path, at])
  }
  const last = path.at(-1)
  return {
    path,
    refusal,
    live: liveSide(path, snap),
    lastDirectionDeg: directionOfLastSide(path),
    close,
    addSide(length, directionDeg) {
      if (last !== undefined) place(tidyPoint(pointTowards(last, directionDeg, length)))
    },
    removeLast() {
      setRefusal(null)
      setPath(path.slice(0, -1))
    },
    tool: {
      cursor: 'crosshair',
      onMove: (pointer) => setSnap(snapped(pointer)),
      onClick: (pointer) => place(snapped(pointer).at),
      onDigit,
      cross: {
        at: snap?.at ?? last ?? null,
        onMove: (at) => setSnap({ at: tidyPoint(at), to: 'free' }),
        onPlace: () => {
          if (snap !== null) place(snap.at)
        },
      },
      overlay: (view) => <DrawOverlay path={path} snap={snap} view={view} />,
    },
  }
}

function directionOfLastSide(path: readonly PlanPoint[]): number | null {
  const [from, to] = path.slice(-2)
  return from === undefined || to === undefined ? null : directionFrom(from, to)
}

function liveSide(path: readonly PlanPoint[], snap: Snap | null): LiveSide | null {
  const last = path.at(-1)
  if (last === undefined || snap === null || samePlace(last, snap.at)) return null
  const before = path.at(-2)
  return {
    lengthFt: lengthFt(last, snap.at),
    directionDeg: directionFrom(last, snap.at),
    cornerDeg: before === undefined ? null : cornerAngle(before, last, snap.at),
  }
}
