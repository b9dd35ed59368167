import { useState } from 'react'
import { diaryKindLabels, type DiaryKind } from '../../app/diary/entry.ts'
import { useDesk } from '../client/client-context.tsx'
import { useJob } from '../state/job-state.tsx'
import { Button } from '../ui/button.tsx'
import { Checkbox } from '../ui/checkbox.tsx'
import { Dialog } from '../ui/dialog.tsx'
import { useMessages } from '../ui/message.tsx'
import { countWords } from '../ui/quantity-words.ts'
import styles from './diary.module.css'
import { diaryKinds } from './diary-kinds.ts'

/** Saves the job's calendar as an iCalendar file; calls, documents and notes only when they are asked for. */
export function CalendarButton() {
  const [isOpen, setOpen] = useState(false)
  return (
    <>
      <Button onPress={() => setOpen(true)}>Calendar file…</Button>
      {isOpen ? <CalendarDialog onClose={() => setOpen(false)} /> : null}
    </>
  )
}

function CalendarDialog({ onClose }: { onClose: () => void }) {
  const { job } = useJob()
  const desk = useDesk()
  const { say } = useMessages()
  const [kinds, setKinds] = useState<readonly DiaryKind[]>(['visit', 'reminder'])
  const [clocks, setClocks] = useState(true)
  async function save() {
    const reply = await desk.call('diary.calendar', { jobId: job.id, kinds: [...kinds], clocks })
    if (!reply.ok) return say({ tone: 'error', text: reply.error.message, help: reply.error.help })
    saveText(reply.value.fileName, reply.value.text)
    say({ tone: 'done', text: `${countWords(reply.value.events, 'event')} written to ${reply.value.fileName}.` })
    onClose()
  }
  return (
    <Dialog
      title="Calendar file"
      isOpen
      onClose={onClose}
      actions={
        <>
          <Button onPress={onClose}>Cancel</Button>
          <Button look="main" onPress={() => void save()}>
            Save the file
          </Button>
        </>
      }
    >
      <p>
        An iCalendar file for a calendar program. Words of an entry go into the file with it; what you leave out stays
        in the diary.
      </p>
      <div className={styles['checks']} role="group" aria-label="What goes into the file">
        {diaryKinds.map((kind) => (
          <Checkbox
            key={kind}
            isSelected={kinds.includes(kind)}
            onChange={(isOn) => setKinds(isOn ? [...kinds, kind] : kinds.filter((one) => one !== kind))}
          >
            {diaryKindLabels[kind]}
          </Checkbox>
        ))}
        <Checkbox isSelected={clocks} onChange={setClocks}>
          Statutory clocks asked for, with their caution
        </Checkbox>
      </div>
    </Dialog>
  )
}

function saveText(fileName: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: 'text/calendar;charset=utf-8' }))
  const link = document.createElement('a')
  link.href = address
  link.download = fileName
  link.click()
  URL.revokeObjectURL(address)
}
