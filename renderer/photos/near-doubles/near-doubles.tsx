import { useEffect, useRef, useState } from 'react'
import type { NearDoublesGroup } from '../../../app/contract/near-doubles.ts'
import { photoLabel, type Photo } from '../../../app/evidence/photo.ts'
import type { PhotoId } from '../../../app/job/ids.ts'
import { photoSubject } from '../../../app/packet/photo-words.ts'
import { useCommands } from '../../state/commands.ts'
import { useEdit, useJob } from '../../state/job-state.tsx'
import { Button } from '../../ui/button.tsx'
import { classNames } from '../../ui/class-names.ts'
import { KeyHint } from '../../ui/key-hint.tsx'
import { countWords } from '../../ui/quantity-words.ts'
import { photosById } from '../photo-index.ts'
import { PhotoThumb } from '../photo-thumb.tsx'
import styles from './near-doubles.module.css'
import { useNearDoubles } from './use-near-doubles.ts'

interface NearDoublesProps {
  /** Shows two photos large, side by side. */
  readonly onCompare: (ids: readonly [PhotoId, PhotoId]) => void
  readonly onClose: () => void
}

/** Photos that show nearly the same, group by group. A person says which one to keep; nothing goes by itself. */
export function NearDoubles({ onCompare, onClose }: NearDoublesProps) {
  const { groups, waiting } = useNearDoubles()
  const [at, setAt] = useState(0)
  const place = useRef<HTMLDivElement>(null)
  useEffect(() => place.current?.focus({ preventScroll: true }), [])
  const shown = groups ?? []
  const current = Math.min(at, Math.max(0, shown.length - 1))
  useCommands([
    command('up', ['Group before', 'ArrowUp'], () => setAt(Math.max(0, current - 1))),
    command('down', ['Next group', 'ArrowDown'], () => setAt(Math.min(shown.length - 1, current + 1))),
    command('close', ['Back to all photos', 'Escape'], onClose),
  ])
  return (
    <section ref={place} tabIndex={-1} className={styles['screen']} aria-label="Near-doubles">
      <header className={styles['bar']}>
        <Button look="quiet" onPress={onClose}>
          All photos <KeyHint keys="Escape" />
        </Button>
        <p role="status">{stateWords(groups, waiting)}</p>
      </header>
      <ol className={styles['groups']}>
        {shown.map((group, index) => (
          <Group
            key={group.photos.map(({ photoId }) => photoId).join(' ')}
            group={group}
            isCurrent={index === current}
            onCompare={onCompare}
          />
        ))}
      </ol>
    </section>
  )
}

function stateWords(groups: readonly NearDoublesGroup[] | null, waiting: number): string {
  if (groups === null) return 'Looking at the photos…'
  const more = waiting === 0 ? '' : ` ${countWords(waiting, 'photo')} still to be looked at.`
  if (groups.length === 0) return `No two photos of the packet look nearly the same.${more}`
  return `${countWords(groups.length, 'group')} of photos that look nearly the same. Choose which to keep; nothing is left out by itself.${more}`
}

const command = (id: string, [label, keys]: readonly [label: string, keys: string], perform: () => void) => ({
  id: `near-doubles.${id}`,
  label,
  keys,
  enabled: true,
  perform,
})

interface GroupProps {
  readonly group: NearDoublesGroup
  readonly isCurrent: boolean
  readonly onCompare: NearDoublesProps['onCompare']
}

function Group({ group, isCurrent, onCompare }: GroupProps) {
  const { photos } = useJob()
  const byId = photosById(photos)
  const members = group.photos.flatMap((one) => {
    const photo = byId.get(one.photoId)
    return photo === undefined ? [] : [{ ...one, photo }]
  })
  const best = members.find(({ photoId }) => photoId === group.best)?.photo ?? null
  const row = useRef<HTMLLIElement>(null)
  useEffect(() => {
    if (isCurrent) row.current?.scrollIntoView({ block: 'nearest' })
  }, [isCurrent])
  return (
    <li
      ref={row}
      className={classNames(styles['group'], isCurrent && styles['current'])}
      aria-current={isCurrent ? 'true' : undefined}
    >
      {isCurrent && best !== null ? (
        <GroupKeys photos={members.map(({ photo }) => photo)} best={best} onCompare={onCompare} />
      ) : null}
      <p>
        {best === null ? null : (
          <>
            Proposed: <strong>{photoLabel(best.number)}</strong>, {group.why}.
          </>
        )}
      </p>
      <ul className={styles['members']}>
        {members.map(({ photo, sharpness, clippedShare }, index) => (
          <Member
            key={photo.id}
            photo={photo}
            digit={isCurrent ? index + 1 : null}
            others={members.filter((one) => one.photoId !== photo.id).map((one) => one.photoId)}
            isBest={photo.id === group.best}
            facts={`sharpness ${sharpness.toFixed(0)}, ${(clippedShare * 100).toFixed(1)} % burnt out`}
          />
        ))}
      </ul>
    </li>
  )
}

function GroupKeys({
  photos,
  best,
  onCompare,
}: {
  photos: readonly Photo[]
  best: Photo
  onCompare: NearDoublesProps['onCompare']
}) {
  const keep = useKeeping()
  const others = (kept: Photo) => photos.flatMap(({ id }) => (id === kept.id ? [] : id))
  const other = photos.find(({ id }) => id !== best.id)
  useCommands([
    command('keep', ['Keep the proposed one, leave out the others', 'K'], () => keep(best, others(best))),
    command('compare', ['Compare the proposed one with another', 'B'], () => {
      if (other !== undefined) onCompare([best.id, other.id])
    }),
    ...photos
      .slice(0, 9)
      .map((photo, index) =>
        command(`keep-${index + 1}`, [`Keep ${photoLabel(photo.number)}, leave out the others`, `${index + 1}`], () =>
          keep(photo, others(photo)),
        ),
      ),
  ])
  return null
}

/** Leaves photos out because another shows the same, all in one step of undo. */
function useKeeping() {
  const edit = useEdit()
  return (kept: Photo, others: readonly PhotoId[]) => {
    const leftOutBecause = `near-double of ${photoLabel(kept.number)}`
    void edit('photos.tag', { photoIds: [...others], set: { leftOutBecause } })
  }
}

interface MemberProps {
  readonly photo: Photo
  readonly digit: number | null
  readonly others: readonly PhotoId[]
  readonly isBest: boolean
  readonly facts: string
}

function Member({ photo, digit, others, isBest, facts }: MemberProps) {
  const keep = useKeeping()
  return (
    <li className={classNames(styles['member'], isBest && styles['best'])}>
      <span className={styles['picture']}>
        <PhotoThumb photo={photo} />
      </span>
      <span className={styles['words']}>
        <strong>{photoLabel(photo.number)}</strong> {photoSubject(photo)}
        <span className={styles['quiet']}>{facts}</span>
      </span>
      <Button look={isBest ? 'main' : 'plain'} onPress={() => keep(photo, others)}>
        Keep this, leave out {others.length === 1 ? 'the other' : `the other ${others.length}`}
        {digit === null || digit > 9 ? null : <KeyHint keys={`${digit}`} />}
      </Button>
    </li>
  )
}
