import { useGoTo } from '../frame/use-go-to.ts'
import { useJob } from '../state/job-state.tsx'
import { type Selection, useSelection } from '../state/selection.tsx'
import { useSavePin } from './facet-edits.ts'
import { PlanCanvas, type PlanScene } from './plan-canvas.tsx'
import type { PlanHit } from './plan-hit.ts'
import type { PlanMode } from './plan-mode.ts'
import { useLookTool } from './use-look-tool.tsx'

interface LookModeProps {
  readonly scene: PlanScene
  readonly onMode: (mode: PlanMode) => void
}

/** Looking at the plan: a click selects, a double click opens, the selected finding's pin can be dragged. */
export function LookMode({ scene, onMode }: LookModeProps) {
  const job = useJob()
  const goTo = useGoTo()
  const savePin = useSavePin()
  const { selection, select } = useSelection()
  const selected = job.findings.find((finding) => selection.kind === 'finding' && finding.id === selection.id) ?? null
  function open({ kind, id }: PlanHit) {
    const facet = job.facets.find((one) => kind === 'facet' && one.id === id)
    if (facet !== undefined) onMode({ kind: 'shape', facetId: facet.id })
    else if (kind === 'reading') goTo({ workspace: 'field-tests', target: null })
    else goTo({ workspace: kind === 'finding' ? 'findings' : 'photos', target: { kind, id } })
  }
  const tool = useLookTool({
    selected,
    onSelect: (hit) => select(selectionOfHit(hit, job)),
    onOpen: open,
    onPinMoved: savePin,
  })
  return <PlanCanvas scene={scene} tool={tool} />
}

function selectionOfHit(hit: PlanHit | null, job: ReturnType<typeof useJob>): Selection {
  switch (hit?.kind) {
    case 'facet': {
      const facet = job.facets.find((one) => one.id === hit.id)
      return facet === undefined ? { kind: 'none' } : { kind: 'facet', id: facet.id }
    }
    case 'finding': {
      const finding = job.findings.find((one) => one.id === hit.id)
      return finding === undefined ? { kind: 'none' } : { kind: 'finding', id: finding.id }
    }
    case 'photo': {
      const photo = job.photos.find((one) => one.id === hit.id)
      return photo === undefined ? { kind: 'none' } : { kind: 'photos', ids: [photo.id], lead: photo.id }
    }
    case 'reading': {
      const reading = job.readings.find((one) => one.id === hit.id)
      return reading === undefined ? { kind: 'none' } : { kind: 'reading', id: reading.id }
    }
    case undefined:
      return { kind: 'none' }
  }
}
