import { useState } from 'react'
import type { Attachment } from '../../app/evidence/attachment.ts'
import { type ReadingChoices, readingChoicesSchema } from '../../app/weather/reading-choices.ts'
import { stationFileKindWords } from '../../app/weather/station-file-kind.ts'
import { useEdit, useJob } from '../state/job-state.tsx'
import { Button } from '../ui/button.tsx'
import { Checkbox } from '../ui/checkbox.tsx'
import { Dialog } from '../ui/dialog.tsx'
import { TextField } from '../ui/text-field.tsx'
import { daysAround } from './days-around.ts'
import { FilePreview } from './file-preview.tsx'
import { ReadingFields } from './reading-fields.tsx'
import { useFileReading } from './use-file-reading.ts'
import styles from './weather.module.css'

interface ReadFileDialogProps {
  readonly attachment: Attachment
  readonly zone: string
  readonly onClose: () => void
}

/** Says how a station file is to be read, shows what is understood, and takes it. */
export function ReadFileDialog({ attachment, zone, onClose }: ReadFileDialogProps) {
  const edit = useEdit()
  const [choices, setChoices] = useFirstChoices()
  const [provenance, setProvenance] = useState('')
  const [isEnough, setEnough] = useState(false)
  const { reading, error } = useFileReading(attachment, choices)
  const isBlocked = reading === null || reading.lacks.length > 0 || (reading.problemTotal > 0 && !isEnough)
  const take = async () => {
    const taken = await edit('weather.take-file', {
      attachmentId: attachment.id,
      choices,
      provenance,
      withoutBadRows: isEnough,
    })
    if (taken !== null) onClose()
  }
  return (
    <Dialog
      title={`Read ${attachment.file.fileName}`}
      isOpen
      onClose={onClose}
      size="large"
      actions={
        <>
          <Button onPress={onClose}>Cancel</Button>
          <Button look="main" isDisabled={isBlocked} onPress={() => void take()}>
            Take {reading?.total ?? 0} observations
          </Button>
        </>
      }
    >
      <div className={styles['stack']}>
        <TextField
          label="Downloaded from, by whom, when"
          placeholder="For example: archive of the weather service, by the office, on 13 November 2026"
          value={provenance}
          onChange={setProvenance}
        />
        {error === null ? null : <p className={styles['bad']}>{error}</p>}
        {reading === null ? (
          <p className={styles['quiet']}>Reading the file…</p>
        ) : (
          <>
            <p>
              Understood as: <strong>{stationFileKindWords[reading.kind]}</strong>
            </p>
            <ReadingFields reading={reading} choices={choices} onChange={setChoices} zone={zone} />
            <FilePreview reading={reading} zone={zone} />
            {reading.problemTotal === 0 || reading.lacks.length > 0 ? null : (
              <Checkbox isSelected={isEnough} onChange={setEnough}>
                Take the other rows without these {reading.problemTotal}
              </Checkbox>
            )}
          </>
        )}
      </div>
    </Dialog>
  )
}

/** At first: knots, UTC, and only the days around the loss, so that a year's file adds what the job needs. */
function useFirstChoices(): [ReadingChoices, (choices: ReadingChoices) => void] {
  const { loss } = useJob().job.sheet
  return useState<ReadingChoices>(() => {
    const days = loss.date === null ? null : daysAround(loss.date, 3)
    return readingChoicesSchema.parse({
      nearDate: loss.date,
      fromDate: days?.from ?? null,
      toDate: days?.to ?? null,
    })
  })
}
