import { useMemo, useState } from 'react'
import type { Video } from '../../app/evidence/video.ts'
import { photoTimeWords } from '../../app/packet/format/times.ts'
import { jobClock } from '../state/job-clock.ts'
import { useEdit, useJob } from '../state/job-state.tsx'
import { Button } from '../ui/button.tsx'
import { Dialog } from '../ui/dialog.tsx'
import { TextField } from '../ui/text-field.tsx'
import { readStart, startText } from './start-text.ts'
import styles from './video.module.css'

/** When a video begins, and the way to say so where the file is wrong or silent. */
export function StartField({ video }: { video: Video }) {
  const edit = useEdit()
  const [isOpen, setOpen] = useState(false)
  const { startSet } = video.tags
  return (
    <section aria-label="When it begins">
      <h3>When it begins</h3>
      <p>{video.time.instantMs === null ? 'Not known.' : photoTimeWords(video.time)}</p>
      {startSet === null ? null : <p className={styles['quiet']}>Set by hand: {startSet.why}</p>}
      <div className={styles['buttons']}>
        <Button onPress={() => setOpen(true)}>Set the start</Button>
        {startSet === null ? null : (
          <Button look="quiet" onPress={() => void edit('videos.tag', { id: video.id, set: { startSet: null } })}>
            Use the file’s own
          </Button>
        )}
      </div>
      {isOpen ? <StartDialog video={video} onClose={() => setOpen(false)} /> : null}
    </section>
  )
}

function StartDialog({ video, onClose }: { video: Video; onClose: () => void }) {
  const job = useJob()
  const edit = useEdit()
  const clock = useMemo(() => jobClock(job), [job])
  const [text, setText] = useState(video.time.instantMs === null ? '' : startText(video.time.instantMs, clock))
  const [why, setWhy] = useState(video.tags.startSet?.why ?? '')
  const typed = readStart(text, clock)
  async function save() {
    if (!typed.ok) return
    const startSet = { instantMs: typed.instantMs, why: why.trim() }
    if ((await edit('videos.tag', { id: video.id, set: { startSet } })) !== null) onClose()
  }
  return (
    <Dialog
      title="When does the video begin?"
      isOpen
      size="small"
      onClose={onClose}
      actions={
        <>
          <Button onPress={onClose}>Cancel</Button>
          <Button look="main" isDisabled={!typed.ok || why.trim().length < 3} onPress={() => void save()}>
            Set the start
          </Button>
        </>
      }
    >
      <TextField
        label={`Day and time of its first frame, ${clock.zoneWords}`}
        placeholder="2026-03-14 09:26:53"
        value={text}
        onChange={setText}
        error={text === '' || typed.ok ? null : typed.error}
      />
      <TextField
        label="How that is known"
        placeholder="A phone’s clock is seen at 00:03, P-012"
        value={why}
        onChange={setWhy}
      />
    </Dialog>
  )
}
