import { Button, Input, Label, SearchField } from 'react-aria-components'
import { Icon } from '../ui/icon.tsx'
import styles from './jobs-screen.module.css'

interface JobSearchFieldProps {
  readonly text: string
  readonly onText: (text: string) => void
}

/** The field that searches everything in the library. */
export function JobSearchField({ text, onText }: JobSearchFieldProps) {
  return (
    <SearchField value={text} onChange={onText} className={styles['search'] ?? ''}>
      <Label className={styles['readOut'] ?? ''}>Search all jobs</Label>
      <Icon name="search" />
      <Input
        className={styles['searchInput'] ?? ''}
        placeholder="Owner, address, claim number, or words from captions and findings"
      />
      {text === '' ? null : (
        <Button className={styles['clear'] ?? ''} aria-label="Clear the search">
          <Icon name="close" />
        </Button>
      )}
    </SearchField>
  )
}
