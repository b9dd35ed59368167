import { useState } from 'react'
import type { OutlineId } from '../../../app/job/ids.ts'
import type { PlanPoint } from '../../../app/job/places.ts'
import { useEdit, useJob } from '../../state/job-state.tsx'
import type { PlanScene } from '../plan-canvas.tsx'
import { LOOK, type PlanMode } from '../plan-mode.ts'
import { newEdgeId } from './new-edge-id.ts'
import { commonPitch, eavesRing, withCourtyard } from './outline-draft.ts'
import { OutlineNameStep } from './outline-name-step.tsx'
import { OutlinePathStep } from './outline-path-step.tsx'
import { TraverseStep } from './traverse-step.tsx'

interface OutlineModeProps {
  readonly scene: PlanScene
  /** The outline that gets a courtyard; null when a new outline is drawn. */
  readonly courtyardOf: OutlineId | null
  readonly onMode: (mode: PlanMode) => void
}

type Step =
  | { readonly kind: 'path'; readonly path: readonly PlanPoint[] }
  | { readonly kind: 'traverse' }
  | { readonly kind: 'name'; readonly corners: readonly PlanPoint[] }

/** A new outline, or a courtyard of one: its corners clicked or its sides typed, then its name, pitch and eave height. */
export function OutlineMode({ scene, courtyardOf, onMode }: OutlineModeProps) {
  const { outlines } = useJob()
  const edit = useEdit()
  const [step, setStep] = useState<Step>({ kind: 'path', path: [] })
  const house = outlines.find(({ id }) => id === courtyardOf) ?? null
  const leave = () => onMode(house === null ? LOOK : { kind: 'shape-outline', outlineId: house.id })
  async function closed(corners: readonly PlanPoint[]) {
    if (house === null) return setStep({ kind: 'name', corners })
    const { id, ...outline } = withCourtyard(house, eavesRing(corners, commonPitch(house) ?? 4, newEdgeId))
    if ((await edit('outlines.save', { id, outline })) !== null) leave()
  }
  switch (step.kind) {
    case 'path':
      return (
        <OutlinePathStep
          scene={scene}
          path={step.path}
          courtyardOf={house}
          onClosed={(corners) => void closed(corners)}
          onTraverse={() => setStep({ kind: 'traverse' })}
          onCancel={leave}
        />
      )
    case 'traverse':
      return (
        <TraverseStep
          scene={scene}
          onUse={(corners) => void closed(corners)}
          onBack={() => setStep({ kind: 'path', path: [] })}
        />
      )
    case 'name':
      return (
        <OutlineNameStep
          scene={scene}
          corners={step.corners}
          onBack={() => setStep({ kind: 'path', path: step.corners })}
          onSaved={(outlineId) => onMode({ kind: 'shape-outline', outlineId })}
        />
      )
  }
}
