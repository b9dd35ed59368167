import { photoLabel } from '../../app/evidence/photo.ts'
import { useCommands } from '../state/commands.ts'
import { useJob } from '../state/job-state.tsx'
import { usePlacement } from '../state/placement.tsx'
import { useSelection } from '../state/selection.tsx'
import { KeyHint } from '../ui/key-hint.tsx'
import { useMessages } from '../ui/message.tsx'
import { photosById } from './photo-index.ts'
import styles from './photos-workspace.module.css'

const KEYS = 'Q'

/** Goes to the photo whose facet tells most of the others; pressed again, to the one after. Nothing while no doubt is left. */
export function AskForPlace() {
  const { photos } = useJob()
  const { placement } = usePlacement()
  const { selection, select } = useSelection()
  const { say } = useMessages()
  const byId = photosById(photos)
  // The answer lags a moment behind a tag that was just given.
  const asked = (placement?.asked ?? []).filter(({ photoId }) => byId.get(photoId)?.tags.facetId === null)
  const lead = selection.kind === 'photos' ? selection.lead : null
  const next = asked[(asked.findIndex(({ photoId }) => photoId === lead) + 1) % Math.max(1, asked.length)]
  const photo = next === undefined ? undefined : byId.get(next.photoId)
  const isAsking = next !== undefined && photo !== undefined && next.expectedWrong >= 0.5
  function ask() {
    if (!isAsking) return
    select({ kind: 'photos', ids: [photo.id], lead: photo.id })
    say({
      tone: 'note',
      text: `Which facet does ${photoLabel(photo.number)} show?`,
      help: `Its place settles about ${Math.round(next.expectedWrong)} doubtful suggestions. Side of the house: say so by its role.`,
    })
  }
  useCommands([
    { id: 'photos.ask-for-place', label: 'Go to the photo to place next', keys: KEYS, enabled: isAsking, perform: ask },
  ])
  return isAsking ? (
    <button type="button" className={styles['countButton']} onClick={ask}>
      Place next: {photoLabel(photo.number)} <KeyHint keys={KEYS} />
    </button>
  ) : null
}
