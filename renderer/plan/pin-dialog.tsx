import { useState } from 'react'
import type { Pin } from '../../app/evidence/finding.ts'
import { useCommands } from '../state/commands.ts'
import { useJob } from '../state/job-state.tsx'
import { Dialog } from '../ui/dialog.tsx'
import { PlanCanvas } from './plan-canvas.tsx'
import { PinPanel } from './pin-panel.tsx'
import styles from './plan-workspace.module.css'
import { pinPoints } from './use-look-tool.tsx'
import { type PinKind, PinOverlay, usePinTool } from './use-pin-tool.tsx'
import { usePlanScene } from './use-plan-scene.ts'

interface PinDialogProps {
  /** The pin as it is; null when there is none yet. */
  readonly pin: Pin | null
  readonly onPlaced: (pin: Pin) => void
  readonly onClose: () => void
}

/** The plan in a window of its own, to put one pin on it. */
export function PinDialog({ pin, onPlaced, onClose }: PinDialogProps) {
  return (
    <Dialog title="Place the pin" isOpen onClose={onClose} size="full">
      <div className={styles['dialogPlan']}>
        <PinStage pin={pin} onPlaced={onPlaced} onClose={onClose} />
      </div>
    </Dialog>
  )
}

function PinStage({ pin, onPlaced, onClose }: PinDialogProps) {
  const { facets } = useJob()
  const [kind, setKind] = useState<PinKind>(pin?.kind ?? 'point')
  const scene = usePlanScene('none')
  const pinning = usePinTool({ kind, facets, onPlaced })
  useCommands(
    [
      {
        id: 'pin-dialog.finish',
        label: 'Finish the line or area',
        keys: 'Enter',
        enabled: pinning.canFinish,
        perform: pinning.finish,
      },
      {
        id: 'pin-dialog.back',
        label: 'Remove the last point',
        keys: 'Backspace',
        enabled: pinning.points.length > 0,
        perform: pinning.removeLast,
      },
    ],
    'dialog',
  )
  const before = pin === null ? null : { points: pinPoints(pin), closes: pin.kind === 'area' }
  const tool = {
    ...pinning.tool,
    overlay: (view: typeof scene.stage.view) => (
      <>
        {before === null || pinning.points.length > 0 ? null : <PinOverlay {...before} view={view} />}
        {pinning.tool.overlay?.(view)}
      </>
    ),
  }
  return (
    <PlanCanvas scene={scene} tool={tool}>
      <PinPanel pinning={pinning} kind={kind} onKind={setKind} onCancel={onClose} />
    </PlanCanvas>
  )
}
