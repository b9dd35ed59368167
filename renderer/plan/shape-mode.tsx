import type { Facet } from '../../app/roof/facet.ts'
import { useCommands } from '../state/commands.ts'
import { useEdit, useJob } from '../state/job-state.tsx'
import { EaveArrows } from './eave-arrows.tsx'
import { saveFacet, useSaveOutlines } from './facet-edits.ts'
import { PlanCanvas, type PlanScene } from './plan-canvas.tsx'
import { LOOK, type PlanMode } from './plan-mode.ts'
import type { PlanTool } from './plan-tool.ts'
import { ShapePanel } from './shape-panel.tsx'
import { useShapeTool } from './use-shape-tool.tsx'

interface ShapeModeProps {
  readonly scene: PlanScene
  readonly facet: Facet
  readonly onMode: (mode: PlanMode) => void
}

/** Editing the corners and the direction of one facet. */
export function ShapeMode({ scene, facet, onMode }: ShapeModeProps) {
  const { facets, job } = useJob()
  const edit = useEdit()
  const onSave = useSaveOutlines()
  const shaping = useShapeTool({ facets, facet, onSave })
  const done = () => onMode(LOOK)
  const canRemove = shaping.picked !== null && facet.outline.length > 3
  useCommands([
    { id: 'plan-shape.done', label: 'Leave the corners', keys: 'Escape', enabled: true, perform: done },
    {
      id: 'plan-shape.remove',
      label: 'Remove the picked corner',
      keys: 'Delete',
      enabled: canRemove,
      perform: shaping.removePicked,
    },
  ])
  const tool: PlanTool = {
    ...shaping.tool,
    handles: (view) => (
      <>
        {shaping.tool.handles?.(view)}
        <EaveArrows
          outline={facet.outline}
          upAzimuthDeg={job.frame.upAzimuthDeg}
          downslopeAzimuthDeg={facet.downslopeAzimuthDeg}
          view={view}
          onChoose={(downslopeAzimuthDeg) => void saveFacet(edit, { ...facet, downslopeAzimuthDeg })}
        />
      </>
    ),
  }
  return (
    <PlanCanvas scene={scene} tool={tool}>
      <ShapePanel facet={facet} shaping={shaping} onDone={done} />
    </PlanCanvas>
  )
}
