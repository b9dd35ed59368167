import { useState } from 'react'
import { directionWords } from '../../app/packet/format/directions.ts'
import { useEdit, useJob } from '../state/job-state.tsx'
import { Button } from '../ui/button.tsx'
import { Dialog } from '../ui/dialog.tsx'
import { NumberField } from '../ui/number-field.tsx'
import styles from './facet-details.module.css'
import { CopyPlan } from './outlines/copy-plan.tsx'

/** How the sheet lies on the earth: which way its top points, and where its origin is. */
export function SheetSettings({ isOpen, onClose }: { isOpen: boolean; onClose: () => void }) {
  return isOpen ? <SettingsDialog onClose={onClose} /> : null
}

/** The frame on the form: half an origin may be typed. */
interface FrameDraft {
  readonly upAzimuthDeg: number
  readonly latDeg: number | null
  readonly lonDeg: number | null
}

function SettingsDialog({ onClose }: { onClose: () => void }) {
  const { job } = useJob()
  const edit = useEdit()
  const { upAzimuthDeg, anchor } = job.frame
  const [draft, setDraft] = useState<FrameDraft>({
    upAzimuthDeg,
    latDeg: anchor?.latDeg ?? null,
    lonDeg: anchor?.lonDeg ?? null,
  })
  const { latDeg, lonDeg } = draft
  const isHalf = (latDeg === null) !== (lonDeg === null)
  async function save() {
    const saved = {
      upAzimuthDeg: draft.upAzimuthDeg,
      anchor: latDeg === null || lonDeg === null ? null : { latDeg, lonDeg },
    }
    if ((await edit('frame.save', { frame: saved })) !== null) onClose()
  }
  return (
    <Dialog
      title="How the sheet lies"
      isOpen
      onClose={onClose}
      actions={
        <>
          <Button onPress={onClose}>Cancel</Button>
          <Button look="main" onPress={() => void save()} isDisabled={isHalf}>
            Save
          </Button>
        </>
      }
    >
      <div className={styles['form']}>
        <NumberField
          label="The top of the sheet points"
          unit="°"
          value={draft.upAzimuthDeg}
          min={0}
          max={360}
          onChange={(deg) => setDraft({ ...draft, upAzimuthDeg: (deg ?? 0) % 360 })}
          help={`${directionWords(draft.upAzimuthDeg)}, clockwise from true north; 0 when the plan is drawn with north up. Facets keep the direction they face, so check their arrows after turning the sheet.`}
        />
        <OriginFields draft={draft} onChange={setDraft} isHalf={isHalf} />
        <CopyPlan />
      </div>
    </Dialog>
  )
}

interface OriginFieldsProps {
  readonly draft: FrameDraft
  readonly onChange: (draft: FrameDraft) => void
  readonly isHalf: boolean
}

function OriginFields({ draft, onChange, isHalf }: OriginFieldsProps) {
  const { position } = useJob().job.sheet.property
  const { latDeg, lonDeg } = draft
  return (
    <>
      <div className={styles['pair']}>
        <NumberField
          label="Latitude of the origin"
          unit="°"
          value={latDeg}
          min={-90}
          max={90}
          onChange={(deg) => onChange({ ...draft, latDeg: deg })}
        />
        <NumberField
          label="Longitude of the origin"
          unit="°"
          value={lonDeg}
          min={-180}
          max={180}
          onChange={(deg) => onChange({ ...draft, lonDeg: deg })}
        />
      </div>
      <p className={styles['quiet']}>
        The origin is the plan's point 0, 0. With it, cameras that wrote a position are shown on the plan.
        {isHalf ? ' Give both numbers, or neither.' : ''}
      </p>
      <div className={styles['line']}>
        <Button
          isDisabled={position === null}
          onPress={() => onChange({ ...draft, latDeg: position?.latDeg ?? null, lonDeg: position?.lonDeg ?? null })}
        >
          Use the property's position
        </Button>
        <Button
          look="quiet"
          isDisabled={latDeg === null && lonDeg === null}
          onPress={() => onChange({ ...draft, latDeg: null, lonDeg: null })}
        >
          Leave the origin open
        </Button>
      </div>
    </>
  )
}
