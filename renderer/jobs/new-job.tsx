import { type FormEvent, useState } from 'react'
import { calendarDateSchema } from '../../app/job/calendar.ts'
import type { JobId } from '../../app/job/ids.ts'
import { jobNumberSchema } from '../../app/job/job.ts'
import { useDesk } from '../client/client-context.tsx'
import { Button } from '../ui/button.tsx'
import { Dialog } from '../ui/dialog.tsx'
import { useMessages } from '../ui/message.tsx'
import { TextField } from '../ui/text-field.tsx'
import styles from './new-job.module.css'

interface NewJobProps {
  readonly isOpen: boolean
  readonly onClose: () => void
  readonly onMade: (jobId: JobId) => void
}

/** Starts a job; everything may be filled in later. */
export function NewJob({ isOpen, onClose, onMade }: NewJobProps) {
  return (
    <Dialog title="New job" isOpen={isOpen} onClose={onClose} size="medium">
      <NewJobForm onClose={onClose} onMade={onMade} />
    </Dialog>
  )
}

const empty = { number: '', owner: '', address: '', claimNumber: '', lossDate: '' }
type Draft = typeof empty
type Errors = Partial<Record<keyof Draft, string>>

function NewJobForm({ onClose, onMade }: Omit<NewJobProps, 'isOpen'>) {
  const desk = useDesk()
  const { say } = useMessages()
  const [draft, setDraft] = useState(empty)
  const [errors, setErrors] = useState<Errors>({})
  const field = (name: keyof Draft) => ({
    value: draft[name],
    error: errors[name] ?? null,
    onChange: (value: string) => setDraft({ ...draft, [name]: value }),
  })
  async function make(event: FormEvent) {
    event.preventDefault()
    const wrong = errorsOf(draft)
    setErrors(wrong)
    if (Object.keys(wrong).length > 0) return
    const reply = await desk.call('jobs.new', inputOf(draft))
    if (reply.ok) {
      onClose()
      onMade(reply.value.jobId)
    } else if (reply.error.code === 'conflict' || reply.error.about === 'number')
      setErrors({ number: `${reply.error.message} ${reply.error.help}` })
    else say({ tone: 'error', text: reply.error.message, help: reply.error.help })
  }
  return (
    <form className={styles['form']} onSubmit={(event) => void make(event)}>
      <TextField label="Job number" {...field('number')} help="Left empty, the job gets the next free number." />
      <TextField label="Owner" {...field('owner')} />
      <TextField label="Address of the house" {...field('address')} />
      <div className={styles['pair']}>
        <TextField label="Claim number" {...field('claimNumber')} />
        <TextField label="Date of loss" placeholder="2026-03-14" {...field('lossDate')} />
      </div>
      <div className={styles['foot']}>
        <Button onPress={onClose}>Cancel</Button>
        <Button look="main" type="submit">
          Start the job
        </Button>
      </div>
    </form>
  )
}

function errorsOf(draft: Draft): Errors {
  const errors: Errors = {}
  const number = draft.number.trim() === '' ? null : jobNumberSchema.safeParse(draft.number)
  if (number?.success === false) errors.number = number.error.issues[0]?.message ?? 'This is not a job number.'
  const date = draft.lossDate.trim() === '' ? null : calendarDateSchema.safeParse(draft.lossDate.trim())
  if (date?.success === false) errors.lossDate = date.error.issues[0]?.message ?? 'This is not a date.'
  return errors
}

function inputOf(draft: Draft) {
  return {
    number: draft.number.trim() === '' ? null : draft.number.trim(),
    sheet: {
      owner: { name: draft.owner.trim() },
      property: { address: draft.address.trim() },
      insurance: { claimNumber: draft.claimNumber.trim() },
      loss: { date: draft.lossDate.trim() === '' ? null : draft.lossDate.trim() },
    },
  }
}
