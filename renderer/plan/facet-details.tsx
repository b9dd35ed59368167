import { useCallback, useState } from 'react'
import { directionWords } from '../../app/packet/format/directions.ts'
import type { Facet } from '../../app/roof/facet.ts'
import { useEdit, useJob } from '../state/job-state.tsx'
import { useFacetName } from '../state/roof-zones.ts'
import { useSelection } from '../state/selection.tsx'
import { Button } from '../ui/button.tsx'
import { Dialog } from '../ui/dialog.tsx'
import { NumberField } from '../ui/number-field.tsx'
import { countWords } from '../ui/quantity-words.ts'
import { saveFacet } from './facet-edits.ts'
import { HandSetLine } from './outlines/hand-set.tsx'
import styles from './facet-details.module.css'
import { FacetEdges } from './facet-edges.tsx'
import { FacetWorking } from './facet-working.tsx'
import { faultOfLetter } from './new-facet-panel.tsx'
import { SavedText } from './saved-text.tsx'
import { useRecordSave } from './use-record-save.ts'

/** The selected facet's record, each field saved when it is left. */
export function FacetDetails() {
  const { facets } = useJob()
  const { selection } = useSelection()
  const facet = facets.find((one) => selection.kind === 'facet' && one.id === selection.id)
  if (facet === undefined) return <p className={styles['quiet']}>This facet was removed. Undo brings it back.</p>
  return <FacetForm key={facet.id} facet={facet} />
}

function FacetForm({ facet }: { facet: Facet }) {
  const { facets, photos, findings } = useJob()
  const edit = useEdit()
  const nameOf = useFacetName()
  const saveWhole = useCallback((whole: Facet) => saveFacet(edit, whole), [edit])
  const save = useRecordSave(facet, saveWhole)
  const others = facets.filter((other) => other.id !== facet.id)
  const here = {
    photos: photos.filter((photo) => photo.tags.facetId === facet.id).length,
    findings: findings.filter((finding) => finding.facetId === facet.id).length,
  }
  return (
    <div className={styles['form']}>
      <div className={styles['pair']}>
        <SavedText
          label="Letter"
          value={facet.letter}
          fault={(letter) => faultOfLetter(letter, others)}
          onSave={(letter) => save({ letter })}
        />
        <NumberField
          label="Pitch"
          unit=":12"
          value={facet.pitchRise}
          min={0}
          max={36}
          onChange={(pitchRise) => {
            if (pitchRise !== null) save({ pitchRise })
          }}
        />
      </div>
      <SavedText
        label="Name"
        value={facet.name}
        onSave={(name) => save({ name })}
        placeholder={nameOf({ ...facet, name: '' })}
        maxLength={120}
      />
      <NumberField
        label="Faces downhill"
        unit="°"
        value={facet.downslopeAzimuthDeg}
        min={0}
        max={360}
        help={`${directionWords(facet.downslopeAzimuthDeg)}, clockwise from true north`}
        onChange={(deg) => {
          if (deg !== null) save({ downslopeAzimuthDeg: deg % 360 })
        }}
      />
      <HandSetLine facet={facet} />
      <FacetWorking facet={facet} />
      <FacetEdges facet={facet} />
      <InspectedFields facet={facet} save={save} />
      <p className={styles['quiet']}>
        {countWords(here.findings, 'finding')} and {countWords(here.photos, 'photo')} are on this facet.
      </p>
      {facet.from === null && <RemoveFacet facet={facet} here={here} />}
    </div>
  )
}

function InspectedFields({ facet, save }: { facet: Facet; save: (change: Partial<Facet>) => void }) {
  const { inspected } = facet
  return (
    <>
      <NumberField
        label="Share that was looked at"
        unit="%"
        value={inspected.percent}
        min={0}
        max={100}
        onChange={(percent) => save({ inspected: { ...inspected, percent } })}
      />
      <SavedText
        label="Why not all of it"
        value={inspected.note}
        rows={2}
        maxLength={1000}
        onSave={(note) => save({ inspected: { ...inspected, note } })}
        placeholder="too steep above the porch; seen from the ladder"
      />
    </>
  )
}

interface RemoveFacetProps {
  readonly facet: Facet
  readonly here: { readonly photos: number; readonly findings: number }
}

function RemoveFacet({ facet, here }: RemoveFacetProps) {
  const edit = useEdit()
  const { select } = useSelection()
  const [asking, setAsking] = useState(false)
  const leftBehind = here.photos + here.findings > 0
  async function remove() {
    setAsking(false)
    if ((await edit('facets.remove', { id: facet.id })) !== null) select({ kind: 'none' })
  }
  return (
    <div className={styles['line']}>
      <Button look="danger" onPress={() => setAsking(true)}>
        Remove facet {facet.letter}
      </Button>
      <Dialog
        title={`Remove facet ${facet.letter}?`}
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
          {leftBehind
            ? `${countWords(here.findings, 'finding')} and ${countWords(here.photos, 'photo')} on it stay, but will name no facet that is on the plan. `
            : ''}
          Undo brings the facet back.
        </p>
      </Dialog>
    </div>
  )
}
