import { useMemo, useState } from 'react'
import type { JobSnapshot } from '../../app/contract/jobs.ts'
import type { Photo } from '../../app/evidence/photo.ts'
import type { PhotoId } from '../../app/job/ids.ts'
import { AddFilesButton } from '../frame/add-files.tsx'
import { draftFromPhotos, type FindingDraft } from '../findings/finding-draft.ts'
import { FindingDialog } from '../findings/finding-dialog.tsx'
import { useCommands } from '../state/commands.ts'
import { useJob } from '../state/job-state.tsx'
import { useSelection } from '../state/selection.tsx'
import { EmptyState } from '../ui/empty-state.tsx'
import { ContactSheet } from './contact-sheet.tsx'
import { NearDoubles } from './near-doubles/near-doubles.tsx'
import { PhotoTally } from './photo-tally.tsx'
import { EVERY_PHOTO, filteredPhotos } from './photo-filter.ts'
import { photosById } from './photo-index.ts'
import { GAP_MS, groupedPhotos } from './photo-groups.ts'
import { sortedPhotos } from './photo-order.ts'
import { PhotosBar, type SheetLook } from './photos-bar.tsx'
import { PhotoViewer } from './photo-viewer.tsx'
import styles from './photos-workspace.module.css'
import { TagBar } from './tag-bar.tsx'
import { useTagging } from './use-tagging.ts'
import { useGroupKeys } from './use-group-keys.ts'
import { type Picking, usePicking } from './use-picking.ts'

/** The photos: a contact sheet or one large, and the bar that tags what is selected. */
export function PhotosWorkspace() {
  const { photos } = useJob()
  if (photos.length === 0) {
    return (
      <EmptyState
        title="No photo is in this job yet"
        sentence="Drop a folder, a card or single files anywhere in this window. Originals are kept byte for byte."
      >
        <AddFilesButton look="main" />
      </EmptyState>
    )
  }
  return <PhotoDesk />
}

/** What the desk shows in its middle. A large photo goes back to where it was opened. */
interface Shown {
  readonly kind: 'sheet' | 'near-doubles' | 'large' | 'marking'
  readonly back: 'sheet' | 'near-doubles'
}

function PhotoDesk() {
  const { photos, facets } = useJob()
  const { photos: tagged } = useTagging()
  const [look, setLook] = useState<SheetLook>({ sort: 'time', grouping: 'none', gapS: GAP_MS / 1000, tilePx: 168 })
  const [filter, setFilter] = useState(EVERY_PHOTO)
  const [shown, setShown] = useState<Shown>({ kind: 'sheet', back: 'sheet' })
  const [newFinding, setNewFinding] = useState<FindingDraft | null>(null)
  const { groups, order } = useArrangement({ photos, facets, look, filter })
  const orderIds = useMemo(() => order.map(({ id }) => id), [order])
  const picking = usePicking(orderIds)
  const { large, lead } = useLarge(shown)
  const show = (kind: Shown['kind']) => setShown({ ...shown, kind })
  const isSheet = shown.kind !== 'near-doubles' && large === null
  useGroupKeys({ order, lead, gapMs: look.gapS * 1000, isEnabled: isSheet, onPick: picking.pickThese })
  useCommands([{ ...nearDoublesKeys, enabled: isSheet, perform: () => show('near-doubles') }])
  return (
    <div className={styles['workspace']}>
      {isSheet ? (
        <>
          <PhotosBar look={look} onLook={setLook} filter={filter} onFilter={setFilter} />
          <PhotoTally
            shown={order.length}
            filter={filter}
            onFilter={setFilter}
            onNearDoubles={() => show('near-doubles')}
          />
          <Sheet
            groups={groups}
            tilePx={look.tilePx}
            picking={picking}
            lead={lead}
            onOpen={() => setShown({ kind: 'large', back: 'sheet' })}
          />
        </>
      ) : (
        <div className={styles['sheet']}>
          <Large shown={shown} onShown={setShown} photo={large} order={order} picking={picking} />
        </div>
      )}
      {isSheet || shown.kind === 'large' ? (
        <TagBar onNext={picking.pickNext} onNewFinding={() => setNewFinding(draftFromPhotos(tagged))} />
      ) : null}
      {newFinding === null ? null : <FindingDialog start={newFinding} onClose={() => setNewFinding(null)} />}
    </div>
  )
}

