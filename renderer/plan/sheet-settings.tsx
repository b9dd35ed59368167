import { useState } from 'react'
import { directionWords } from '../../app/packet/format/directions.ts'
import { useEdit, useJob } from '../state/job-state.tsx'
import { Button } from '../ui/button.tsx'
import { Dialog } from '../ui/dialog.tsx'
import { NumberField } from '../ui/number-field.tsx'
import styles from './facet-details.module.css'

/** How the sheet lies on the earth: which way its top points, and where its origin is. */
export function SheetSettings({ isOpen, onClose }: { isOpen: boolean; onClose: () => void }) {
  return isOpen ? <SettingsDialog onClose={onClose} /> : null
}

function SettingsDialog({ onClose }: { onClose: () => void }) {
  const { job } = useJob()
  const edit = useEdit()
  const { position } = job.sheet.property
  const [upAzimuthDeg, setUp] = useState(job.frame.upAzimuthDeg)
  const [latDeg, setLat] = useState(job.frame.anchor?.latDeg ?? null)
  const [lonDeg, setLon] = useState(job.frame.anchor?.lonDeg ?? null)
  const halfAnchor = (latDeg === null) !== (lonDeg === null)
  async function save() {
    const anchor = latDeg === null || lonDeg === null ? null : { latDeg, lonDeg }
    if ((await edit('frame.save', { frame: { upAzimuthDeg, anchor } })) !== null) onClose()
  }
  return (
    <Dialog
      title="How the sheet lies"
      isOpen
      onClose={onClose}
      actions={
        <>
          <Button onPress={onClose}>Cancel</Button>
          <Button look="main" onPress={() => void save()} isDisabled={halfAnchor}>
            Save
          </Button>
        </>
      }
    >
      <div className={styles['form']}>
        <NumberField
          label="The top of the sheet points"
          unit="°"
          value={upAzimuthDeg}
          min={0}
          max={360}
          onChange={(deg) => setUp((deg ?? 0) % 360)}
          help={`${directionWords(upAzimuthDeg)}, clockwise from true north. 0 when the plan is drawn with north up. Facets keep the direction they face; only the sheet turns under them, so check the arrows afterwards.`}
        />
        <div className={styles['pair']}>
          <NumberField label="Latitude of the origin" unit="°" value={latDeg} min={-90} max={90} onChange={setLat} />
          <NumberField label="Longitude of the origin" unit="°" value={lonDeg} min={-180} max={180} onChange={setLon} />
        </div>
        <p className={styles['quiet']}>
          The origin is the plan's point 0, 0. With it, cameras that wrote a position are shown on the plan.
          {halfAnchor ? ' Give both numbers, or neither.' : ''}
        </p>
        <div className={styles['line']}>
          <Button
            isDisabled={position === null}
            onPress={() => {
              setLat(position?.latDeg ?? null)
              setLon(position?.lonDeg ?? null)
            }}
          >
            Use the property's position
          </Button>
          <Button
            look="quiet"
            isDisabled={latDeg === null && lonDeg === null}
            onPress={() => {
              setLat(null)
              setLon(null)
            }}
          >
            Leave the origin open
          </Button>
        </div>
      </div>
    </Dialog>
  )
}
