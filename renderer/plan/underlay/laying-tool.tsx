import { useState } from 'react'
import type { PlanPoint } from '../../../app/job/places.ts'
import { wrapDegrees } from '../../../app/roof/angles.ts'
import { azimuthOf, sheetDirection } from '../../../app/roof/plan-frame.ts'
import { DragHandle } from '../drag-handle.tsx'
import type { PlanPointer, PlanTool } from '../plan-tool.ts'
import { toScreen, type PlanView } from '../plan-view.ts'
import { tidyPoint } from '../sheet-geometry.ts'
import { nearestCorner } from '../snapping.ts'
import styles from './underlay.module.css'
import type { Laying } from './use-laying.ts'

/** How far from the held place the handle stands that turns the image, pixels. */
const TURN_HANDLE_PX = 90

interface LayingInput {
  readonly laying: Laying
  readonly upAzimuthDeg: number
  /** Corners of the roof that the second mark of a move holds on to. */
  readonly corners: readonly PlanPoint[]
}

/** What pointer and keys do while an image is laid: mark places on it, or move and turn it by its handles. */
export function useLayingTool({ laying, upAzimuthDeg, corners }: LayingInput): PlanTool {
  const [next, setNext] = useState<PlanPoint | null>(null)
  const { act, marks } = laying
  const isMarking = act !== 'none'
  function placeOf({ at, free, reachFt }: PlanPointer): PlanPoint {
    const isTarget = act === 'fit' && marks.length === 1
    return (isTarget && !free ? nearestCorner(at, corners, reachFt) : null) ?? at
  }
  return {
    cursor: isMarking ? 'crosshair' : 'default',
    underlay: laying.image,
    onMove: (pointer) => setNext(isMarking ? placeOf(pointer) : null),
    onClick: (pointer) => laying.mark(placeOf(pointer)),
    cross: isMarking
      ? {
          at: next,
          onMove: setNext,
          onPlace: () => {
            if (next !== null) laying.mark(next)
          },
        }
      : null,
    overlay: (view) => <Marks laying={laying} next={isMarking ? next : null} view={view} />,
    handles: (view) => (isMarking ? null : <Handles laying={laying} upAzimuthDeg={upAzimuthDeg} view={view} />),
  }
}

interface OnView {
  readonly laying: Laying
  readonly view: PlanView
}

function Marks({ laying, next, view }: OnView & { readonly next: PlanPoint | null }) {
  const { image, act, marks, planPointOf } = laying
  const known = image.knownLine === null ? [] : [image.knownLine.from, image.knownLine.to]
  const marked = act === 'none' ? known : marks
  const points = marked.map((at) => toScreen(view, planPointOf(at)))
  const ahead = act !== 'none' && next !== null && marks.length === 1 ? [toScreen(view, next)] : []
  const d = `M${[...points, ...ahead].map(({ x, y }) => `${x} ${y}`).join('L')}`
  return (
    <g>
      {points.length + ahead.length < 2 ? null : (
        <>
          <path className={styles['known']} d={d} />
          <path className={styles['knownInk']} d={d} />
        </>
      )}
      {points.map(({ x, y }, index) => {
        const cross = `M${x - 7} ${y}H${x + 7}M${x} ${y - 7}V${y + 7}`
        return (
          <g key={index}>
            <path className={styles['known']} d={cross} />
            <path className={styles['knownInk']} d={cross} />
          </g>
        )
      })}
    </g>
  )
}

function Handles({ laying, upAzimuthDeg, view }: OnView & { readonly upAzimuthDeg: number }) {
  const { image, preview, keep } = laying
  const { held, imageUpAzimuthDeg } = image
  const up = sheetDirection(imageUpAzimuthDeg, upAzimuthDeg)
  const reachFt = TURN_HANDLE_PX / view.scale
  const turnAt = { xFt: held.plan.xFt + up.x * reachFt, yFt: held.plan.yFt + up.y * reachFt }
  return (
    <>
      <DragHandle
        label="Move the image"
        look="move"
        at={held.plan}
        view={view}
        onMove={({ at }) => preview({ held: { image: held.image, plan: tidyPoint(at) } })}
        onDrop={() => void keep()}
        onPress={() => undefined}
      />
      <DragHandle
        label={`Turn the image; its top points ${Math.round(imageUpAzimuthDeg * 10) / 10} degrees`}
        look="insert"
        at={turnAt}
        view={view}
        onMove={({ at }) => {
          const away = { x: at.xFt - held.plan.xFt, y: at.yFt - held.plan.yFt }
          if (Math.hypot(away.x, away.y) > 0) preview({ imageUpAzimuthDeg: tenth(azimuthOf(away, upAzimuthDeg)) })
        }}
        onDrop={() => void keep()}
        onPress={() => undefined}
      />
    </>
  )
}

function tenth(deg: number): number {
  return wrapDegrees(Math.round(deg * 10) / 10)
}
