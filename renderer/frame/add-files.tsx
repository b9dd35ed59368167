import { FileTrigger } from 'react-aria-components'
import { Button } from '../ui/button.tsx'
import { Icon } from '../ui/icon.tsx'
import { IconButton } from '../ui/icon-button.tsx'
import styles from './add-files.module.css'

interface AddFilesProps {
  readonly onFiles: (files: readonly File[]) => void
}

/** Chooses photos and other files, or a whole folder, for people who would rather not drag. */
export function AddFiles({ onFiles }: AddFilesProps) {
  const take = (chosen: FileList | null) => onFiles(chosen === null ? [] : [...chosen])
  return (
    <div className={styles['pair']}>
      <FileTrigger allowsMultiple onSelect={take}>
        <Button>
          <Icon name="plus" />
          Add photos
        </Button>
      </FileTrigger>
      <FileTrigger acceptDirectory onSelect={take}>
        <IconButton icon="folder" label="Add a whole folder" />
      </FileTrigger>
    </div>
  )
}
