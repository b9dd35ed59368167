import { useState } from 'react'
import { useCommands } from '../state/commands.ts'
import { Button } from '../ui/button.tsx'
import { KeyHint } from '../ui/key-hint.tsx'
import { PlaceDialog } from './place-dialog.tsx'
import styles from './tag-bar.module.css'
import type { Tagging } from './use-tagging.ts'

interface TagActionsProps {
  readonly tagging: Tagging
  /** True when photos are selected and no step waits for letters. */
  readonly isFree: boolean
  readonly onLeaveOut: () => void
  readonly onNext: () => void
  readonly onNewFinding: () => void
}

/** What can be done with the selected photos beside tagging them step by step. */
export function TagActions({ tagging, isFree, onLeaveOut, onNext, onNewFinding }: TagActionsProps) {
  const [isPlacing, setPlacing] = useState(false)
  const isLeftOut = tagging.photos.some(({ tags }) => tags.leftOutBecause !== null)
  const canRepeat = isFree && tagging.hasLast
  const canPlace = isFree && tagging.photos.every(({ time }) => time.instantMs === null)
  const repeat = () => void tagging.tagAsLast()
  const repeatAndGoOn = () => void tagging.tagAsLast().then(onNext)
  const leaveOut = isLeftOut ? () => void tagging.tag({ leftOutBecause: null }) : onLeaveOut
  const leaveOutWords = isLeftOut ? 'Put back in the packet' : 'Leave out of the packet'
  const actions = [
    { name: 'same', label: 'Same as last', keys: 'S', enabled: canRepeat, perform: repeat },
    { name: 'same-next', label: 'Same, then next', keys: 'Shift+S', enabled: canRepeat, perform: repeatAndGoOn },
    { name: 'leave-out', label: leaveOutWords, keys: 'X', enabled: isFree, perform: leaveOut },
    { name: 'place', label: 'Place by hand', keys: 'P', enabled: canPlace, perform: () => setPlacing(true) },
    { name: 'finding', label: 'New finding from these', keys: 'N', enabled: isFree, perform: onNewFinding },
  ]
  useCommands(actions.map(({ name, ...action }) => ({ id: `photo-tags.${name}`, ...action })))
  return (
    <div className={styles['line']}>
      {actions
        .filter(({ name, enabled }) => name !== 'place' || enabled)
        .map(({ name, label, keys, enabled, perform }) => (
          <Button key={name} look="quiet" isDisabled={!enabled} onPress={perform}>
            {label} <KeyHint keys={keys} />
          </Button>
        ))}
      {isPlacing ? <PlaceDialog photos={tagging.photos} onClose={() => setPlacing(false)} /> : null}
    </div>
  )
}
