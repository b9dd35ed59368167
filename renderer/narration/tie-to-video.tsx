import { useState } from 'react'
import { videoLabel } from '../../app/evidence/video-label.ts'
import type { VideoId } from '../../app/job/ids.ts'
import type { RecordingStart } from '../../app/narration/narration.ts'
import { useJob } from '../state/job-state.tsx'
import { Button } from '../ui/button.tsx'
import { Dialog } from '../ui/dialog.tsx'
import { SelectField } from '../ui/select-field.tsx'

/** Says that the words are the sound of a video, so that they begin when it does. */
export function TieToVideo({ onAlign }: { readonly onAlign: (start: RecordingStart) => void }) {
  const { videos } = useJob()
  const [isOpen, setOpen] = useState(false)
  const [videoId, setVideoId] = useState<VideoId | null>(null)
  if (videos.length === 0) return null
  const close = () => setOpen(false)
  return (
    <>
      <Button onPress={() => setOpen(true)}>Sound of a video…</Button>
      <Dialog
        title="Video that these words were spoken in"
        isOpen={isOpen}
        onClose={close}
        size="small"
        actions={
          <Button
            look="main"
            isDisabled={videoId === null}
            onPress={() => {
              if (videoId !== null) onAlign({ kind: 'video', videoId })
              close()
            }}
          >
            Tie to it
          </Button>
        }
      >
        <SelectField
          label="Video"
          options={videos.map(({ id, number, file }) => ({ key: id, label: `${videoLabel(number)} ${file.fileName}` }))}
          value={videoId}
          onChange={setVideoId}
        />
      </Dialog>
    </>
  )
}
