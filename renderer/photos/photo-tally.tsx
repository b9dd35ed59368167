import { memo, useMemo } from 'react'
import { useJob } from '../state/job-state.tsx'
import { TextField } from '../ui/text-field.tsx'
import { countWords } from '../ui/quantity-words.ts'
import { AcceptSuggestions } from './accept-suggestions.tsx'
import { AskForPlace } from './ask-for-place.tsx'
import { photoCounts } from './photo-counts.ts'
import { EVERY_PHOTO, type PhotoFilter } from './photo-filter.ts'
import styles from './photos-workspace.module.css'

interface PhotoTallyProps {
  readonly shown: number
  readonly filter: PhotoFilter
  readonly onFilter: (filter: PhotoFilter) => void
  readonly onNearDoubles: () => void
}

/** How far tagging has come, in numbers, with the untagged ones a click away; and the words to find photos by. */
export const PhotoTally = memo(function PhotoTally({ shown, filter, onFilter, onNearDoubles }: PhotoTallyProps) {
  const { photos } = useJob()
  const counts = useMemo(() => photoCounts(photos), [photos])
  const all = countWords(counts.all, 'photo')
  return (
    <div className={styles['counts']}>
      <p role="status">
        <strong>{shown === counts.all ? all : `${shown.toLocaleString('en-US')} of ${all}`}</strong>, {counts.leftOut}{' '}
        left out
      </p>
      {counts.untagged === 0 ? (
        <span>none untagged</span>
      ) : (
        <button
          type="button"
          className={styles['countButton']}
          onClick={() => onFilter({ ...EVERY_PHOTO, only: 'untagged' })}
        >
          {counts.untagged.toLocaleString('en-US')} untagged
        </button>
      )}
      <span>
        lacking facet {counts.withoutFacet}, component {counts.withoutComponent}, condition {counts.withoutCondition},
        role {counts.withoutRole}
      </span>
      <AskForPlace />
      <AcceptSuggestions />
      <button type="button" className={styles['countButton']} onClick={onNearDoubles}>
        Near-doubles
      </button>
      <span className={styles['gap']} />
      <div className={styles['find']}>
        <TextField
          label="Words to find"
          hideLabel
          placeholder="Find by caption, number, file"
          value={filter.words}
          onChange={(words) => onFilter({ ...filter, words })}
        />
      </div>
    </div>
  )
})
