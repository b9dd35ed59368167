import { useEffect, useRef, useState } from 'react'
import type { Photo } from '../../app/evidence/photo.ts'
import { useCommands } from '../state/commands.ts'
import { TextField } from '../ui/text-field.tsx'
import { sharedTags } from './shared-tags.ts'
import styles from './tag-bar.module.css'

interface CaptionFieldProps {
  readonly photos: readonly Photo[]
  readonly onSave: (caption: string) => void
}

/** The caption of the selected photos, saved when it is left or by Enter. */
export function CaptionField({ photos, onSave }: CaptionFieldProps) {
  const { caption } = sharedTags(photos)
  const saved = caption.kind === 'same' ? caption.value : ''
  const whose = photos.map(({ id }) => id).join(' ')
  const [text, setText] = useState(saved)
  const field = useRef<HTMLDivElement>(null)
  useEffect(() => setText(saved), [saved, whose])
  useCommands([
    {
      id: 'photo-tags.caption',
      label: 'Write the caption',
      keys: 'T',
      enabled: photos.length > 0,
      perform: () => field.current?.querySelector('input')?.focus(),
    },
  ])
  function save() {
    if (text.trim() !== saved) onSave(text.trim())
  }
  return (
    <div ref={field} className={styles['caption']}>
      <TextField
        label="Caption (T)"
        value={text}
        onChange={setText}
        isDisabled={photos.length === 0}
        maxLength={2000}
        placeholder={caption.kind === 'mixed' ? 'Captions differ; typing replaces them all' : 'What the picture shows'}
        onBlur={save}
        onKeyDown={(event) => {
          if (event.key === 'Escape') setText(saved)
          if (event.key !== 'Enter' && event.key !== 'Escape') return
          // Leaving the field saves it and gives the letters back to tagging.
          field.current?.querySelector('input')?.blur()
        }}
      />
    </div>
  )
}
