import { useState } from 'react'
import { clockCaution } from '../../app/diary/clock-caution.ts'
import { clockStartSchema } from '../../app/diary/job-clocks.ts'
import type { Rule } from '../../app/rules/rule.ts'
import { useEdit, useJob } from '../state/job-state.tsx'
import { Button } from '../ui/button.tsx'
import { Dialog } from '../ui/dialog.tsx'
import { TextField } from '../ui/text-field.tsx'
import styles from './diary.module.css'
import { zoneOfEntries } from './zone-of-entries.ts'

interface AskClockDialogProps {
  readonly rule: Extract<Rule, { kind: 'clock' }>
  readonly onClose: () => void
}

/** Asks on which day a clock begins. */
export function AskClockDialog({ rule, onClose }: AskClockDialogProps) {
  const { job } = useJob()
  const edit = useEdit()
  const lossDate = rule.data.trigger === 'date of loss' ? job.sheet.loss.date : null
  const [start, setStart] = useState({ date: lossDate ?? '', time: '', timeZone: zoneOfEntries(job) })
  const [note, setNote] = useState(lossDate === null ? '' : 'date of loss on the job sheet')
  const [fault, setFault] = useState<{ field: string; sentence: string } | null>(null)
  const needsTime = rule.data.unit === 'hours'
  async function ask() {
    const read = clockStartSchema.safeParse({ ...start, time: start.time.trim() === '' ? null : start.time.trim() })
    if (!read.success) {
      const issue = read.error.issues[0]
      return setFault({ field: String(issue?.path[0] ?? ''), sentence: issue?.message ?? 'A field is wrong.' })
    }
    if (needsTime && read.data.time === null) {
      return setFault({ field: 'time', sentence: 'Hours are counted from a time of day. Write it as 14:30.' })
    }
    const clock = { ruleKey: rule.key, start: read.data, note }
    if ((await edit('diary.ask-clock', { id: null, clock })) !== null) onClose()
  }
  const field = (key: keyof typeof start, label: string, placeholder: string) => (
    <TextField
      label={label}
      placeholder={placeholder}
      value={start[key]}
      onChange={(text) => setStart({ ...start, [key]: text })}
      error={fault?.field === key ? fault.sentence : null}
    />
  )
  return (
    <Dialog
      title={rule.title}
      isOpen
      onClose={onClose}
      actions={
        <>
          <Button onPress={onClose}>Cancel</Button>
          <Button look="main" onPress={() => void ask()}>
            Show this clock
          </Button>
        </>
      }
    >
      <p>{rule.says}</p>
      <p className={styles['caution']} role="note">
        {clockCaution}
      </p>
      <div className={styles['fields']}>
        {field('date', `Day: ${rule.data.trigger}`, '2026-03-20')}
        {field('time', needsTime ? 'Time' : 'Time, if known', '14:30')}
        {field('timeZone', 'Time zone', 'America/New_York')}
        <div className={styles['wide']}>
          <TextField label="What that day rests on" value={note} onChange={setNote} />
        </div>
      </div>
    </Dialog>
  )
}
