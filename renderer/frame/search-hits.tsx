import { Autocomplete, Input, Label, ListBox, ListBoxItem, SearchField, Text } from 'react-aria-components'
import type { SearchHit } from '../../app/contract/search.ts'
import styles from './search-hits.module.css'

interface SearchHitsProps {
  readonly text: string
  readonly onText: (text: string) => void
  /** Null while nothing was asked. */
  readonly hits: readonly SearchHit[] | null
  readonly onChoose: (hit: SearchHit) => void
  readonly placeholder: string
}

/** As many as fit on the smallest window without scrolling. */
const SHOWN = 12

const kindWords = {
  job: 'Job',
  photo: 'Photo',
  finding: 'Finding',
  facet: 'Facet',
  attachment: 'File',
  video: 'Video',
  diary: 'Diary',
} as const satisfies Record<SearchHit['kind'], string>

/** A search field over its hits; arrow keys go through them while typing. */
export function SearchHits({ text, onText, hits, onChoose, placeholder }: SearchHitsProps) {
  return (
    <Autocomplete inputValue={text} onInputChange={onText}>
      <SearchField className={styles['field'] ?? ''}>
        <Label className={styles['label'] ?? ''}>Search for</Label>
        <Input className={styles['input'] ?? ''} placeholder={placeholder} />
      </SearchField>
      <ListBox
        aria-label="Found"
        className={styles['list'] ?? ''}
        items={(hits ?? []).slice(0, SHOWN).map((hit) => ({ ...hit, key: `${hit.kind}-${hit.id}` }))}
        renderEmptyState={() => (
          <p className={styles['none']}>{hits === null ? 'Type a word to search.' : 'Nothing has these words.'}</p>
        )}
      >
        {(hit) => (
          <ListBoxItem
            id={hit.key}
            textValue={`${hit.label} ${hit.excerpt}`}
            className={styles['hit'] ?? ''}
            onAction={() => onChoose(hit)}
          >
            <span className={styles['kind']}>{kindWords[hit.kind]}</span>
            <Text slot="label" className={styles['name'] ?? ''}>
              {hit.label}
            </Text>
            <Text slot="description" className={styles['excerpt'] ?? ''}>
              {hit.excerpt}
            </Text>
          </ListBoxItem>
        )}
      </ListBox>
      {hits !== null && hits.length > SHOWN ? (
        <p className={styles['more']}>{hits.length - SHOWN} more have these words. Type another word to narrow them.</p>
      ) : null}
    </Autocomplete>
  )
}
