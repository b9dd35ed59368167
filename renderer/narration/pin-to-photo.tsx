import { useState } from 'react'
import { photoLabel } from '../../app/evidence/photo.ts'
import type { PhotoId } from '../../app/job/ids.ts'
import type { RecordingStart } from '../../app/narration/narration.ts'
import { useJob } from '../state/job-state.tsx'
import { Button } from '../ui/button.tsx'
import { Dialog } from '../ui/dialog.tsx'
import { SelectField } from '../ui/select-field.tsx'

interface PinToPhotoProps {
  readonly cue: number
  readonly onAlign: (start: RecordingStart) => void
}

/** Pins the selected cue to the photo that was taken while it was spoken. */
export function PinToPhoto({ cue, onAlign }: PinToPhotoProps) {
  const { photos } = useJob()
  const [isOpen, setOpen] = useState(false)
  const [photoId, setPhotoId] = useState<PhotoId | null>(null)
  const timed = photos.filter(({ time }) => time.instantMs !== null)
  const close = () => setOpen(false)
  return (
    <>
      <Button onPress={() => setOpen(true)} isDisabled={timed.length === 0}>
        Pin cue {cue + 1} to a photo…
      </Button>
      <Dialog
        title={`Photo taken while cue ${cue + 1} was spoken`}
        isOpen={isOpen}
        onClose={close}
        size="small"
        actions={
          <Button
            look="main"
            isDisabled={photoId === null}
            onPress={() => {
              if (photoId !== null) onAlign({ kind: 'photo', cue, photoId })
              close()
            }}
          >
            Pin
          </Button>
        }
      >
        <SelectField
          label="Photo"
          options={timed.map(({ id, number, file, tags }) => ({
            key: id,
            label: `${photoLabel(number)} ${tags.caption === '' ? file.fileName : tags.caption}`,
          }))}
          value={photoId}
          onChange={setPhotoId}
        />
      </Dialog>
    </>
  )
}
