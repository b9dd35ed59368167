import { useState } from 'react'
import type { PlanPoint } from '../../app/job/places.ts'
import { sidesOf } from '../../app/roof/polygon.ts'
import { useCommands } from '../state/commands.ts'
import { useEdit, useJob } from '../state/job-state.tsx'
import { useSelection } from '../state/selection.tsx'
import { OutlineLengths } from './draw-overlay.tsx'
import { EaveArrows } from './eave-arrows.tsx'
import { downslopeOverSide, likelyEave } from './eave-choice.ts'
import { nextFacetLetter } from './facet-letter.ts'
import { type NewFacet, NewFacetPanel } from './new-facet-panel.tsx'
import { PlanCanvas, type PlanScene } from './plan-canvas.tsx'
import { LOOK, type PlanMode } from './plan-mode.ts'
import styles from './plan-overlay.module.css'
import type { PlanTool } from './plan-tool.ts'
import { closedPath } from './shape-handles.tsx'

interface NameModeProps {
  readonly scene: PlanScene
  readonly outline: readonly PlanPoint[]
  readonly onMode: (mode: PlanMode) => void
}

/** A closed outline gets its letter, pitch and direction, and becomes a facet. */
export function NameMode({ scene, outline, onMode }: NameModeProps) {
  const { facets, job } = useJob()
  const edit = useEdit()
  const { select } = useSelection()
  const { upAzimuthDeg } = job.frame
  const [facet, setFacet] = useState<NewFacet>(() => {
    const eave = likelyEave(
      outline,
      facets.flatMap((other) => sidesOf(other.outline)),
    )
    return {
      outline,
      letter: nextFacetLetter(facets.map((other) => other.letter)),
      name: '',
      pitchRise: facets.at(-1)?.pitchRise ?? null,
      downslopeAzimuthDeg: eave === null ? 0 : downslopeOverSide(outline, eave, upAzimuthDeg),
    }
  })
  const back = () => onMode({ kind: 'draw', path: outline })
  useCommands([{ id: 'plan-name.back', label: 'Back to drawing', keys: 'Escape', enabled: true, perform: back }])
  async function save(ready: NewFacet & { readonly pitchRise: number }) {
    const saved = await edit('facets.save', { id: null, facet: { ...ready, outline: [...ready.outline] } })
    if (saved === null) return
    select({ kind: 'facet', id: saved.id })
    onMode(LOOK)
  }
  const { downslopeAzimuthDeg } = facet
  const tool: PlanTool = {
    cursor: 'default',
    cross: null,
    overlay: (view) => (
      <>
        <path className={styles['changedShape']} d={closedPath(outline, view)} />
        <OutlineLengths outline={outline} view={view} />
      </>
    ),
    handles: (view) => (
      <EaveArrows
        outline={outline}
        upAzimuthDeg={upAzimuthDeg}
        downslopeAzimuthDeg={downslopeAzimuthDeg}
        view={view}
        onChoose={(deg) => setFacet({ ...facet, downslopeAzimuthDeg: deg })}
      />
    ),
  }
  return (
    <PlanCanvas scene={scene} tool={tool}>
      <NewFacetPanel
        facet={facet}
        others={facets}
        onChange={setFacet}
        onSave={(ready) => void save(ready)}
        onCancel={back}
      />
    </PlanCanvas>
  )
}
