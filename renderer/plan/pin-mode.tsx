import { useState } from 'react'
import type { Finding, Pin } from '../../app/evidence/finding.ts'
import { whatWords } from '../../app/packet/finding-words.ts'
import { useCommands } from '../state/commands.ts'
import { useJob } from '../state/job-state.tsx'
import { useSelection } from '../state/selection.tsx'
import { useSavePin } from './facet-edits.ts'
import { PinPanel } from './pin-panel.tsx'
import { PlanCanvas, type PlanScene } from './plan-canvas.tsx'
import { LOOK, type PlanMode } from './plan-mode.ts'
import { type PinKind, usePinTool } from './use-pin-tool.tsx'

interface PinModeProps {
  readonly scene: PlanScene
  readonly finding: Finding | null
  readonly onMode: (mode: PlanMode) => void
  /** A pin was put down that no finding has yet. */
  readonly onNewFinding: (pin: Pin) => void
}

/** Putting a pin on the plan, for a finding or for a new one. */
export function PinMode({ scene, finding, onMode, onNewFinding }: PinModeProps) {
  const { facets, findings } = useJob()
  const { select } = useSelection()
  const savePin = useSavePin()
  const [kind, setKind] = useState<PinKind>(finding?.pin?.kind ?? 'point')
  const cancel = () => onMode(LOOK)
  async function placed(pin: Pin) {
    if (finding === null) return onNewFinding(pin)
    await savePin(finding, pin)
    select({ kind: 'finding', id: finding.id })
    onMode(LOOK)
  }
  const pinning = usePinTool({ kind, facets, onPlaced: (pin) => void placed(pin) })
  useCommands([
    {
      id: 'plan-pin.finish',
      label: 'Finish the line or area',
      keys: 'Enter',
      enabled: pinning.canFinish,
      perform: pinning.finish,
    },
    {
      id: 'plan-pin.back',
      label: 'Remove the last point',
      keys: 'Backspace',
      enabled: pinning.points.length > 0,
      perform: pinning.removeLast,
    },
    { id: 'plan-pin.cancel', label: 'Stop placing the pin', keys: 'Escape', enabled: true, perform: cancel },
  ])
  return (
    <PlanCanvas scene={scene} tool={pinning.tool}>
      <PinPanel
        pinning={pinning}
        kind={kind}
        onKind={setKind}
        onCancel={cancel}
        target={{
          findings,
          finding,
          words: whatWords,
          onChoose: (chosen) => onMode({ kind: 'pin', findingId: chosen?.id ?? null }),
        }}
      />
    </PlanCanvas>
  )
}
