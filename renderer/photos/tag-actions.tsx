import { useState } from 'react'
import { findingLabel } from '../../app/evidence/finding.ts'
import { useCommands } from '../state/commands.ts'
import { type Edit, useEdit, useJob } from '../state/job-state.tsx'
import { Button } from '../ui/button.tsx'
import { classNames } from '../ui/class-names.ts'
import { KeyHint } from '../ui/key-hint.tsx'
import { AddToFinding } from './add-to-finding.tsx'
import { leftOutReasons } from './left-out-reasons.ts'
import { PlaceDialog } from './place-dialog.tsx'
import styles from './tag-bar.module.css'
import { sortedPhotos } from './photo-order.ts'
import { type QuickFindings, useQuickFindings } from './use-quick-findings.ts'
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
export function TagActions(props: TagActionsProps) {
  const { tagging } = props
  const findings = useQuickFindings()
  const [isAdding, setAdding] = useState(false)
  const [isPlacing, setPlacing] = useState(false)
  const actions = shownActions(props, {
    hasFindings: findings.last !== null,
    onAdd: () => setAdding(true),
    onPlace: () => setPlacing(true),
  })
  useCommands(
    [...actions, ...useShortCuts(props, findings)].map(({ name, ...rest }) => ({ id: `photo-tags.${name}`, ...rest })),
  )
  return (
    <div className={classNames(styles['line'], styles['actions'])}>
      {actions
        .filter(({ name, enabled }) => name !== 'place' || enabled)
        .map(({ name, label, keys, enabled, perform }) => (
          <Button key={name} look="quiet" isDisabled={!enabled} onPress={perform}>
            {label} <KeyHint keys={keys} />
          </Button>
        ))}
      {isPlacing ? <PlaceDialog photos={tagging.photos} onClose={() => setPlacing(false)} /> : null}
      {isAdding ? (
        <AddToFinding
          count={tagging.photos.length}
          onClose={() => setAdding(false)}
          onAdd={(finding) => {
            setAdding(false)
            findings.add(finding, tagging.photos)
          }}
        />
      ) : null}
    </div>
  )
}

interface TagAction {
  readonly name: string
  readonly label: string
  readonly keys: string
  readonly enabled: boolean
  readonly perform: () => void
}

function isLeftOut({ photos }: Tagging): boolean {
  return photos.some(({ tags }) => tags.leftOutBecause !== null)
}

function shownActions(
  { tagging, isFree, onLeaveOut, onNext, onNewFinding }: TagActionsProps,
  { hasFindings, onAdd, onPlace }: { hasFindings: boolean; onAdd: () => void; onPlace: () => void },
): readonly TagAction[] {
  const canRepeat = isFree && tagging.hasLast
  const canPlace = isFree && tagging.photos.every(({ time }) => time.instantMs === null)
  const isOut = isLeftOut(tagging)
  const repeat = () => void tagging.tagAsLast()
  const repeatAndGoOn = () => void tagging.tagAsLast().then(onNext)
  const leaveOut = isOut ? () => void tagging.tag({ leftOutBecause: null }) : onLeaveOut
  const leaveOutWords = isOut ? 'Put back in the packet' : 'Leave out of the packet'
  return [
    { name: 'same', label: 'Same as last', keys: 'S', enabled: canRepeat, perform: repeat },
    { name: 'same-next', label: 'Same, then next', keys: 'Shift+S', enabled: canRepeat, perform: repeatAndGoOn },
    { name: 'leave-out', label: leaveOutWords, keys: 'X', enabled: isFree, perform: leaveOut },
    { name: 'place', label: 'Place by hand', keys: 'P', enabled: canPlace, perform: onPlace },
    { name: 'finding', label: 'New finding', keys: 'N', enabled: isFree, perform: onNewFinding },
    { name: 'add', label: 'Add to finding', keys: 'A', enabled: isFree && hasFindings, perform: onAdd },
  ]
}

/** Short cuts for those who know them: they stand in the list of keys only. */
function useShortCuts(
  { tagging, isFree, onNewFinding }: TagActionsProps,
  findings: QuickFindings,
): readonly TagAction[] {
  const { photos: all } = useJob()
  const edit = useEdit()
  const [lastReason] = leftOutReasons(all)
  const { photos } = tagging
  const { last } = findings
  return [
    {
      name: 'roles-in-order',
      label: 'Roles in order: overview, mid view, then close-ups',
      keys: 'Shift+R',
      enabled: isFree && photos.length > 1,
      perform: () => void tagRolesInOrder(photos, edit),
    },
    {
      name: 'finding-now',
      label: 'Finding from these at once, without the form',
      keys: 'Shift+N',
      enabled: isFree,
      perform: () => {
        if (!findings.make(photos)) onNewFinding()
      },
    },
    {
      name: 'add-last',
      label: last === null ? 'Add to the last finding' : `Add to ${findingLabel(last.number)}`,
      keys: 'Shift+A',
      enabled: isFree && last !== null,
      perform: () => last !== null && findings.add(last, photos),
    },
    {
      name: 'leave-out-again',
      label: `Leave out: ${lastReason ?? ''}`,
      keys: 'Shift+X',
      enabled: isFree && !isLeftOut(tagging) && lastReason !== undefined,
      perform: () => lastReason !== undefined && void tagging.tag({ leftOutBecause: lastReason }),
    },
  ]
}

/** The way findings are photographed: from afar, with the neighbours, then close (common practice, no source). */
async function tagRolesInOrder(photos: Tagging['photos'], edit: Edit): Promise<void> {
  const ids = sortedPhotos(photos, 'time').map(({ id }) => id)
  const inOrder = [
    ['overview', ids.slice(0, 1)],
    ['mid', ids.slice(1, 2)],
    ['close', ids.slice(2)],
  ] as const
  // All at once: a finding made with the next key press shows the roles already.
  const taken = inOrder.filter(([, photoIds]) => photoIds.length > 0)
  await Promise.all(taken.map(([role, photoIds]) => edit('photos.tag', { photoIds, set: { role } })))
}
