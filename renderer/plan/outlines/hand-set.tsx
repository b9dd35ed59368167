import type { Facet, HandSet } from '../../../app/roof/facet.ts'
import { useEdit } from '../../state/job-state.tsx'
import { Button } from '../../ui/button.tsx'
import panels from '../plan-panels.module.css'

const words = {
  outline: 'corners',
  pitchRise: 'pitch',
  downslopeAzimuthDeg: 'direction',
} as const satisfies Record<HandSet, string>

/** What of a facet no longer follows its outline, and the way back. Nothing when all of it does. */
export function HandSetLine({ facet }: { facet: Facet }) {
  const edit = useEdit()
  if (facet.from === null || facet.setByHand.length === 0) return null
  return (
    <div className={panels['line']}>
      <span>Set by hand: {facet.setByHand.map((field) => words[field]).join(', ')}</span>
      <Button onPress={() => void edit('facets.follow-outline', { id: facet.id })}>Follow the outline again</Button>
    </div>
  )
}
