import type { Photo } from '../../app/evidence/photo.ts'
import type { PhotoId } from '../../app/job/ids.ts'
import { useCommands } from '../state/commands.ts'
import { useMessages } from '../ui/message.tsx'
import { gapGroupOf, nextUntagged, nextUntaggedGroup } from './gap-groups.ts'

interface GroupKeysInput {
  /** The photos shown, in their order. */
  readonly order: readonly Photo[]
  readonly lead: PhotoId | null
  /** A longer pause than this ends a group, milliseconds. */
  readonly gapMs: number
  readonly isEnabled: boolean
  readonly onPick: (ids: readonly PhotoId[]) => void
}

/** Keys that pick what to tag next: the rest of a group, the next untagged photo, the next untagged group. */
export function useGroupKeys({ order, lead, gapMs, isEnabled, onPick }: GroupKeysInput): void {
  const { say } = useMessages()
  const pick = (ids: readonly PhotoId[]) => {
    if (ids.length > 0) onPick(ids)
    else say({ tone: 'note', text: 'Nothing is untagged among the photos shown.' })
  }
  useCommands([
    {
      id: 'photo-picking.group',
      label: 'Select all photos up to the next pause, before and after',
      keys: 'E',
      enabled: isEnabled && lead !== null,
      perform: () => lead !== null && pick(gapGroupOf(order, lead, gapMs)),
    },
    {
      id: 'photo-picking.untagged',
      label: 'Next untagged photo',
      keys: 'U',
      enabled: isEnabled,
      perform() {
        const next = nextUntagged(order, lead)
        pick(next === null ? [] : [next])
      },
    },
    {
      id: 'photo-picking.untagged-group',
      label: 'Next untagged photos up to a pause',
      keys: 'Shift+U',
      enabled: isEnabled,
      perform: () => pick(nextUntaggedGroup(order, lead, gapMs)),
    },
  ])
}