interface LargeProps {
  readonly shown: Shown
  readonly onShown: (shown: Shown) => void
  /** The photo to show large; null while near-doubles are looked through. */
  readonly photo: Photo | null
  readonly order: readonly Photo[]
  readonly picking: Picking
}

/** What takes the place of the contact sheet: one photo large, or the near-doubles. */
function Large({ shown, onShown, photo, order, picking }: LargeProps) {
  const { photos: tagged } = useTagging()
  if (photo === null) {
    return (
      <NearDoubles
        onClose={() => onShown({ kind: 'sheet', back: 'sheet' })}
        onCompare={(ids) => {
          picking.pickThese(ids)
          onShown({ kind: 'large', back: 'near-doubles' })
        }}
      />
    )
  }
  return (
    <PhotoViewer
      order={order}
      photo={photo}
      beside={besideOf(photo, tagged)}
      onShow={(id) => picking.pick(id, 'alone')}
      onClose={() => onShown({ kind: shown.back, back: 'sheet' })}
      isMarking={shown.kind === 'marking'}
      onMarking={(isMarking) => onShown({ kind: isMarking ? 'marking' : 'large', back: shown.back })}
    />
  )
}

const nearDoublesKeys = { id: 'photo-picking.near-doubles', label: 'Show near-doubles', keys: 'Shift+D' } as const

/** The photo where the keyboard is, and the same as a record while it is to be shown large. */
function useLarge(shown: Shown): { large: Photo | null; lead: PhotoId | null } {
  const { photos } = useJob()
  const { selection } = useSelection()
  const lead = selection.kind === 'photos' ? selection.lead : null
  const isLarge = shown.kind === 'large' || shown.kind === 'marking'
  return { lead, large: isLarge && lead !== null ? (photosById(photos).get(lead) ?? null) : null }
}

interface SheetProps {
  readonly groups: ReturnType<typeof groupedPhotos>
  readonly tilePx: number
  readonly picking: Picking
  readonly lead: PhotoId | null
  readonly onOpen: () => void
}

function Sheet({ groups, tilePx, picking, lead, onOpen }: SheetProps) {
  return (
    <div className={styles['sheet']}>
      {groups.length === 0 ? (
        <p className={styles['none']}>No photo fits. Clear a filter to see more.</p>
      ) : (
        <ContactSheet
          groups={groups}
          tilePx={tilePx}
          picked={picking.pickedIds}
          lead={lead}
          onPick={picking.pick}
          onPickAll={picking.pickAll}
          onOpen={(id) => {
            if (!picking.pickedIds.has(id)) picking.pick(id, 'alone')
            onOpen()
          }}
        />
      )}
    </div>
  )
}

interface Arranging extends Pick<JobSnapshot, 'photos' | 'facets'> {
  readonly look: SheetLook
  readonly filter: typeof EVERY_PHOTO
}

function useArrangement({ photos, facets, look, filter }: Arranging) {
  const { sort, grouping, gapS } = look
  return useMemo(() => {
    // Pauses only mean something in the order of time.
    const inOrder = sortedPhotos(photos, grouping === 'gap' ? 'time' : sort)
    const groups = groupedPhotos(filteredPhotos(inOrder, filter), { grouping, gapMs: gapS * 1000 }, facets)
    return { groups, order: groups.flatMap((group) => group.photos) }
  }, [photos, facets, sort, grouping, gapS, filter])
}

/** Two selected photos are compared; any other number shows one. */
function besideOf(large: Photo, selected: readonly Photo[]): Photo | null {
  if (selected.length !== 2) return null
  return selected.find(({ id }) => id !== large.id) ?? null
}
