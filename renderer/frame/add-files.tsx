import { FileTrigger } from 'react-aria-components'
import { useJob } from '../state/job-state.tsx'
import { useTasks } from '../state/tasks.tsx'
import { Button, type ButtonProps } from '../ui/button.tsx'
import { Icon } from '../ui/icon.tsx'
import { IconButton } from '../ui/icon-button.tsx'
import { chosenFolderFiles } from './dropped-files.ts'
import styles from './add-files.module.css'

/** Chooses photos and other files for the open job, or a whole folder, for people who would rather not drag. */
export function AddFiles() {
  const take = useTakeChosen()
  return (
    <div className={styles['pair']}>
      <AddFilesButton />
      <FileTrigger acceptDirectory onSelect={(chosen) => take(chosenFolderFiles([...(chosen ?? [])]))}>
        <IconButton icon="folder" label="Add a whole folder" />
      </FileTrigger>
    </div>
  )
}

/** A button that chooses photos and other files for the open job. */
export function AddFilesButton({ look = 'plain' }: Pick<ButtonProps, 'look'>) {
  const take = useTakeChosen()
  return (
    <FileTrigger allowsMultiple onSelect={(chosen) => take([...(chosen ?? [])])}>
      <Button look={look}>
        <Icon name="plus" />
        Add photos
      </Button>
    </FileTrigger>
  )
}

function useTakeChosen() {
  const { job } = useJob()
  const { takeIn } = useTasks()
  return (chosen: readonly File[]) => void takeIn(job.id, chosen)
}
