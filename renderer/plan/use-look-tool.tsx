import { useState } from 'react'
import type { Finding, Pin } from '../../app/evidence/finding.ts'
import type { PlanPoint } from '../../app/job/places.ts'
import type { PlanHit } from './plan-hit.ts'
import type { PlanDrag, PlanTool } from './plan-tool.ts'
import { tidyPoint } from './sheet-geometry.ts'
import { PinOverlay } from './use-pin-tool.tsx'

interface LookInput {
  /** The selected finding, whose pin can be dragged. */
  readonly selected: Finding | null
  readonly onSelect: (hit: PlanHit | null) => void
  readonly onOpen: (hit: PlanHit) => void
  readonly onPinMoved: (finding: Finding, pin: Pin) => Promise<void>
}

/** Selects what is clicked and drags the pin of the selected finding. */
export function useLookTool({ selected, onSelect, onOpen, onPinMoved }: LookInput): PlanTool {
  const [moved, setMoved] = useState<Pin | null>(null)
  async function drop(finding: Finding, pin: Pin) {
    setMoved(pin)
    await onPinMoved(finding, pin)
    setMoved(null)
  }
  return {
    cursor: 'default',
    cross: null,
    onClick: ({ over }) => onSelect(over),
    onDoubleClick: ({ over }) => {
      if (over !== null) onOpen(over)
    },
    grab({ over, at }): PlanDrag | null {
      const pin = selected?.pin ?? null
      if (selected === null || pin === null || over?.kind !== 'finding' || over.id !== selected.id) return null
      return {
        move: (pointer) => setMoved(shiftedPin(pin, at, pointer.at)),
        drop: (pointer) => void drop(selected, shiftedPin(pin, at, pointer.at)),
        cancel: () => setMoved(null),
      }
    },
    overlay: (view) =>
      moved === null ? null : <PinOverlay points={pinPoints(moved)} closes={moved.kind === 'area'} view={view} />,
  }
}

/** The points that a pin stands on. */
export function pinPoints(pin: Pin): readonly PlanPoint[] {
  return pin.kind === 'point' ? [pin.at] : pin.points
}

function shiftedPin(pin: Pin, from: PlanPoint, to: PlanPoint): Pin {
  const shift = (point: PlanPoint) =>
    tidyPoint({ xFt: point.xFt + to.xFt - from.xFt, yFt: point.yFt + to.yFt - from.yFt })
  switch (pin.kind) {
    case 'point':
      return { kind: 'point', at: shift(pin.at) }
    case 'line':
      return { kind: 'line', points: pin.points.map(shift) }
    case 'area':
      return { kind: 'area', points: pin.points.map(shift) }
  }
}
