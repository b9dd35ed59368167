import { useEffect } from 'react'
import type { HouseOutline } from '../../../app/roof/house-outline.ts'
import { useCommands } from '../../state/commands.ts'
import { useJob } from '../../state/job-state.tsx'
import { PlanCanvas, type PlanScene } from '../plan-canvas.tsx'
import { LOOK, type PlanMode } from '../plan-mode.ts'
import type { PlanTool } from '../plan-tool.ts'
import { edgeAt, withCornerRemoved, withEdgeToggled } from './outline-draft.ts'
import { OutlineHandles } from './outline-handles.tsx'
import { OutlineOverlay } from './outline-overlay.tsx'
import { OutlineShapePanel } from './outline-shape-panel.tsx'
import { edgeNear } from './outline-snap.ts'
import { type OutlineShape, useOutlineShape } from './use-outline-shape.ts'
import { useLiveRoof } from './use-live-roof.ts'

interface OutlineShapeModeProps {
  readonly scene: PlanScene
  readonly outline: HouseOutline
  readonly onMode: (mode: PlanMode) => void
}

/** Pitch of an edge that becomes an eave where no other edge has one. */
const FIRST_PITCH = 5

/** Shaping one outline of the house: its roof follows every change. */
export function OutlineShapeMode({ scene, outline, onMode }: OutlineShapeModeProps) {
  const { facets } = useJob()
  const shape = useOutlineShape(outline)
  const live = useLiveRoof(scene, shape.outline)
  const { keep } = scene.stage
  useEffect(keep, [keep])
  useShapeKeys(shape, () => onMode(LOOK))
  const tool: PlanTool = {
    cursor: 'default',
    cross: null,
    onClick: ({ at, reachFt }) => shape.pick(edgeNear(shape.outline, at, reachFt)),
    onDoubleClick: ({ at, reachFt }) => {
      const edge = edgeNear(shape.outline, at, reachFt)
      if (edge !== null) shape.change((now) => withEdgeToggled(now, edge, FIRST_PITCH))
    },
    overlay: (view) => <OutlineOverlay outline={shape.outline} picked={shape.picked} view={view} />,
    handles: (view) => <OutlineHandles shape={shape} facets={facets} view={view} />,
  }
  return (
    <PlanCanvas scene={live.scene} tool={tool}>
      <OutlineShapePanel shape={shape} live={live} onMode={onMode} />
    </PlanCanvas>
  )
}

function useShapeKeys(shape: OutlineShape, leave: () => void): void {
  const { picked, outline } = shape
  const hasEdge = picked !== null && edgeAt(outline, picked) !== undefined
  useCommands([
    { id: 'plan-house.done', label: 'Leave the outline', keys: 'Escape', enabled: true, perform: leave },
    {
      id: 'plan-house.gable',
      label: 'Make the picked edge a gable, or an eave again',
      keys: 'G',
      enabled: hasEdge,
      perform: () => {
        if (picked !== null) shape.change((now) => withEdgeToggled(now, picked, FIRST_PITCH))
      },
    },
    {
      id: 'plan-house.remove',
      label: 'Remove the corner where the picked edge starts',
      keys: 'Delete',
      enabled: hasEdge,
      perform: () => {
        if (picked === null) return
        shape.pick(null)
        shape.change((now) => withCornerRemoved(now, picked))
      },
    },
  ])
}
