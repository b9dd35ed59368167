import { useState } from 'react'
import type { HouseOutline } from '../../../app/roof/house-outline.ts'
import { useEdit, useJob } from '../../state/job-state.tsx'
import { Button } from '../../ui/button.tsx'
import { Dialog } from '../../ui/dialog.tsx'
import { countWords } from '../../ui/quantity-words.ts'
import { lettersOf } from './use-outline-shape.ts'

interface RemoveOutlineProps {
  readonly outline: HouseOutline
  readonly onRemoved: () => void
}

/** Takes an outline away once the person has seen which facets go with it. */
export function RemoveOutline({ outline, onRemoved }: RemoveOutlineProps) {
  const { facets, photos, findings } = useJob()
  const edit = useEdit()
  const [asking, setAsking] = useState(false)
  const going = facets.filter((facet) => facet.from?.outlineId === outline.id)
  const ids = new Set<string>(going.map(({ id }) => id))
  const here = {
    findings: findings.filter(({ facetId }) => facetId !== null && ids.has(facetId)).length,
    photos: photos.filter(({ tags }) => tags.facetId !== null && ids.has(tags.facetId)).length,
  }
  async function remove() {
    setAsking(false)
    if ((await edit('outlines.remove', { id: outline.id })) !== null) onRemoved()
  }
  return (
    <>
      <Button look="danger" onPress={() => setAsking(true)}>
        Remove…
      </Button>
      <Dialog
        title={`Remove the outline "${outline.name}"?`}
        isOpen={asking}
        onClose={() => setAsking(false)}
        role="alertdialog"
        size="small"
        actions={
          <>
            <Button onPress={() => setAsking(false)}>Keep it</Button>
            <Button look="danger" onPress={() => void remove()}>
              Remove it
            </Button>
          </>
        }
      >
        <p>
          {going.length === 0 ? 'No facet goes with it. ' : `${lettersOf(going)} will go with it. `}
          {here.findings + here.photos > 0
            ? `${countWords(here.findings, 'finding')} and ${countWords(here.photos, 'photo')} on ${going.length === 1 ? 'it' : 'them'} stay, without a facet. `
            : ''}
          Undo brings all of it back.
        </p>
      </Dialog>
    </>
  )
}
