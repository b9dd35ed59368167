import { useMemo } from 'react'
import { useJob } from '../state/job-state.tsx'
import { countWords } from '../ui/quantity-words.ts'
import { photoCounts } from './photo-counts.ts'
import type { PhotoFilter } from './photo-filter.ts'
import styles from './photos-workspace.module.css'

interface PhotoTallyProps {
  readonly shown: number
  readonly onOnly: (only: PhotoFilter['only']) => void
}

/** How far tagging has come, in numbers; the untagged ones are a click away. */
export function PhotoTally({ shown, onOnly }: PhotoTallyProps) {
  const { photos } = useJob()
  const counts = useMemo(() => photoCounts(photos), [photos])
  return (
    <p className={styles['counts']} role="status">
      <strong>
        {shown === counts.all
          ? countWords(counts.all, 'photo')
          : `${shown.toLocaleString('en-US')} of ${countWords(counts.all, 'photo')}`}
      </strong>
      {counts.untagged === 0 ? (
        <span>none untagged</span>
      ) : (
        <button type="button" className={styles['countButton']} onClick={() => onOnly('untagged')}>
          {counts.untagged.toLocaleString('en-US')} untagged
        </button>
      )}
      <span>
        without facet {counts.withoutFacet}, component {counts.withoutComponent}, condition {counts.withoutCondition},
        role {counts.withoutRole}
      </span>
      <span>{counts.leftOut} left out</span>
    </p>
  )
}
