import { useState } from 'react'
import { cameraName } from '../../app/evidence/camera-name.ts'
import type { Camera, CameraClock, ClockComparison } from '../../app/evidence/camera.ts'
import { useEdit } from '../state/job-state.tsx'
import { Button } from '../ui/button.tsx'
import { Checkbox } from '../ui/checkbox.tsx'
import { Dialog } from '../ui/dialog.tsx'
import { SegmentedChoice } from '../ui/segmented-choice.tsx'
import { TextField } from '../ui/text-field.tsx'
import { AmountFields } from './amount-fields.tsx'
import { clockFromComparison, lineStart, usualReason } from './clock-from-comparison.ts'
import { ClockPhotoFields } from './clock-photo-fields.tsx'
import { ClockPreview } from './clock-preview.tsx'
import { GpsFields } from './gps-fields.tsx'
import { LinkedPhotoFields } from './linked-photo-fields.tsx'
import styles from './clock-dialog.module.css'

const ways = [
  { key: 'clock-photo', label: 'Photo of a clock' },
  { key: 'linked-photo', label: 'Same moment, two cameras' },
  { key: 'gps-time', label: 'Its own GPS time' },
  { key: 'typed', label: 'Type an amount' },
] as const satisfies readonly { key: ClockComparison['by']; label: string }[]

const fieldsOfWay = {
  'clock-photo': ClockPhotoFields,
  'linked-photo': LinkedPhotoFields,
  'gps-time': GpsFields,
  typed: AmountFields,
} as const satisfies Record<ClockComparison['by'], unknown>

interface ClockDialogProps {
  readonly camera: Camera
  readonly onClose: () => void
}

/** Sets a camera's clock right by comparing it, and shows what that changes before it is done. */
export function ClockDialog({ camera, onClose }: ClockDialogProps) {
  const edit = useEdit()
  const [way, setWay] = useState<ClockComparison['by']>('clock-photo')
  const [comparison, setComparison] = useState<ClockComparison | null>(null)
  const [together, setTogether] = useState(true)
  const [why, setWhy] = useState('')
  const first = comparison === null || way === 'typed' ? null : lineStart(camera.clock, comparison)
  const clock =
    comparison === null ? null : clockOf(camera.clock, comparison, { together: first !== null && together, why })
  async function apply() {
    if (clock === null) return
    const saved = await edit('cameras.set-clock', { id: camera.id, clock })
    if (saved !== null) onClose()
  }
  const WayFields = fieldsOfWay[way]
  return (
    <Dialog
      title={`Correct the clock of ${cameraName(camera)}`}
      isOpen
      size="large"
      onClose={onClose}
      actions={
        <>
          <Button onPress={onClose}>Cancel</Button>
          <Button look="main" isDisabled={clock === null} onPress={() => void apply()}>
            Apply
          </Button>
        </>
      }
    >
      <div className={styles['body']}>
        <SegmentedChoice
          label="How the clock is compared"
          options={ways}
          value={way}
          onChange={(key) => {
            setComparison(null)
            setWay(key)
          }}
        />
        <WayFields camera={camera} onComparison={setComparison} />
        {first === null ? null : (
          <Checkbox isSelected={together} onChange={setTogether}>
            Together with the comparison at {first.cameraLocal.replace('T', ' ')}: a straight line between the two
          </Checkbox>
        )}
        <TextField
          label="How that is known"
          value={why}
          onChange={setWhy}
          maxLength={1000}
          placeholder={comparison === null ? '' : usualReason(comparison)}
        />
        <ClockPreview camera={camera} clock={clock} />
      </div>
    </Dialog>
  )
}

/** An amount that was only typed is not kept as a comparison: there is no moment at which it was made. */
function clockOf(
  before: CameraClock,
  comparison: ClockComparison,
  how: { readonly together: boolean; readonly why: string },
): CameraClock {
  if (comparison.by !== 'typed') return clockFromComparison(before, comparison, how)
  return { correctionMs: comparison.correctionMs, why: how.why.trim() || usualReason(comparison) }
}
