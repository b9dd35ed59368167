import { useMemo, useState } from 'react'
import type { PlanPoint } from '../../../app/job/places.ts'
import { useCommands } from '../../state/commands.ts'
import { useEdit, useJob } from '../../state/job-state.tsx'
import { Button } from '../../ui/button.tsx'
import { KeyHint } from '../../ui/key-hint.tsx'
import { DragHandle } from '../drag-handle.tsx'
import { PlanCanvas, type PlanScene } from '../plan-canvas.tsx'
import { LOOK, type PlanMode } from '../plan-mode.ts'
import panels from '../plan-panels.module.css'
import type { PlanPointer, PlanTool } from '../plan-tool.ts'
import { roofTargets } from '../roof-targets.ts'
import { tidyPoint } from '../sheet-geometry.ts'
import { snapPoint } from '../snapping.ts'

interface DoorModeProps {
  readonly scene: PlanScene
  readonly onMode: (mode: PlanMode) => void
}

/** Marking where the front door is; places left and right of it are then named by it. */
export function DoorMode({ scene, onMode }: DoorModeProps) {
  const { facets, job } = useJob()
  const edit = useEdit()
  const { doorAt } = job.sheet.property
  const [moved, setMoved] = useState<PlanPoint | null>(null)
  const targets = useMemo(() => roofTargets(facets), [facets])
  const leave = () => onMode(LOOK)
  async function mark(at: PlanPoint | null) {
    await edit('sheet.mark-door', { doorAt: at })
    setMoved(null)
  }
  function placeOf({ at, free, reachFt }: Pick<PlanPointer, 'at' | 'free' | 'reachFt'>): PlanPoint {
    return free ? tidyPoint(at) : snapPoint(at, null, { targets, settings: { reachFt, stepFt: null } }).at
  }
  const shown = moved ?? doorAt
  const tool: PlanTool = {
    cursor: 'crosshair',
    onMove: (pointer) => (doorAt === null ? setMoved(placeOf(pointer)) : undefined),
    onClick: (pointer) => void mark(placeOf(pointer)),
    cross:
      doorAt === null
        ? {
            at: moved,
            onMove: (at) => setMoved(tidyPoint(at)),
            onPlace: () => void (moved === null ? undefined : mark(moved)),
          }
        : null,
    handles: (view) =>
      doorAt === null || shown === null ? null : (
        <DragHandle
          label="Front door"
          look="insert"
          at={shown}
          view={view}
          onMove={(move) => setMoved(placeOf(move))}
          onDrop={() => void (moved === null ? undefined : mark(moved))}
          onPress={() => undefined}
          onRemove={() => void mark(null)}
        />
      ),
  }
  useCommands([{ id: 'plan-door.done', label: 'Leave the front door', keys: 'Escape', enabled: true, perform: leave }])
  return (
    <PlanCanvas scene={{ ...scene, drawing: { ...scene.drawing, doorAt: shown } }} tool={tool}>
      <DoorPanel onRemove={() => void mark(null)} onDone={leave} />
    </PlanCanvas>
  )
}

function DoorPanel({ onRemove, onDone }: { readonly onRemove: () => void; readonly onDone: () => void }) {
  const { doorAt, frontAzimuthDeg } = useJob().job.sheet.property
  return (
    <section className={panels['tool']} aria-label="Front door">
      <p className={panels['lead']}>
        {doorAt === null
          ? 'Click where the front door is.'
          : 'Drag the door, move it with the arrow keys, or click its place.'}
      </p>
      <p className={panels['quiet']}>
        {frontAzimuthDeg === null
          ? 'Which way the front faces is not on the job sheet yet. Without it, nothing is named by the door.'
          : 'Facets without a name that face the front are then called left or right of the door, as seen from outside.'}
      </p>
      <div className={panels['line']}>
        <Button onPress={onRemove} isDisabled={doorAt === null}>
          Remove the mark
        </Button>
        <Button look="quiet" onPress={onDone}>
          Done <KeyHint keys="Escape" />
        </Button>
      </div>
    </section>
  )
}
