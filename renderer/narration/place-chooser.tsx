import type { FacetId } from '../../app/job/ids.ts'
import { useJob } from '../state/job-state.tsx'
import { Button } from '../ui/button.tsx'
import { KeyHint } from '../ui/key-hint.tsx'
import styles from './narration.module.css'
import type { DraftWork } from './use-draft-work.ts'

/** The facets that a draft's spoken place leaves open, to settle on one before it is accepted. */
export function PlaceChooser({ work }: { readonly work: DraftWork }) {
  const { facets } = useJob()
  if (work.open.length === 0) return null
  const labelOf = (id: FacetId) => {
    const facet = facets.find((one) => one.id === id)
    if (facet === undefined) return '?'
    return facet.name === '' ? `Facet ${facet.letter}` : `${facet.letter}, ${facet.name}`
  }
  return (
    <div className={styles['places']} role="group" aria-label="Which facet is meant">
      <span className={styles['quiet']}>
        {work.chosen === null ? 'The words leave the facet open:' : 'Facet chosen; press again to leave it open:'}
      </span>
      {work.open.map((id, at) => (
        <Button
          key={id}
          look={id === work.chosen ? 'main' : 'plain'}
          aria-pressed={id === work.chosen}
          onPress={() => work.choose(id)}
        >
          {labelOf(id)} {at < 9 ? <KeyHint keys={`${at + 1}`} /> : null}
        </Button>
      ))}
    </div>
  )
}
