import { useMemo } from 'react'
import type { PhotoTagsPatch } from '../../app/contract/edits.ts'
import type { Suggestion } from '../../app/contract/placement.ts'
import { useCommands } from '../state/commands.ts'
import { useJob } from '../state/job-state.tsx'
import { usePlacement } from '../state/placement.tsx'
import { KeyHint } from '../ui/key-hint.tsx'
import { jointSuggestion } from './joint-suggestion.ts'
import { percentWords } from './suggested-words.ts'
import styles from './suggestion-chips.module.css'
import type { Tagging } from './use-tagging.ts'

type Place = Suggestion['ranking'][number]['place']

interface SuggestionChipsProps {
  readonly tagging: Tagging
  /** True when no step waits for letters. */
  readonly isFree: boolean
}

/** Places that the selected photos are likely to show. Nothing is tagged until a person takes one, by click or key. */
export function SuggestionChips({ tagging, isFree }: SuggestionChipsProps) {
  const { facets } = useJob()
  const { photos, tag } = tagging
  const { byPhoto } = usePlacement()
  const ranking = useMemo(() => jointSuggestion(photos, byPhoto), [photos, byPhoto])
  const [first] = ranking
  useCommands([
    {
      id: 'photo-tags.suggested',
      label: 'Take the likeliest place',
      keys: 'G',
      enabled: isFree && first !== undefined,
      perform: () => {
        if (first !== undefined) void tag(patchFor(first.place))
      },
    },
  ])
  if (first === undefined) return null
  const nameOf = (place: Place) =>
    place === 'ground' ? 'From the ground' : (facets.find(({ id }) => id === place)?.letter ?? '?')
  return (
    <div className={styles['chips']} role="group" aria-label="Suggested places">
      <span className={styles['lead']}>{photos.length === 1 ? 'Likely' : 'Likely, on average'}</span>
      {ranking.map(({ place, probability }, at) => (
        <button key={place} type="button" className={styles['chip']} onClick={() => void tag(patchFor(place))}>
          <strong>{nameOf(place)}</strong> {percentWords(probability)}
          {at === 0 ? <KeyHint keys="G" /> : null}
        </button>
      ))}
    </div>
  )
}

function patchFor(place: Place): PhotoTagsPatch {
  return place === 'ground' ? { role: 'elevation' } : { facetId: place }
}
