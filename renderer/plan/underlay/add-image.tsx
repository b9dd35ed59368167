import { useState } from 'react'
import { FileTrigger } from 'react-aria-components'
import type { PlanImageId } from '../../../app/job/ids.ts'
import { planImageKindWords, type PlanImageKind } from '../../../app/roof/plan-image.ts'
import { useDesk } from '../../client/client-context.tsx'
import { useJob } from '../../state/job-state.tsx'
import { Button } from '../../ui/button.tsx'
import { SelectField } from '../../ui/select-field.tsx'
import { TextField } from '../../ui/text-field.tsx'
import panels from '../plan-panels.module.css'
import { kindOptions } from './kind-options.ts'
import styles from './underlay.module.css'

/** Says what an image is and where it comes from, and takes it in. */
export function AddImage({ onAdded }: { readonly onAdded: (id: PlanImageId) => void }) {
  const { job } = useJob()
  const desk = useDesk()
  const [kind, setKind] = useState<PlanImageKind>('aerial')
  const [label, setLabel] = useState('')
  const [source, setSource] = useState('')
  const [refusal, setRefusal] = useState<string | null>(null)
  const [isBusy, setBusy] = useState(false)
  async function add(file: File | undefined) {
    if (file === undefined) return
    setBusy(true)
    setRefusal(null)
    const name = label.trim() === '' ? planImageKindWords[kind] : label.trim()
    const reply = await desk.addPlanImage(job.id, file, { kind, label: name, source: source.trim() })
    setBusy(false)
    if (reply.ok) onAdded(reply.value.id)
    else setRefusal(`${reply.error.message} ${reply.error.help}`)
  }
  return (
    <>
      <div className={styles['fields']}>
        <SelectField label="What it is" options={kindOptions} value={kind} onChange={(key) => setKind(key ?? kind)} />
        <TextField label="Name" value={label} onChange={setLabel} placeholder="Aerial, spring" maxLength={120} />
        <TextField
          label="Where it comes from"
          value={source}
          onChange={setSource}
          placeholder="county map office, 3 May"
          maxLength={400}
        />
      </div>
      {refusal === null ? null : (
        <p className={panels['refusal']} role="alert">
          {refusal}
        </p>
      )}
      <div className={panels['line']}>
        <FileTrigger
          acceptedFileTypes={['image/jpeg', 'image/png', 'image/tiff', 'image/webp']}
          onSelect={(chosen) => void add(chosen?.[0])}
        >
          <Button look="main" isDisabled={isBusy}>
            {isBusy ? 'Taking the image in…' : 'Choose the image…'}
          </Button>
        </FileTrigger>
      </div>
    </>
  )
}
