import { useEffect, useRef, useState } from 'react'
import type { PlanPoint } from '../../app/job/places.ts'
import { useJob } from '../state/job-state.tsx'
import { useCommands } from '../state/commands.ts'
import { DrawPanel } from './draw-panel.tsx'
import { PlanCanvas, type PlanScene } from './plan-canvas.tsx'
import { LOOK, type PlanMode } from './plan-mode.ts'
import { useDrawTool } from './use-draw-tool.tsx'

interface DrawModeProps {
  readonly scene: PlanScene
  readonly path: readonly PlanPoint[]
  readonly onMode: (mode: PlanMode) => void
}

/** Drawing a facet corner by corner. */
export function DrawMode({ scene, path, onMode }: DrawModeProps) {
  const { facets } = useJob()
  const [length, setLength] = useState('')
  const lengthField = useRef<HTMLDivElement>(null)
  const { keep, area } = scene.stage
  useEffect(keep, [keep])
  const drawing = useDrawTool({
    facets,
    startWith: path,
    onClosed: (outline) => onMode({ kind: 'name', outline }),
    onDigit: (typed) => {
      setLength(typed)
      lengthField.current?.querySelector('input')?.focus()
    },
  })
  const cancel = () => onMode(LOOK)
  useCommands([
    {
      id: 'plan-draw.close',
      label: 'Close the outline',
      keys: 'Enter',
      enabled: drawing.path.length >= 3,
      perform: drawing.close,
    },
    {
      id: 'plan-draw.back',
      label: 'Remove the last corner',
      keys: 'Backspace',
      enabled: drawing.path.length > 0,
      perform: drawing.removeLast,
    },
    { id: 'plan-draw.cancel', label: 'Stop drawing', keys: 'Escape', enabled: true, perform: cancel },
  ])
  return (
    <PlanCanvas scene={scene} tool={drawing.tool}>
      <DrawPanel
        drawing={drawing}
        length={length}
        onLength={setLength}
        lengthField={lengthField}
        onCancel={cancel}
        onAdded={() => area?.focus({ preventScroll: true })}
      />
    </PlanCanvas>
  )
}
