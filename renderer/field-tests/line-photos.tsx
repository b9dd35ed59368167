import { useEffect, useState } from 'react'
import { photoLabel } from '../../app/evidence/photo.ts'
import type { PhotoId } from '../../app/job/ids.ts'
import { useJob } from '../state/job-state.tsx'
import { useSelection } from '../state/selection.tsx'
import { Button } from '../ui/button.tsx'
import { TextField } from '../ui/text-field.tsx'
import styles from './field-tests.module.css'

interface LinePhotosProps {
  readonly label?: string
  readonly hideLabel?: boolean
  readonly value: readonly PhotoId[]
  readonly onChange: (photoIds: PhotoId[]) => void
}

/** Photos by number, typed or taken from the selection. */
export function LinePhotos({ label = 'Photos', hideLabel = false, value, onChange }: LinePhotosProps) {
  const { photos } = useJob()
  const { selection } = useSelection()
  const shown = photos
    .filter(({ id }) => value.includes(id))
    .map(({ number }) => photoLabel(number))
    .join(', ')
  const [text, setText] = useState(shown)
  const [fault, setFault] = useState<string | null>(null)
  useEffect(() => setText(shown), [shown])
  function leave() {
    const numbers = [...text.matchAll(/\d+/g)].map((match) => Number(match[0]))
    const missing = numbers.find((number) => !photos.some((photo) => photo.number === number))
    setFault(missing === undefined ? null : `There is no photo ${photoLabel(missing)}.`)
    if (missing !== undefined || text === shown) return
    onChange(photos.filter(({ number }) => numbers.includes(number)).map(({ id }) => id))
  }
  const picked = selection.kind === 'photos' ? selection.ids : []
  return (
    <div className={styles['offer']}>
      <TextField
        label={label}
        hideLabel={hideLabel}
        value={text}
        onChange={setText}
        onBlur={leave}
        placeholder="P-007, P-012"
        error={fault}
      />
      {picked.length === 0 ? null : (
        <Button look="quiet" onPress={() => onChange([...new Set([...value, ...picked])])}>
          Add the selected photos
        </Button>
      )}
    </div>
  )
}
